import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, demoBoat, offsetsOf, starter, starters } from '../../../src/boat';
import { cloth } from '../../../src/cells/finish/cloth';
import { resin } from '../../../src/cells/finish/resin';
import { plainShown } from '../../../src/measure';
import { layups } from '../../../src/trade/glass';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

/** Ten square metres of bottom in all, nothing else, nothing wasted. */
const bottomOnly = {
  bottomArea: '5 m^2',
  bilgeArea: '0 m^2',
  sideArea: '0 m^2',
  transomArea: '0 m^2',
  bowArea: '0 m^2',
  insideArea: '0 m^2',
  laps: '0 %',
  uptake: '0 mL/m^2',
  waste: '0 %',
  margin: '0 %',
};
const says = (entries: Record<string, string>) => tryCell(resin, entries).warnings.map((one) => one.says);

describe('resin', () => {
  test('10 m² of 200 g/m² cloth at 50:50, three coats of 0.09 mm: 2 kg to wet out, 2.7 L to fill', () => {
    const tried = tryCell(resin, { ...bottomOnly, clothWeight: '200 g/m^2', glassShare: '50 %' });
    expect(tried.number('clothMass')).toBeCloseTo(2, 12);
    expect(tried.number('wetOutMass')).toBeCloseTo(2, 12);
    expect(tried.number('wetOut') * 1000).toBeCloseTo(2000 / (3320 / 3), 9);
    expect(tried.number('filling') * 1000).toBeCloseTo(2.7, 12);
    expect(tried.number('sealing')).toBe(0);
    expect(tried.number('total')).toBeCloseTo(tried.number('wetOut') + tried.number('filling'), 15);
  });

  test('4 m² between layers of the skin, filled to half a millimetre: 2 L more, of the glue', () => {
    const glue = { ...bottomOnly, glueEpoxy: '0 g', stage: 'glue' };
    const [one, two] = [tryCell(resin, glue), tryCell(resin, { ...glue, layersArea: '4 m^2' })];
    expect(two.number('layerGlue') * 1000).toBeCloseTo(2, 9);
    expect((two.number('total') - one.number('total')) * 1000).toBeCloseTo(2, 9);
    expect((two.number('stageVolume') - one.number('stageVolume')) * 1000).toBeCloseTo(2, 9);
    expect(tryCell(resin, { ...glue, layersArea: '4 m^2', waste: '10 %' }).number('layerGlue')).toBeCloseTo(
      0.0022,
      9,
    );
  });

  test('bare wood: a first coat, then two later ones, inside and out', () => {
    const tried = tryCell(resin, {
      ...bottomOnly,
      bottomLayers: '0',
      sideLayers: '0',
      insideArea: '10 m^2',
      sealCoats: '3',
      uptake: '150 mL/m^2',
      laterCoat: '90 mL/m^2',
    });
    expect(tried.number('bareArea')).toBeCloseTo(20, 12);
    expect(tried.number('total') * 1000).toBeCloseTo(20 * (0.15 + 2 * 0.09), 9);
    expect(tried.number('clothArea')).toBe(0);
  });

  test('takes its areas from the hull, both sides of each panel and the transoms', () => {
    for (const { table } of starters) {
      const tried = tryCell(resin, {}, table);
      // The hull adds up its panels and transoms by another road.
      expect(tried.number('sheathedArea') / tried.number('insideArea')).toBeCloseTo(1, 9);
    }
  });

  test('a punt has two transoms', () => {
    expect(tryCell(resin, {}, starter('creek-punt')!).number('bowArea')).toBeGreaterThan(0.2);
    expect(tryCell(resin, {}, starter('class-skiff')!).number('bowArea')).toBe(0);
  });

  test('the label by weight and by volume name the same mix', () => {
    const byVolume = tryCell(resin, { resinParts: '2', hardenerParts: '1' });
    const byMass = tryCell(resin, { basis: 'mass', resinParts: '100', hardenerParts: '1000 / 23.2' });
    for (const key of ['resin', 'hardener', 'hardenerPer100', 'mixDensity']) {
      expect(byMass.number(key) / byVolume.number(key)).toBeCloseTo(1, 9);
    }
  });

  test('resin and hardener add up to the whole, stages to the net, weights to volume by density', () => {
    const parts = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(
        parts,
        parts,
        fc.constantFrom('volume', 'mass'),
        fc.integer({ min: 0, max: 60 }),
        (a, b, basis, waste) => {
          const tried = tryCell(resin, {
            basis,
            resinParts: `${a}`,
            hardenerParts: `${b}`,
            waste: `${waste} %`,
          });
          const n = (key: string) => tried.number(key);
          expect((n('resin') + n('hardener')) / n('total')).toBeCloseTo(1, 12);
          expect((n('sealing') + n('wetOut') + n('filling')) / n('net')).toBeCloseTo(1, 12);
          expect((n('resinMass') + n('hardenerMass')) / (n('total') * n('mixDensity'))).toBeCloseTo(1, 12);
          expect(n('hardenerMass') / n('resinMass')).toBeCloseTo(n('hardenerPer100') / 100, 12);
          const poured = basis === 'mass' ? n('resinMass') / n('hardenerMass') : n('resin') / n('hardener');
          expect(poured * b).toBeCloseTo(a, 9);
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  });

  test('twice the boat takes four times the resin', () => {
    const areas = { bottomArea: 2, sideArea: 3, transomArea: 0.5, insideArea: 11, bilgeArea: 0, bowArea: 0 };
    const at = (scale: number) =>
      tryCell(
        resin,
        Object.fromEntries(Object.entries(areas).map(([key, area]) => [key, `${area * scale} m^2`])),
      ).number('total');
    expect(at(4) / at(1)).toBeCloseTo(4, 12);
  });

  test('the two ways to the thickness agree: from densities, and by the form of ISO 12215-5', () => {
    for (const share of [25, 30, 45, 50, 60]) {
      const tried = tryCell(resin, { clothWeight: '400 g/m^2', glassShare: `${share} %` });
      expect(tried.number('plyThickness') * 1000).toBeCloseTo(
        (0.4 / 3.072) * (2.56 / (share / 100) - 1.36),
        12,
      );
    }
  });

  test.each(layups.rows.map((row) => [row.id, row.cells.glassShare?.value ?? 0] as const))(
    'lay-up %s brings its share of glass, %d',
    (layup, share) => {
      expect(tryCell(resin, { layup }).number('glassShare')).toBe(share);
      expect(tryCell(resin, { layup, glassShare: '47 %' }).number('glassShare')).toBeCloseTo(0.47, 12);
    },
  );

  test('the stages make up the whole, each by volume and on the scale', () => {
    const entries = { glueEpoxy: '2 kg', filletEpoxy: '300 g', fillerEpoxy: '700 g' };
    const at = (stage: string) => tryCell(resin, { ...entries, stage });
    const all = ['glue', 'fillets', 'filler', 'seal', 'wet', 'fill'].map(at);
    const sum = (key: string) => all.reduce((total, one) => total + one.number(key), 0);
    const whole = all[0]!;
    expect(sum('stageVolume') / whole.number('total')).toBeCloseTo(1, 12);
    expect(sum('stageMass') / (whole.number('total') * whole.number('mixDensity'))).toBeCloseTo(1, 12);
    expect(sum('stageResin') / whole.number('resinMass')).toBeCloseTo(1, 9);
    expect(sum('stageHardener') / whole.number('hardenerMass')).toBeCloseTo(1, 9);
    expect(whole.number('pastes') * whole.number('mixDensity')).toBeCloseTo(3, 12);
    const { rows } = whole;
    expect(rows.map(({ id }) => id)).toStrictEqual(['glue', 'fillets', 'filler', 'seal', 'wet', 'fill']);
    expect(whole.inRow('fillets', 'stageMass')).toBeCloseTo(0.3, 12);
    expect(whole.inRow('fillets', 'stageArea')).toBe('none');
    // Stages that take nothing have no row.
    expect(tryCell(resin).rows.map(({ id }) => id)).toStrictEqual(['seal', 'wet', 'fill']);
  });

  test('each stage has its area and its rule', () => {
    const at = (stage: string) =>
      tryCell(resin, { ...bottomOnly, stage, waste: '20 %', uptake: '150 mL/m^2', insideArea: '4 m^2' });
    // 10 m² under cloth, 4 bare: three coats of 150, 90 and 90 mL on these, 150 on the rest.
    expect(at('seal').number('stageArea')).toBeCloseTo(14, 12);
    expect(at('seal').number('stageRule') * 1e6).toBeCloseTo((4 * 330 + 10 * 150) / 14, 9);
    expect(at('wet').number('stageArea')).toBeCloseTo(10, 12);
    expect(at('wet').number('stageRule') * at('wet').number('mixDensity')).toBeCloseTo(0.203434, 6);
    expect(at('fill').number('stageRule') * 1e6).toBeCloseTo(270, 9);
    expect(at('wet').number('takes')).toBeCloseTo(0.203434, 6);
    expect(at('fill').number('takes') / at('fill').number('mixDensity')).toBeCloseTo(90e-6, 12);
    expect(at('seal').number('takes') / at('seal').number('mixDensity')).toBeCloseTo(150e-6, 12);
  });

  test('how far the stock goes: into the pastes, the wood, the cloth, the coats', () => {
    const job = { ...bottomOnly, uptake: '100 mL/m^2', glueEpoxy: '1 kg', clothWeight: '200 g/m^2' };
    const at = (inHand: string) => tryCell(resin, { ...job, inHand });
    const [density, sealed] = [at('0 L').number('mixDensity'), 1e-3];
    expect(at('0 L').number('sealEnds')).toBeCloseTo(1 / density + sealed, 12);
    expect(at('0 L').number('wetEnds')).toBeCloseTo(3 / density + sealed, 12);
    // Half of the 2 kg that wet out 10 m².
    const half = at(`${(2 / density + sealed) * 1000} L`);
    expect(half.number('wets')).toBeCloseTo(5, 6);
    expect(half.number('fillsCoats')).toBe(0);
    // And half of the three coats of 0.9 L.
    const coats = at(`${(3 / density + sealed + 1.35e-3) * 1000} L`);
    expect(coats.number('wets')).toBeCloseTo(10, 12);
    expect(coats.number('fillsCoats')).toBeCloseTo(1.5, 6);
  });

  describe('where the stock runs out, on the cloth as it is planned', () => {
    const at = (entries: Record<string, string>, table = demoBoat) =>
      tryCell(resin, entries, table, plainShown, [cloth]);

    test.each(starters)('$id: the cloth is the same in both cells', ({ table }) => {
      const planned = tryCell(cloth, {}, table);
      expect(at({}, table).number('clothArea') / planned.number('area')).toBeCloseTo(1, 9);
      expect(planned.number('area') / planned.number('layered') - 1).toBeCloseTo(
        planned.number('lapShare'),
        12,
      );
      expect(at({}, table).number('clothMass') / planned.number('mass')).toBeCloseTo(1, 9);
    });

    test.each(starters)('$id: piece by piece, in the order of laying', ({ table }) => {
      const planned = tryCell(cloth, {}, table);
      const laid = planned.rows.map(({ id }) => Number(planned.inRow(id, 'laid')));
      const dry = at({}, table);
      const perArea = ((1 + dry.number('waste')) * dry.number('wetOut')) / dry.number('clothArea');
      // Half of each piece in turn, the ones before it whole.
      laid.forEach((own, i) => {
        const wet = laid.slice(0, i).reduce((sum, area) => sum + area, 0) + own / 2;
        const inHand = `${(dry.number('sealEnds') + wet * perArea) * 1000} L`;
        const tried = at({ inHand }, table);
        expect(tried.number('wets') / wet).toBeCloseTo(1, 9);
        expect(tried.number('stops')).toBe(i + 1);
        expect(tried.number('stopsAfter')).toBeCloseTo(0.5, 6);
        expect(tried.all['stopsIn']).toBe(planned.rows[i]!.label.replace(/^\d+: /, ''));
      });
      expect(at({ inHand: '1 mL' }, table).number('stops')).toBe(1);
      expect(at({ inHand: '100 L' }, table).number('stops')).toBe(0);
    });

    test.each(starters)('$id: the hull shows it, what is hatched is what is wet', ({ table }) => {
      const hull = buildHull(offsetsOf(table));
      const dry = at({}, table);
      for (const share of [0.05, 0.5, 0.95]) {
        const [from, to] = [dry.number('sealEnds'), dry.number('wetEnds')];
        const tried = at({ inHand: `${(from + share * (to - from)) * 1000} L` }, table);
        const drawn = provesItsDrawing(tried.drawing);
        expect(drawn.says).toContain(`piece ${tried.number('stops')}`);
        expect(tried.warnings.map(({ says: told }) => told).join(' ')).toMatch(
          new RegExp(`in piece ${tried.number('stops')}, (the )?${tried.all['stopsIn'] as string}, after`),
        );
      }
      // All of it wet: each half of the bottom is hatched from end to end.
      const whole = provesItsDrawing(at({ inHand: '100 L' }, table).drawing);
      const xs = whole.shapes.flatMap((shape) =>
        shape.shape === 'area' && shape.part === 'bottom' ? shape.rings.flat().map(([x]) => x) : [],
      );
      const keel = hull.edges[0]!.points.map(([x]) => x * 1000);
      expect(Math.min(...xs)).toBeLessThanOrEqual(Math.min(...keel) + 1e-6);
      expect(Math.max(...xs)).toBeGreaterThanOrEqual(Math.max(...keel) - 1e-6);
      expect(whole.says).toContain('fill its weave');
    });

    test('while the cloth is asked of a flat face, no piece of the hull is named', () => {
      const flat = at({ inHand: '7 L', 'cloth.over': 'flat' });
      expect(flat.number('stops')).toBe(0);
      expect(flat.drawing?.title).toContain('Section');
    });

    test('narrow strips of bottom under much turned cloth are no fault of the resin', () => {
      const turned = at({ 'cloth.turn': '300 mm', 'cloth.strips': 'all', 'cloth.sideLayers': '0' });
      expect(turned.number('laps')).toBeGreaterThan(0.5);
      expect(turned.issues).toEqual({});
    });

    test('without a boat, or without cloth, there is no piece to name', () => {
      expect(tryCell(resin, { inHand: '7 L' }).number('stops')).toBe(0);
      expect(tryCell(resin, { inHand: '7 L' }).all['stopsIn']).toBe('no piece');
      expect(
        at({
          inHand: '1 L',
          'cloth.bottomLayers': '0',
          'cloth.sideLayers': '0',
          'cloth.strips': 'none',
        }).number('stops'),
      ).toBe(0);
    });
  });

  test('the scatter of the rules is that of many jobs drawn from their ranges, and the margin covers it', () => {
    const tried = tryCell(resin);
    const n = (key: string) => tried.number(key);
    // Each rule at the ends of its own range, the others in the middle.
    const swing = (entries: readonly Record<string, string>[]) => {
      const [low, high] = entries.map((one) => tryCell(resin, one).number('total'));
      return Math.abs(high! - low!) / 2;
    };
    const parts = [
      swing([{ uptake: '100 mL/m^2' }, { uptake: '200 mL/m^2' }]),
      swing([{ laterCoat: '70 mL/m^2' }, { laterCoat: '110 mL/m^2' }]),
      swing([{ glassShare: '45 %' }, { glassShare: '55 %' }]),
      swing([{ fillFilm: '80.1 µm' }, { fillFilm: '99.9 µm' }]),
      swing([{ waste: '12.5 %' }, { waste: '17.5 %' }]),
    ];
    const keys = ['sealScatter', 'laterScatter', 'wetScatter', 'fillScatter', 'wasteScatter'];
    keys.forEach((key, i) => expect(n(key) / parts[i]!).toBeCloseTo(1, 9));
    expect(n('spread')).toBeCloseTo(Math.hypot(...parts), 12);
    expect(n('least') + n('most')).toBeCloseTo(2 * n('total'), 12);
    expect(n('usualMargin')).toBe(n('margin'));
    expect(n('wanted')).toBeGreaterThanOrEqual(n('most'));
    expect(n('wanted')).toBeLessThan(n('most') + 0.01 * n('total'));
    // What is in the shop is not bought again.
    expect(tryCell(resin, { inHand: '4 L' }).number('toBuy')).toBeCloseTo(n('wanted') - 4e-3, 12);
    expect(tryCell(resin, { inHand: '40 L' }).number('toBuy')).toBe(0);
  });

  test('packs always cover the need, and a purchase is the one priced', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (tenths) => {
        const tried = tryCell(resin, {
          ...bottomOnly,
          bottomLayers: '0',
          sealCoats: '1',
          uptake: '100 mL/m^2',
          bottomArea: `${tenths / 2} m^2`,
        });
        expect(tried.number('total') * 1000).toBeCloseTo(tenths / 10, 9);
        expect(tried.number('leftOver')).toBeGreaterThanOrEqual(-1e-12);
        const { small, middle, large } = {
          small: tried.number('small'),
          middle: tried.number('middle'),
          large: tried.number('large'),
        };
        expect(tried.number('cost')).toBeCloseTo(30 * small + 96 * middle + 300 * large, 9);
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  test('9 L are one small and two middle packs, 13 L one large one with 2 L over', () => {
    const of = (litres: number) =>
      tryCell(resin, {
        ...bottomOnly,
        bottomLayers: '0',
        sealCoats: '1',
        uptake: '100 mL/m^2',
        bottomArea: `${litres * 5} m^2`,
      });
    const packs = ['small', 'middle', 'large'];
    expect(packs.map((pack) => of(9).number(pack))).toEqual([1, 2, 0]);
    expect(packs.map((pack) => of(13).number(pack))).toEqual([0, 0, 1]);
    expect(of(13).number('leftOver') * 1000).toBeCloseTo(2, 9);
  });

  test('by weight it costs what the smallest pack that is sold does', () => {
    // Two parts of 1160 kg/m³ and one of 1000 weigh 3.32 kg on 3 L: 30 for 1.10667 kg.
    const litre = tryCell(resin);
    expect(litre.number('smallestPack') * 1000).toBeCloseTo(1, 12);
    expect(litre.number('pricePerMass')).toBeCloseTo((30 * 3) / 3.32, 9);
    const four = tryCell(resin, { smallPack: '0 L' });
    expect(four.number('smallestPack') * 1000).toBeCloseTo(4, 12);
    expect(four.number('pricePerMass')).toBeCloseTo((96 * 3) / (4 * 3.32), 9);
    const fifteen = tryCell(resin, { smallPack: '0 L', middlePack: '0 L' });
    expect(fifteen.number('pricePerMass')).toBeCloseTo((300 * 3) / (15 * 3.32), 9);
  });

  test('what stays on the hull is glass and resin, without the waste', () => {
    const entries = { ...bottomOnly, clothWeight: '200 g/m^2', glassShare: '50 %', fillCoats: '0' };
    expect(tryCell(resin, entries).number('addedMass')).toBeCloseTo(4, 9);
    expect(tryCell(resin, { ...entries, waste: '50 %' }).number('addedMass')).toBeCloseTo(4, 9);
  });

  test('nothing on the shelf: the packs wait for a size, the resin does not', () => {
    const tried = tryCell(resin, { smallPack: '0 L', middlePack: '0 L', largePack: '0 L' });
    expect(tried.issues['large']).toContain('give the size of at least one pack');
    expect(tried.issues['pricePerMass']).toContain('give the size of at least one pack');
    expect(tried.number('total')).toBeGreaterThan(0);
  });

  describe('warnings', () => {
    test('none for the boat as it stands', () => expect(says({})).toEqual([]));
    test.each([
      ['starved cloth', { glassShare: '65 %' }, 'starved'],
      ['mat', { layup: 'mat' }, 'does not dissolve'],
      ['small job', { ...bottomOnly, bottomArea: '1 m^2', waste: '15 %' }, 'swallow more than 15 %'],
      ['heavy cloth, few coats', { clothWeight: '12 oz/yd^2', fillCoats: '2' }, 'shows its weave'],
      ['stock ends in sealing', { inHand: '3 L' }, 'while you are sealing'],
      ['stock ends in wetting out', { inHand: '7 L' }, 'wetting out the cloth'],
      ['stock ends in glue', { inHand: '1 L', glueEpoxy: '2 kg' }, 'in glue lines, fillets and filler'],
      ['stock within the scatter', { inHand: '12.2 L' }, 'it may come to'],
      ['stock ends in filling', { inHand: '10 L' }, 'filling the weave'],
    ])('%s', (_what, entries, wanted) => expect(says(entries).join(' ')).toContain(wanted));
    test('enough in the shop is not spoken of', () => expect(says({ inHand: '20 L' })).toEqual([]));
    test('of the stages in which the stock ends only one is named', () => {
      for (let litres = 1; litres < 12; litres += 0.5) {
        expect(
          says({ inHand: `${litres} L` }).filter((sentence) => sentence.includes('in the shop run out')),
        ).toHaveLength(litres * 1e-3 < tryCell(resin).number('total') ? 1 : 0);
      }
    });
  });

  describe('drawing', () => {
    testDrawings(resin, {
      'as the boat stands': {},
      'no cloth': { bottomLayers: '0', sideLayers: '0' },
      'three layers, no fill': { bottomLayers: '3', fillCoats: '0' },
      'many coats': { fillCoats: '10', bottomLayers: '6' },
      'thin cloth, thick film': { clothWeight: '20 g/m^2', fillFilm: '2 mm' },
    });

    test('its dimensions read as the figures and span them', () => {
      const drawing = provesItsDrawing(
        tryCell(resin, { clothWeight: '6 oz/yd^2', glassShare: '50 %' }).drawing,
      );
      expect(measured(drawing, '249 µm')).toBeCloseTo(0.249, 4);
      expect(measured(drawing, '90 µm')).toBeCloseTo(0.09, 9);
      expect(measured(drawing, '519 µm')).toBeCloseTo(0.519, 4);
    });
  });

  test('the chart ends at the whole, and draws the stock only where there is one', () => {
    const tried = tryCell(resin, { inHand: '4 L' });
    expect(tried.chart?.lines[0]?.points.at(-1)?.[1]).toBeCloseTo(tried.number('total'), 12);
    expect(tried.chart?.limits?.[0]).toMatchObject({ at: 0.004, axis: 'y' });
    expect(tryCell(resin).chart?.limits).toBeUndefined();
  });
});
