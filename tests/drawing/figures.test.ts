import { describe, expect, test } from 'vitest';
import { overlay, setOut, thumbnail, type Drawing, type SetOut } from '../../src/drawing';
import { bend, boats, crowded, limber, lines, scarf, skiffLines } from './demonstrations';
import { svgText } from './svg-text';

// Looked at as pictures when they change: `npx vitest run tests/drawing/figures --project unit -u` writes them anew.
const figures: readonly (readonly [name: string, drawing: Drawing, options: SetOut])[] = [
  ...boats.flatMap((boat) => [
    [`scarf-${boat}-phone`, scarf(19, 8, boat), { width: 324 }] as const,
    [`limber-${boat}-phone`, limber(boat), { width: 324 }] as const,
    [`bend-${boat}-phone`, bend(boat), { width: 324 }] as const,
    [`lines-${boat}-phone`, lines(boat), { width: 324, maxHeight: 1000 }] as const,
  ]),
  ['limber', limber(), { width: 700 }],
  ['lines', lines(), { width: 610, maxHeight: 1000, units: 'inch' }],
  ['crowded-phone', crowded(), { width: 340, units: 'inch' }],
  [
    'lines-small',
    thumbnail(skiffLines(), { title: 'Hull', says: 'The hull in three views.' }),
    { width: 240, maxHeight: 90, bar: false, caption: false },
  ],
  ['two-versions', overlay(scarf(), scarf(19, 10)), { width: 700 }],
];

describe('stored figures', () => {
  test.each(figures)('%s', async (name, drawn, options) => {
    await expect(svgText(setOut(drawn, options))).toMatchFileSnapshot(`../figures/${name}.svg`);
  });
});
