import * as Plot from '@observablehq/plot';
import { expect, test } from 'vitest';
import { plotStyleHashes } from '../../../src/build/plot-styles';

/** The hash by which a content security policy knows a style text (W3C CSP Level 3, section 6.7.3). */
async function hashOfStyleIn(figure: Element): Promise<string> {
  const text = figure.querySelector('style')?.textContent ?? '';
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}

test('the policy knows the style of a figure', async () => {
  const figure = Plot.plot({ marks: [Plot.lineY([1, 2, 3])] });
  expect(await hashOfStyleIn(figure)).toBe(plotStyleHashes.figure);
});

test('the policy knows the style of a legend of swatches', async () => {
  const legend = Plot.legend({ color: { type: 'ordinal', domain: ['bottom', 'side'] } });
  expect(await hashOfStyleIn(legend as Element)).toBe(plotStyleHashes.swatches);
});

test('the policy knows the style of a legend of a colour ramp', async () => {
  const legend = Plot.legend({ color: { type: 'linear', domain: [0, 1] } });
  expect(await hashOfStyleIn(legend as Element)).toBe(plotStyleHashes.ramp);
});
