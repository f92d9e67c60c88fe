import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters } from '../../../src/boat';
import { filletSeams } from '../../../src/boat/quantities/fillet-quantities';
import { fillet } from '../../../src/cells/finish/fillet';
import { stemBevel } from '../../../src/cells/frames/stem-bevel';
import { box, hullThrough } from '../../boat/shapes';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { withoutChines, withTwoChines } from '../odd-boats';
import { tryCell } from '../try-cell';

const says = (entries: Record<string, string>) =>
  tryCell(fillet, entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('fillet', () => {
  test('a square corner: r²(1 − π/4) along 20 m at 12 mm, nothing scraped off, 0.6181 L', () => {
    const tried = tryCell(fillet, {
      radius: '12 mm',
      angle: '90 deg',
      length: '20 m',
      sides: '1',
      waste: '0 %',
    });
    expect(tried.number('section') * 1e6).toBeCloseTo(144 * (1 - Math.PI / 4), 9);
    expect(Math.abs(tried.number('paste') * 1000 - 0.6181)).toBeLessThan(0.0001);
    expect(tried.number('width') * 1000).toBeCloseTo(12, 12);
    expect(tried.number('throat') * 1000).toBeCloseTo(12 * (Math.SQRT2 - 1), 12);
  });

  test('the section is what a fine strip by strip sum of the drawn corner gives', () => {
    for (const angle of [40, 60, 90, 120, 150]) {
      const half = (angle / 360) * Math.PI;
      // Along the bisector: between the faces up to the tangent points, less the circle of the tool.
      const [centre, foot] = [1 / Math.sin(half), Math.cos(half) / Math.tan(half)];
      const strips = 200_000;
      let sum = 0;
      for (let i = 0; i < strips; i += 1) {
        const at = (foot * (i + 0.5)) / strips;
        const hollow = 1 - (centre - at) ** 2;
        sum += 2 * (at * Math.tan(half) - Math.sqrt(Math.max(0, hollow))) * (foot / strips);
      }
      const section = tryCell(fillet, { radius: '10 mm', angle: `${angle} deg` }).number('section');
      // Midpoints miss the steep start of the circle by a power of the strip's width.
      expect(Math.abs((section * 1e4) / sum - 1)).toBeLessThan(1e-5);
    }
  });

  test('a seam by its own angles: station by station, not by their mean', () => {
    for (const { table } of starters) {
      const hull = buildHull(offsetsOf(table));
      for (const { id: along } of lists(table).chines) {
        const edge = hull.edge(along);
        // Each bay by the closed form at its two stations.
        let sum = 0;
        for (let i = 1; i < edge.arcs.length; i += 1) {
          const ratio = (station: number) => {
            const half = hull.stations[station]!.angle(along) / 2;
            return 1 / Math.tan(half) - Math.PI / 2 + half;
          };
          sum += ((ratio(i - 1) + ratio(i)) / 2) * (edge.arcs[i]! - edge.arcs[i - 1]!);
        }
        const tried = tryCell(fillet, { along, sides: '1', waste: '0 %', radius: '20 mm' }, table);
        expect(tried.number('net') / (sum * 0.02 ** 2)).toBeCloseTo(1, 6);
        const angles = hull.stations.map((station) => station.angle(along));
        expect(tried.number('angle')).toBeGreaterThan(Math.min(...angles));
        expect(tried.number('angle')).toBeLessThan(Math.max(...angles));
        // The table tells each station's own corner.
        const { rows } = tried;
        expect(rows).toHaveLength(hull.stations.length);
        rows.forEach(({ id }, i) => {
          expect(tried.inRow(id, 'openHere')).toBeCloseTo(angles[i]!, 9);
          const width = Number(tried.inRow(id, 'widthHere')) * 1000;
          expect(width).toBeCloseTo(20 / Math.tan(angles[i]! / 2), 6);
          const throat = Number(tried.inRow(id, 'throatHere')) * 1000;
          expect(throat).toBeCloseTo(20 / Math.sin(angles[i]! / 2) - 20, 6);
          const section = Number(tried.inRow(id, 'sectionHere')) * 1e6;
          expect(section).toBeCloseTo(400 * (1 / Math.tan(angles[i]! / 2) - (Math.PI - angles[i]!) / 2), 6);
        });
      }
    }
  });

  test('on the boat: none behind logs, this seam, or all her chines', () => {
    const at = (laid: string, more = {}) => tryCell(fillet, { laid, ...more }, withTwoChines);
    expect(at('none').number('onBoat')).toBe(0);
    expect(at('here').number('onBoat')).toBe(at('here').number('epoxyMass'));
    const [lower, upper] = lists(withTwoChines).chines.map(({ id }) => at('here', { along: id }));
    const all = at('all');
    expect(all.number('chineRun')).toBeCloseTo(2 * (lower!.number('length') + upper!.number('length')), 9);
    // Both seams with the tool of this one.
    const radius = `${all.number('radius') * 1000} mm`;
    const each = lists(withTwoChines).chines.map(({ id }) =>
      at('here', { along: id, radius }).number('onBoat'),
    );
    expect(all.number('onBoat') / (each[0]! + each[1]!)).toBeCloseTo(1, 6);
    const mean =
      (lower!.number('length') * lower!.number('section')) / lower!.number('radius') ** 2 +
      (upper!.number('length') * upper!.number('section')) / upper!.number('radius') ** 2;
    expect(all.number('seamMean')).toBeCloseTo((2 * mean) / all.number('chineRun'), 6);
    expect(tryCell(fillet, { laid: 'all' }, withoutChines).number('onBoat')).toBe(0);
  });

  test('all her seams: a box of plumb sides has corners of 90° and a bottom without one', () => {
    const hull = hullThrough(box(2, 1, 0.4));
    const square = 1 - Math.PI / 4;
    const seams = filletSeams(hull);
    const of = (kind: string) => seams.filter((seam) => seam.of === kind);
    expect(of('chine')).toStrictEqual([
      { of: 'chine', run: expect.closeTo(4, 9) as number, ratio: expect.closeTo(square, 6) as number },
    ]);
    expect(of('keel')[0]!.ratio).toBeCloseTo(0, 6);
    for (const { ratio } of of('end')) expect(ratio).toBeCloseTo(square, 6);
  });

  test.each(starters)(
    'all her seams on $id: posts by the bevel of the stem, transoms by the saw’s own cut',
    ({ table }) => {
      const hull = buildHull(offsetsOf(table));
      const all = tryCell(fillet, { laid: 'seams' }, table);
      const chines = tryCell(fillet, { laid: 'all' }, table);
      expect(all.number('chineRun')).toBeCloseTo(chines.number('seamRun'), 9);
      const ends = [hull.aft, hull.fore].map((end) =>
        end.role === 'stem' || end.role === 'sternpost'
          ? hull.edges.at(-1)!.points[end.index]![2] - hull.edges[0]!.points[end.index]![2]
          : 2 * hull.panels.reduce((sum, { name }) => sum + end.girth(name), 0),
      );
      const run = chines.number('seamRun') + hull.edges[0]!.length + ends[0]! + ends[1]!;
      // A raked stem is longer than it is high, and a transom's edge than its section.
      expect(all.number('seamRun')).toBeGreaterThan(run - 1e-6);
      expect(all.number('seamRun')).toBeLessThan(1.25 * run);
      expect(all.number('onBoat')).toBeGreaterThan(chines.number('onBoat'));
    },
  );

  test('up the stem the corner is twice what the stem is bevelled to', () => {
    const table = starter('class-skiff')!;
    const seam = filletSeams(buildHull(offsetsOf(table)))
      .filter(({ of }) => of === 'end')
      .at(-1)!;
    const tried = tryCell(stemBevel, {}, table);
    const ratios = tried.rows.map(({ id }) => {
      const inside = 2 * Number(tried.inRow(id, 'bevel'));
      return 1 / Math.tan(inside / 2) - (Math.PI - inside) / 2;
    });
    expect(Math.min(...ratios)).toBeLessThanOrEqual(seam.ratio + 1e-9);
    expect(Math.max(...ratios)).toBeGreaterThanOrEqual(seam.ratio - 1e-9);
  });

  test('a metre takes what the whole seam does, scrapings apart', () => {
    const tried = tryCell(fillet, { length: '4 m', sides: '1', waste: '0 %', outside: 'filled' });
    expect(tried.number('perMetre') * 4).toBeCloseTo(tried.number('epoxyMass'), 12);
  });

  test('goes with the square of the radius and with the length, on all seams together', () => {
    const of = (entries: Record<string, string>) => tryCell(fillet, entries).number('paste');
    expect(of({ radius: '20 mm' }) / of({ radius: '10 mm' })).toBeCloseTo(4, 12);
    expect(of({ length: '9 m' }) / of({ length: '3 m' })).toBeCloseTo(3, 12);
    expect(of({ sides: '2' }) / of({ sides: '1' })).toBeCloseTo(2, 12);
    expect(of({ waste: '30 %' }) / of({ waste: '0 %' })).toBeCloseTo(1.3, 12);
  });

  test('the even radius brings the throat of a square corner', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 140 }), (angle) => {
        const here = tryCell(fillet, { radius: '10 mm', angle: `${angle} deg` }).number('evenRadius');
        const even = tryCell(fillet, { radius: `${here * 1000} mm`, angle: `${angle} deg` });
        expect(even.number('throat') * 1000).toBeCloseTo(10 * (Math.SQRT2 - 1), 9);
      }),
      { seed: 5, numRuns: 20 },
    );
  });

  test('the gap outside is added only where it is filled', () => {
    const seam = {
      angle: '120 deg',
      lowerThickness: '6 mm',
      upperThickness: '6 mm',
      length: '1 m',
      sides: '1',
    };
    const [open, filled] = ['open', 'filled'].map((outside) => tryCell(fillet, { ...seam, outside }));
    expect(filled!.number('net') - open!.number('net')).toBeCloseTo(15.588e-6, 9);
    expect(filled!.drawing!.shapes.length).toBe(open!.drawing!.shapes.length + 1);
  });

  test('epoxy and filler make up the paste, by volume and by weight', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 100, max: 4000 }), (share, density) => {
        const tried = tryCell(fillet, { fillerShare: `${share} %`, fillerDensity: `${density} kg/m^3` });
        const n = (key: string) => tried.number(key);
        expect((n('epoxy') + n('fillerMass') / density) / n('paste')).toBeCloseTo(1, 12);
        const weighed = n('epoxy') * n('epoxyDensity') + n('fillerMass');
        expect(weighed / (n('paste') * n('pasteDensity'))).toBeCloseTo(1, 12);
      }),
      { seed: 7, numRuns: 30 },
    );
  });

  test('takes at least 10 mm, and twice the thinner panel where that is more', () => {
    const radius = (lowerThickness: string, upperThickness: string) =>
      tryCell(fillet, { lowerThickness, upperThickness }).number('radius') * 1000;
    expect(radius('4 mm', '6 mm')).toBeCloseTo(10, 12);
    expect(radius('9 mm', '6 mm')).toBeCloseTo(12, 12);
  });

  test.each(
    starters.flatMap(({ id, table }) =>
      lists(table).chines.map(({ id: along }) => ({ boat: id, along, table })),
    ),
  )('has an answer on the $boat along the $along', ({ along, table }) => {
    const tried = tryCell(fillet, { along }, table);
    expect(tried.issues).toEqual({});
    expect(tried.warnings).toEqual([]);
    provesItsDrawing(tried.drawing);
  });

  test('tells of the larger tool in an open corner only', () => {
    expect(tryCell(fillet, { angle: '120 deg' }).words).toContain('square corner');
    expect(tryCell(fillet, { angle: '90 deg' }).words).not.toContain('square corner');
    // How many seams the paste is for stands in the sentence.
    expect(tryCell(fillet, { angle: '90 deg', length: '4 m' }).words).toMatch(
      /^For 2 seams of 4000 mm each stir /,
    );
    expect(tryCell(fillet, { angle: '90 deg', sides: '1' }).words).toMatch(/^Stir /);
  });

  describe('warnings', () => {
    test.each([
      ['small tool', { radius: '11.9 mm' }, 'is small for a panel'],
      ['few scrapings', { waste: '19 %' }, 'Scrapings mostly'],
      ['runny', { fillerShare: '12 %' }, 'sags'],
      ['stiff', { fillerShare: '38 %' }, 'is dry'],
    ])('%s', (_what, entries, wanted) => expect(says(entries)).toContain(wanted));
    test('none at the limits themselves', () => {
      for (const fillerShare of ['12.5 %', '37.5 %'])
        expect(says({ fillerShare, waste: '20 %', radius: '12 mm' })).toBe('');
    });
  });

  describe('drawing', () => {
    testDrawings(fillet, {
      'as the boat stands': {},
      'a square corner': { angle: '90 deg' },
      'a sharp corner': { angle: '30 deg' },
      'nearly flat': { angle: '179 deg' },
      'a small tool between thick panels': {
        radius: '3 mm',
        lowerThickness: '50 mm',
        upperThickness: '50 mm',
      },
      'a large tool, the gap filled': { radius: '100 mm', outside: 'filled' },
    });

    test('its dimensions span what they say', () => {
      const drawing = provesItsDrawing(tryCell(fillet, { radius: '12 mm', angle: '60 deg' }).drawing);
      expect(measured(drawing, '20.8 mm')).toBeCloseTo(12 * Math.sqrt(3), 9);
      const throat = drawing.shapes.find((shape) => shape.shape === 'line' && shape.pen === 'dimension');
      const ends = throat?.shape === 'line' ? throat.points : [];
      expect(Math.hypot(...ends.at(-1)!)).toBeCloseTo(12, 9);
      expect(drawing.shapes.some((shape) => 'text' in shape && shape.text === 'throat 12 mm')).toBe(true);
    });
  });
});
