import { describe, expect, test } from 'vitest';
import { overlay, setOut, thumbnail, type Drawing, type SetOut } from '../../src/drawing';
import { bend, crowded, limber, scarf, skiffLines, skiffPlan } from './demonstrations';
import { svgText } from './svg-text';

// Looked at as pictures when they change: `npx vitest run --project unit -u tests/drawing/figures` writes them anew.
const figures: readonly (readonly [name: string, drawing: Drawing, options: SetOut])[] = [
  ['scarf-phone', scarf(), { width: 340 }],
  ['scarf', scarf(), { width: 700 }],
  ['limber-phone', limber(), { width: 340 }],
  ['limber', limber(), { width: 700 }],
  ['bend-phone', bend(), { width: 340 }],
  ['bend', bend(), { width: 700 }],
  ['crowded-phone', crowded(), { width: 340, units: 'inch' }],
  ['lines-phone', skiffPlan('tall'), { width: 340 }],
  ['lines', skiffPlan('wide'), { width: 700, units: 'inch' }],
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
