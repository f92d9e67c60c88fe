import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answersOf, compiled, plainInstance, type Values } from '../../../../src/cells';
import { createGraph } from '../../../../src/notebook/graph/graph';
import { catalogueOf } from '../../../../src/notebook/graph/catalogue';
import { demoBoat } from '../../../../src/boat';
import { laminate } from '../../../../src/cells/timber/bending/laminate';
import { screwStrength } from '../../../../src/cells/timber/fastening/screw-strength';
import { plainShown } from '../../../../src/measure';
import { tryCell } from '../../try-cell';
import { measured, testDrawings } from '../../proofs';

const POUND = 4.4482216152605;
const modes = ['mainCrushes', 'sideCrushes', 'screwTilts', 'bendsInSide', 'bendsInMain', 'bendsTwice'];
const shop = {
  fastener: 'screw',
  diameter: '0.164 in',
  rootDiameter: '0.131 in',
  threadLength: '20 mm',
  mainLength: '26 mm',
  sideLength: '9 mm',
  mainGravity: '0.5',
  dryGravity: '0.48',
  sideGravity: '0.5',
  lasting: 'tenYears',
  service: 'dry',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(screwStrength, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

describe('screwStrength', () => {
  /**
   * Free-body equilibrium of a pin in two beds, worked out from where the pressures change sign: another road
   * than the table's closed forms. Loads a length qm = D Fem, qs = D Fes; no reduction.
   */
  test('modes come out of equilibrium of the pin', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        fc.double({ min: 0.003, max: 0.03, noNaN: true }),
        fc.double({ min: 0.006, max: 0.05, noNaN: true }),
        fc.double({ min: 0.3, max: 0.7, noNaN: true }),
        fc.double({ min: 0.3, max: 0.7, noNaN: true }),
        (ls, lm, gm, gs) => {
          const tried = tryCell(screwStrength, {
            ...shop,
            sideLength: `${ls * 1000} mm`,
            mainLength: `${lm * 1000} mm`,
            mainGravity: String(gm),
            sideGravity: String(gs),
            reduction: '1',
          });
          const d = 0.131 * 0.0254;
          const [qm, qs] = [tried.number('mainEmbed') * d, tried.number('sideEmbed') * d];
          const hinge = (tried.number('yieldStress') * d ** 3) / 6;
          // Shear P at the plane. A rigid end of length l under q turns over with P x + q x^2 … balanced by its far end.
          const rigid = (q: number, l: number, P: number) => {
            // pressure q over b next to the plane one way, over the rest the other way: q (2 b - l) = P
            const b = (P / q + l) / 2;
            return (q * b * b) / 2 - q * (l - b) * (b + (l - b) / 2);
          };
          // A bent part: full pressure from the plane to the hinge, where shear is nothing.
          const bent = (q: number, P: number) => (P * P) / (2 * q) - hinge;
          const solve = (moment: (P: number) => number, most: number) => {
            let [low, high] = [0, most];
            for (let i = 0; i < 200; i++) {
              const middle = (low + high) / 2;
              if (moment(middle) > 0) high = middle;
              else low = middle;
            }
            return low;
          };
          const most = { screwTilts: Math.min(qm * lm, qs * ls), bendsInSide: qm * lm, bendsInMain: qs * ls };
          const found = {
            screwTilts: solve((P) => rigid(qm, lm, P) + rigid(qs, ls, P), most.screwTilts),
            bendsInSide: solve((P) => rigid(qm, lm, P) + bent(qs, P), most.bendsInSide),
            bendsInMain: solve((P) => rigid(qs, ls, P) + bent(qm, P), most.bendsInMain),
          };
          const bendsTwice = solve((P) => bent(qm, P) + bent(qs, P), 1e7);
          expect(tried.number('bendsTwice') / bendsTwice).toBeCloseTo(1, 6);
          for (const [key, P] of Object.entries(found)) {
            // Beyond crushing a part along the whole pin it has no end left to tilt in.
            if (P >= 0.999 * most[key as keyof typeof most]) continue;
            compared += 1;
            expect(tried.number(key) / P).toBeCloseTo(1, 6);
          }
        },
      ),
      { seed: 5, numRuns: 40 },
    );
    expect(compared).toBeGreaterThan(60);
  });

  test('the smallest of the modes is the push, and it is named', () => {
    const tried = tryCell(screwStrength, shop);
    expect(tried.number('lateral')).toBe(Math.min(...modes.map((key) => tried.number(key))));
    expect(tried.words).toMatch(/\(mode (Im|Is|II|IIIm|IIIs|IV)\)/);
  });

  test.each([
    [{ sideLength: '1 mm' }, 'mode Is'],
    [{ mainLength: '3 mm', sideLength: '40 mm' }, 'mode Im'],
    [{ mainLength: '8 mm', sideLength: '8 mm', yieldStress: '200000 psi' }, 'mode II'],
    [{ mainLength: '9 mm', sideLength: '40 mm' }, 'mode IIIm'],
    [{ mainLength: '40 mm', sideLength: '9 mm' }, 'mode IIIs'],
    [{ mainLength: '60 mm', sideLength: '60 mm' }, 'mode IV'],
  ])('%o gives in %s', (entries, named) => {
    const tried = tryCell(screwStrength, { ...shop, ...entries });
    expect(tried.drawing!.says).toContain(`it gives in ${named}.`);
    expect(tried.words).toContain(tried.number('pushCounts') > 0 ? `(${named})` : 'nothing sideways');
  });

  test('under 6 diameters in the main part nothing is allowed sideways, and the words say what would earn it', () => {
    // 6 x 0.164 in is 25 mm; 14 mm is enough for 2.33 mm.
    const tried = tryCell(screwStrength, { ...shop, mainLength: '14 mm', threadLength: '13 mm' });
    expect(tried.number('pushAllowed')).toBe(0);
    expect(tried.number('lateral')).toBeGreaterThan(0);
    expect(tried.words).toMatch(
      /nothing sideways.* 25 mm.* stands 14 mm, 3\.36\d? diameters.* no thicker than 2\.3 mm/,
    );
    expect(tried.drawing!.says).toContain('the code allows none of it');
    expect(tried.chart!.says).toContain('the code allows none of it');
    const shown = screwStrength.answers.filter(
      ({ when }) => when === undefined || compiled(screwStrength, when).evaluate(tried.all as Values) !== 0,
    );
    expect(shown.map(({ of }) => of)).toStrictEqual(['pullAllowed', 'depthAsked']);
    const deep = tryCell(screwStrength, { ...shop, mainLength: '25 mm' });
    expect(deep.number('pushAllowed')).toBeGreaterThan(0);
  });

  test('the older rule asks 7 diameters and gives nothing under them', () => {
    const at = (mainLength: string) =>
      tryCell(screwStrength, { ...shop, mainLength, threadLength: '20 mm' }).number('olderAllowable');
    // 7 x 0.164 in is 29.2 mm.
    expect(at('29 mm')).toBe(0);
    expect(at('29.2 mm')).toBeGreaterThan(0);
  });

  test('thicker than 1/4 in the formulas of the push end, and no figure stands at the head', () => {
    const tried = tryCell(screwStrength, { ...shop, diameter: '8 mm', mainLength: '60 mm' });
    expect(tried.number('pushAllowed')).toBe(0);
    expect(tried.words).toContain('the formulas end at 1/4 in');
  });

  test('hard or soft, and its group, follow from the wood', () => {
    const of = (species: string) => {
      const { mainGravity: _, dryGravity: __, ...bare } = shop;
      const tried = tryCell(screwStrength, { ...bare, species });
      return [tried.number('hardwood'), tried.number('olderGroup')];
    };
    expect(of('whiteOak')).toEqual([1, 1]);
    expect(of('douglasFirCoast')).toEqual([0, 2]);
    expect(of('westernRedCedar')).toEqual([0, 4]);
    expect(of('okoume')[0]).toBe(1);
  });

  test('three parts take two planes of shear, and never tilt: twice IV', () => {
    const thick = { ...shop, mainLength: '60 mm', sideLength: '60 mm' };
    const [one, two] = ['single', 'double'].map((shear) => tryCell(screwStrength, { ...thick, shear }));
    expect(two!.number('lateral')).toBeCloseTo(2 * one!.number('lateral'), 9);
  });

  test('a permanent load in wet service keeps 0.9 x 0.7 of both', () => {
    const dry = tryCell(screwStrength, shop);
    const wet = tryCell(screwStrength, { ...shop, lasting: 'permanent', service: 'wet' });
    for (const key of ['pullAllowed', 'pushAllowed'])
      expect(wet.number(key) / dry.number(key)).toBeCloseTo(0.63, 12);
  });

  test('a smooth nail that is wet and dries keeps a quarter, a ring nail all; a screw in end grain nothing', () => {
    const pull = (entries: Readonly<Record<string, string>>) =>
      tryCell(screwStrength, { ...shop, ...entries }).number('pullAllowed');
    const ratio = (fastener: string) =>
      pull({ fastener, service: 'wet' }) / pull({ fastener, service: 'dry' });
    expect(ratio('smoothNail')).toBeCloseTo(0.25, 12);
    expect(ratio('ringNail')).toBe(1);
    expect(pull({ grain: 'end' })).toBe(0);
    expect(pull({ fastener: 'lag', grain: 'end' }) / pull({ fastener: 'lag' })).toBeCloseTo(0.75, 12);
  });

  test('the average pull that draws a screw out is 5.5 times the pull allowed, for one gravity', () => {
    const tried = tryCell(screwStrength, { ...shop, mainGravity: '0.48' });
    expect(tried.number('breaking') / tried.number('pull')).toBeCloseTo(15_700 / 2850, 9);
  });

  test('heavier wood and more thread never hold less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.25, max: 0.8, noNaN: true }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (gravity, more) => {
          const less = tryCell(screwStrength, { ...shop, mainGravity: String(gravity) });
          const heavier = tryCell(screwStrength, { ...shop, mainGravity: String(gravity + more) });
          for (const key of ['pullAllowed', 'pushAllowed'])
            expect(heavier.number(key)).toBeGreaterThanOrEqual(less.number(key) * (1 - 1e-12));
        },
      ),
      { seed: 3, numRuns: 25 },
    );
  });

  test('a No. 10 screw has the steel and the factor of its diameter, a wood its gravity', () => {
    const tried = tryCell(screwStrength, { diameter: '0.19 in', species: 'whiteOak' });
    expect(tried.number('reduction')).toBeCloseTo(2.4, 12);
    expect(tried.number('yieldStress') / 6894.757293168361).toBeCloseTo(80_000, 3);
    expect(tried.number('mainGravity')).toBe(0.73);
    expect(tried.number('dryGravity')).toBe(0.68);
  });

  test('older allowable loads by group, lb', () => {
    const lb = ['one', 'two', 'three', 'four'].map(
      (group) =>
        tryCell(screwStrength, { ...shop, mainLength: '30 mm', group }).number('olderAllowable') / POUND,
    );
    [129.1, 106.5, 87.1, 67.8].forEach((printed, i) => expect(lb[i]).toBeCloseTo(printed, 1));
  });

  test('what a layer’s fastening is taken to hold is what this cell allows it, in either system', () => {
    const screw = {
      fastener: 'screw',
      diameter: '0.164 in',
      threadLength: '25 mm',
      mainLength: '25 mm',
      service: 'wet',
    };
    const allowed = tryCell(screwStrength, { ...screw, species: 'douglasFirCoast' }).number('pullAllowed');
    for (const length of ['mm', 'feet'] as const) {
      const holds = tryCell(laminate, {}, undefined, { ...plainShown, length }).number('screwHolds');
      expect(holds).toBeLessThanOrEqual(allowed);
      expect(holds).toBeGreaterThan(0.95 * allowed);
    }
  });

  describe('warnings', () => {
    test('none for the shop’s usual screw', () => expect(says(shop)).toBe(''));
    test('too thick', () => expect(says({ ...shop, diameter: '8 mm' })).toContain('up to 1/4 in'));
    test('end grain', () => expect(says({ ...shop, grain: 'end' })).toContain('end grain'));
    test('root thicker than shank', () =>
      expect(says({ ...shop, rootDiameter: '5 mm' })).toContain('thicker than the shank'));
    test('thread in the air', () =>
      expect(says({ ...shop, threadLength: '30 mm' })).toContain('More thread'));
    test('nails that dry out', () =>
      expect(says({ ...shop, fastener: 'smoothNail', service: 'wet' })).toContain('a quarter'));
    test('a wood that the older table lacks', () =>
      expect(says({ ...shop, dryGravity: '0.6' })).toContain('nearest row'));
  });

  testDrawings(screwStrength, {
    'as it stands': {},
    'the shop’s screw': shop,
    'double shear': { ...shop, shear: 'double' },
    'thin on thick': { ...shop, sideLength: '1 mm', mainLength: '100 mm' },
    'thick on thin': { ...shop, sideLength: '60 mm', mainLength: '8 mm' },
  });

  test('the drawing carries the figures to scale, and the chart the joint', () => {
    const tried = tryCell(screwStrength, shop);
    const { drawing, chart } = tried;
    expect(measured(drawing, '9 mm')).toBeCloseTo(9, 9);
    expect(measured(drawing, '26 mm')).toBeCloseTo(26, 9);
    expect(chart!.points![0]).toMatchObject({ y: tried.number('lateral') });
  });
});

test('the diameter is typed as shops call it, by the number of the screw', () => {
  // ASME B18.6.1: 0.060 in and 0.013 in more a number, from memory.
  for (const [typed, inches] of [
    ['#10', 0.19],
    ['No. 8', 0.164],
    ['no 6', 0.138],
  ] as const)
    expect(tryCell(screwStrength, { ...shop, diameter: typed }).number('diameter') / 0.0254).toBeCloseTo(
      inches,
      12,
    );
  const { issues } = tryCell(screwStrength, { ...shop, diameter: '#3', rootDiameter: '#8' });
  expect(issues['diameter']).toBe('diameter: no size goes by "#3"');
  // A number is that of the shank, not of its root.
  expect(issues['rootDiameter']).toMatch(/"#" has no meaning/);
});

test('while the push can’t be told, one answer waits for it, not that and what stands in its place', () => {
  const told = (mainLength: string) => {
    const instance = plainInstance(screwStrength);
    const entries = Object.fromEntries(
      Object.entries({ ...shop, mainLength }).map(([key, text]) => [`screwStrength.${key}`, text]),
    );
    const graph = createGraph({
      catalogue: () => catalogueOf(demoBoat, [instance]),
      entries: () => entries,
      shown: plainShown,
    });
    return answersOf(instance, (by) => graph.workOut(by)).map(({ of }) => of);
  };
  expect(told('26 mm')).toStrictEqual(['pullAllowed', 'pushAllowed']);
  expect(told('10 mm')).toStrictEqual(['pullAllowed', 'depthAsked']);
  expect(told('so long')).toStrictEqual(['pullAllowed', 'pushAllowed']);
});
