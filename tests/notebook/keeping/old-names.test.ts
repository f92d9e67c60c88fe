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

const asVersion1 = (file: string) => file.replace('"version": 2', '"version": 1');

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

describe('in a boat file of version 1', () => {
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
    'fasten.pitch': '65 mm',
    'clamps.screwPitch': 'fasten.pitch - 5 mm',
    'screwMap.pitch': '45 mm',
    'resin.smallPack': '750 mL',
    'resin.smallPrice': '24',
    'boards.quoted': 'length',
    'boards.pricedFor': 'chineLog',
    'boards.perLengthA': '4 /m',
    'butt.kind': 'strap',
    'butt.glassVolume': '40 %',
  };
  const old = asVersion1(writeBoatFile({ name: 'Old', table: demoBoat, entries }));

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
      'shop.screwPitch': '65 mm',
      'clamps.screwPitch': 'shop.screwPitch - 5 mm',
      'screwMap.pitch': '45 mm',
      'shop.smallPack': '750 mL',
      'shop.smallPrice': '24',
      'boards.quoted': 'length',
      'shop.boardThickness': 'chineLog.thickness',
      'shop.boardWidth': 'chineLog.boardWidth',
      'shop.perLengthA': '4 /m',
      'butt.kind': 'strap',
      'butt.glassShare': '1 / (1 + (1 / (40 %) - 1) * 1200 / 2560)',
    });
  });

  test('what a notebook says is left to the letter', () => {
    const notebooks = { 'keel-day': { text: 'Once `= laminate.glueWaste`, now waste.', away: false } };
    const boat = readBoatFile(
      asVersion1(writeBoatFile({ name: 'Old', table: demoBoat, entries, notebooks })),
    );
    expect(isUnread(boat) ? boat.faults : boat.notebooks).toStrictEqual(notebooks);
  });

  test('and are reckoned with', () => {
    const asked = {
      'fasten.pitch': 0.065,
      'screwCount.pitch': 0.065,
      'clamps.screwPitch': 0.06,
      'screwMap.pitch': 0.045,
      'resin.smallPack': 0.75e-3,
      'resin.smallPrice': 24,
      // 4 a metre for 19 by 38 mm.
      'boards.paidA': 4 / (0.019 * 0.038),
      // Of cloth of 300 g/m² two fifths by volume are glass of 2560 kg/m³.
      'butt.plyThickness': 0.3 / 2560 / 0.4,
    };
    const { out, err } = reckon(
      ['old.json', 'laminate.waste', 'boards.stockB', ...Object.keys(asked)],
      () => old,
    );
    expect(err).toBe('');
    const values = JSON.parse(out) as Record<string, { readonly value: number }>;
    for (const [name, value] of Object.entries(asked))
      expect([name, values[name]?.value]).toStrictEqual([name, expect.closeTo(value, 9)]);
    expect(values['laminate.waste']?.value).toBeCloseTo(0.4, 12);
    expect(values['boards.stockB']?.value).toBeCloseTo(3.3, 12);
  });
});

describe('a file of version 1 with entries of cells', () => {
  const file = readFileSync(inRoot('tests/notebook/keeping/version-1-cells.boat.json'), 'utf8');
  const boat = readBoatFile(file);
  if (isUnread(boat)) throw new Error(boat.faults.join());

  test('what one cell had and others read of it is the shop’s; what each had for itself stays its own', () => {
    expect(boat.entries).toStrictEqual({
      'keelson.thickness': '20 mm',
      'scarf.thickness': '3/4 in',
      'clamps.glue': 'resorcinol',
      'shop.air': '14 °C',
      'shop.woodMoisture': '15 %',
      'glue.moisture': 'shop.woodMoisture + 1 %',
      'shop.lengthA': '2.7 m',
      'shop.onePerson': '200 N',
      'shop.fillerShare': '30 %',
      'shop.screwsIn': 'inch',
      'limber.kerf': '4 mm',
    });
    expect(boat.asBuilt?.measured).toStrictEqual({ 'bend.width': '88 mm', 'shop.woodMoisture': '16 %' });
  });

  test('opens with every number as it was', () => {
    const asked = {
      'scarf.thickness': 0.01905,
      'bend.thickness': 0.02,
      'clamps.shop': 287.15,
      'glue.shop': 287.15,
      'moisture.now': 0.16,
      'glue.moisture': 0.17,
      'boards.stockA': 2.7,
      'bend.holds': 200,
      'laminate.fillerShare': 0.3,
      'limber.kerf': 0.004,
      'notch.kerf': 0.003,
      'bend.width': 0.088,
    };
    const { out, err } = reckon(['old.json', ...Object.keys(asked)], () => file);
    expect(err).toBe('');
    const values = JSON.parse(out) as Record<string, { readonly value: number }>;
    for (const [name, value] of Object.entries(asked)) expect(values[name]?.value).toBeCloseTo(value, 9);
    const glues = reckon(['old.json', 'clamps.glue', 'glue.glue', 'screwCount.soldIn'], () => file);
    expect(JSON.parse(glues.out)).toMatchObject({
      'clamps.glue': { value: 'resorcinol' },
      'glue.glue': { value: 'epoxy' },
      'screwCount.soldIn': { value: 'inch' },
    });
  });

  test('is saved under the names of today, and then left as it is', () => {
    const saved = writeBoatFile(boat);
    expect(JSON.parse(saved)).toMatchObject({ version: 2, entries: boat.entries });
    // In a file of today the cell's own name holds in that cell alone.
    const again = readBoatFile(saved.replace('"limber.kerf"', '"moisture.air"').replace('"4 mm"', '"10 °C"'));
    expect(isUnread(again) ? again.faults : again.entries).toMatchObject({
      'shop.air': '14 °C',
      'moisture.air': '10 °C',
    });
  });
});
