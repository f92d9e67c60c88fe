import { expect, test } from 'vitest';
import { adhesives } from '../../src/trade/adhesives';
import { glueDensity, glueLines } from '../../src/trade/glue-lines';
import { look } from '../../src/trade/table';

test('each glue has a line, within the widest gap that it bridges', () => {
  expect(Object.keys(glueLines).sort()).toStrictEqual(adhesives.rows.map(({ id }) => id).sort());
  for (const [id, { value }] of Object.entries(glueLines)) {
    expect(value).toBeGreaterThan(0);
    expect(value).toBeLessThanOrEqual(look(adhesives, id, 'mostGap')!.value);
  }
});

test('the least that is spread of a glue fills its line', () => {
  for (const { id } of adhesives.rows) {
    // Epoxy primes both faces before the paste.
    const least = look(adhesives, id, 'leastSpread')?.value;
    if (least === undefined || id === 'epoxy') continue;
    expect(least).toBeGreaterThan(glueLines[id]!.value * glueDensity.value);
  }
});
