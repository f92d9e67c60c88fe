/** A graph as Plot draws it, without the style that Plot puts into each. */
import * as Plot from '@observablehq/plot';
import { expect, test } from 'vitest';
import type { Chart } from '../../src/cells';
import { plainShown } from '../../src/measure';
import { drawChart } from '../../src/page/picture/chart';

const put = (figure: Element) => document.body.appendChild(figure);

/** What Plot's own style sets of a figure and of the words in it. */
function lookOf(figure: Element) {
  const { display, maxWidth, height } = getComputedStyle(put(figure));
  const { whiteSpace } = getComputedStyle(figure.querySelector('text')!);
  return { display, maxWidth, height, whiteSpace };
}

test('a graph brings no style of its own, and stands as it would with Plot’s', () => {
  const { figure } = drawChart(
    {
      title: 'Pull',
      says: 'It grows.',
      x: { label: 'Thickness', kind: 'length' },
      y: { label: 'Pull', kind: 'force' },
      lines: [
        {
          name: 'pull',
          points: [
            [0.01, 1],
            [0.02, 8],
          ],
        },
      ],
    },
    undefined,
    { width: 400, shown: plainShown, names: { first: 'Kept', second: 'Trying' }, extents: null },
  );
  expect(figure.querySelector('style')).toBeNull();
  const plain = Plot.plot({
    width: 400,
    height: Number(figure.getAttribute('height')),
    marks: [Plot.lineY([1, 8])],
  });
  expect(plain.querySelector('style')).not.toBeNull();
  expect(lookOf(figure)).toStrictEqual(lookOf(plain));
});

test('a limit that moves is a curve of its own with its name, and the place where it is met a ring with its number', () => {
  const points = [
    [0.01, 1],
    [0.02, 8],
  ] as const;
  const chart: Chart = {
    title: 'Pull',
    says: 'It grows.',
    x: { label: 'Thickness', kind: 'length' },
    y: { label: 'Pull', kind: 'force' },
    lines: [{ name: 'pull', points }],
    movingLimits: [
      {
        label: 'the most it may be',
        points: [
          [0.01, 6],
          [0.02, 4],
        ],
      },
    ],
    crossings: [{ x: 0.0156, y: 4.9, label: '15.6 mm' }],
  };
  const place = { width: 400, shown: plainShown, names: { first: 'Kept', second: 'Trying' }, extents: null };
  const { figure } = drawChart(chart, undefined, place);
  const words = (of: Element) => [...of.querySelectorAll('text')].map(({ textContent }) => textContent);
  expect(words(figure)).toContain('the most it may be');
  expect(words(figure)).toContain('15.6 mm');
  const dashed = (of: Element) => of.querySelectorAll('path[stroke="var(--red-lead)"]').length;
  const curves = (of: Element) => of.querySelectorAll('[stroke="var(--red-lead)"] path').length + dashed(of);
  expect(curves(figure)).toBe(1);
  expect(figure.querySelectorAll('[r="4"]')).toHaveLength(1);
  // A second version draws its own where that is another, and never the same one twice.
  const moved = [{ ...chart.movingLimits![0]!, points }];
  expect(curves(drawChart(chart, { ...chart, movingLimits: moved }, place).figure)).toBe(2);
  expect(curves(drawChart(chart, { ...chart, crossings: [] }, place).figure)).toBe(1);
});
