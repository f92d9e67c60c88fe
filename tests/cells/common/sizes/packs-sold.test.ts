/** What resin, glue and paste must be bought as: packs that a shop of the builder's system sells. */
import { expect, test } from 'vitest';
import { demoBoat } from '../../../../src/boat';
import { fillet } from '../../../../src/cells/finish/fillet';
import { resin } from '../../../../src/cells/finish/resin';
import { glue } from '../../../../src/cells/timber/gluing/glue';
import { laminate } from '../../../../src/cells/timber/bending/laminate';
import { plainShown, type Shown, write } from '../../../../src/measure';
import { tryCell } from '../../try-cell';

const feet: Shown = { length: 'feet', fraction: 8, mass: 'lb', money: '$' };
const wordsIn = (shown: Shown, cell: typeof resin, entries: Readonly<Record<string, string>> = {}) =>
  tryCell(cell, entries, demoBoat, shown).words;

test('resin says which packs to buy by what they hold, and none of which there is none', () => {
  const need = {
    bottomArea: '0 m^2',
    sideArea: '0 m^2',
    transomArea: '0 m^2',
    bowArea: '0 m^2',
    bottomLayers: '0',
  };
  const of = (litres: number, shown: Shown) =>
    wordsIn(shown, resin, {
      ...need,
      sideLayers: '0',
      sealCoats: '1',
      uptake: '100 mL/m^2',
      waste: '0 %',
      margin: '0 %',
      insideArea: `${litres * 10} m^2`,
    }).replace(/^.*on the shelf\. /, '');
  expect(of(9, plainShown)).toBe('Buy 2 packs of 4 L and 1 of 1 L, for 222.00.');
  expect(of(13, plainShown)).toBe('Buy 1 pack of 15 L, for 300.00.');
  expect(of(0.9, feet)).toBe('Buy 1 pack of 1 quart, for $30.00.');
  expect(of(20, feet)).toBe('Buy 1 pack of 5 gallons and 2 of 1 quart, for $440.00.');
});

test('no quart is a quarter of a gallon, in no cell that speaks of packs', () => {
  expect(wordsIn(feet, glue)).toContain('1 pack of 1 quart');
  expect(wordsIn(plainShown, glue)).toContain('1 pack of 1 L');
  expect(wordsIn(feet, glue, { glue: 'polyurethane' })).toContain('1 pack of 10.1 fl oz');
  for (const cell of [resin, glue, fillet, laminate]) expect(wordsIn(feet, cell)).not.toMatch(/0\.25 gal/);
});

test('the epoxy of a fillet and of a stack is told in packs, with the exact volume beside it', () => {
  for (const shown of [plainShown, feet]) {
    const tried = tryCell(fillet, {}, demoBoat, shown);
    const { text, remainder } = write(tried.number('toBuy'), 'packs', shown);
    expect(text).toMatch(
      shown.length === 'mm' ? /^(\d × )?(250 mL|500 mL|1 L)( and .*)?$/ : /fl oz|pint|quart/,
    );
    expect(remainder).toBe(`for ${write(tried.number('epoxy'), 'volume', shown).text}`);
  }
  expect(wordsIn(feet, laminate)).toMatch(/buy \d (fl oz|pint|quarts?)/);
});
