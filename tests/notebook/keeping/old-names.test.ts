/** A boat that was kept, or saved to a file, when some of her entries had other names, opens with nothing lost. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat, isUnread, readBoatFile, writeBoatFile } from '../../../src/boat';
import { allOf } from '../all-of';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { readSaved, stepFrom } from '../../../src/notebook/keeping/read-saved';
import { isUnusable } from '../../../src/notebook/keeping/saved-text';
import { reckon } from '../../../src/reckon/reckon';
import { inRoot } from '../../tools/root.mjs';

const kept = readFileSync(inRoot('tests/notebook/keeping/saved-under-old-names.json'), 'utf8');

describe('kept in the browser', () => {
  const saved = readSaved(kept);
  if (isUnusable(saved)) throw new Error(saved.because);
  const { state, earlier, later } = saved;

  test('entries go by the names of today, in both versions, and so do the names in their texts', () => {
    expect(state.entries).toMatchObject({
      'laminate.density': '1.2 kg/L',
      'laminate.waste': '30 %',
      'deckBeam.waste': '12 %',
      'fillet.waste': 'laminate.waste',
      'shop.lengthA': '3 m',
      'shop.priceD': '2000 /m³',
    });
    expect(state.second).toStrictEqual({
      'laminate.density': null,
      'laminate.waste': 'shop.lengthA / 10 m',
    });
  });

  test('every one of them is a quantity that there is', () => {
    const known = new Set(allOf(wholeCatalogue(state.table)).given.map(({ name }) => name));
    const own = Object.keys(state.entries).filter((name) => !name.startsWith('deckBeam.')); // a placing of its own
    expect(own.filter((name) => !known.has(name))).toStrictEqual([]);
  });

  test('the steps kept with her lead to them too', () => {
    expect(stepFrom(state, earlier[0]!)?.entries['laminate.density']).toBe('1.15 kg/L');
    expect(stepFrom(state, later[0]!)?.entries).not.toHaveProperty('laminate.waste');
  });
});

describe('in a boat file', () => {
  const entries = {
    'laminate.glueWaste': '40 %',
    'glue.perMetre': '1 min',
    'yard.lengthB': '3.3 m',
    'moisture.air': '15 °C',
    // Things of lists went by names; they have numbers now, or the list begins anew.
    'boards.piece': 'cut3',
    'screwMap.screw': 'n12',
    'joints.joint': 'starboard2',
    'rollingBevel.mark': 'mark7',
    'glue.joint': 'sideLogs',
  };
  const old = writeBoatFile({ name: 'Old', table: demoBoat, entries });

  test('entries go by the names of today', () => {
    const boat = readBoatFile(old);
    expect(isUnread(boat) ? boat.faults : boat.entries).toStrictEqual({
      'laminate.waste': '40 %',
      'glue.perMetre': '1 min',
      'shop.lengthB': '3.3 m',
      'shop.air': '15 °C',
      'boards.piece': '3',
      'screwMap.screw': '12',
      'glue.joint': 'sideLogs',
    });
  });

  test('what a notebook says is left to the letter', () => {
    const notebooks = { 'keel-day': { text: 'Once `= laminate.glueWaste`, now waste.', away: false } };
    const boat = readBoatFile(writeBoatFile({ name: 'Old', table: demoBoat, entries, notebooks }));
    expect(isUnread(boat) ? boat.faults : boat.notebooks).toStrictEqual(notebooks);
  });

  test('and are reckoned with', () => {
    const { out, err } = reckon(['old.json', 'laminate.waste', 'boards.stockB'], () => old);
    expect(err).toBe('');
    const values = JSON.parse(out) as Record<string, { readonly value: number }>;
    expect(values['laminate.waste']?.value).toBeCloseTo(0.4, 12);
    expect(values['boards.stockB']?.value).toBeCloseTo(3.3, 12);
  });
});
