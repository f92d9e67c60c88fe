import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { type Values } from '../../../src/cells';
import { batten } from '../../../src/cells/shape/batten';
import { longLine } from '../../../src/cells/shape/long-line';
import { bendBatten, pushesOn, type Vec3 } from '../../../src/kernel';
import { plainShown, write } from '../../../src/measure';
import '../../kernel/near';
import { seeded } from '../../kernel/shapes';
import { withoutChines, withTwoChines } from '../odd-boats';
import { provesItsDrawing } from '../proofs';
import { onThreeSupports, round } from './sheer-boats';
import { tryCell, type Tried } from '../try-cell';
import { onHandAlone } from '../alone';

const dory = starter('ferry-dory')!;
const says = ({ warnings }: Tried) => warnings.map((warning) => warning.says).join(' | ');

describe('a line on a circle', () => {
  const tried = tryCell(batten, { station: 'frame10' }, round);

  test('has its radius amidships, and a strain of half the thickness over it', () => {
    // Over chords of 1/27 of the radius the bend of a cubic is off by a few ten-thousandths of itself.
    expect(tried.number('frame10.radiusHere')).toBeNear(8, 1e-3);
    // Printed 10.8 GPa, and a tenth for bending without the shear of the short test beam.
    expect(tried.number('frame10.shareHere')).toBeNear((1.1 * 10.8e9 * 0.019) / (2 * 8) / 70e6, 1e-3);
  });

  test('is bent 2 − √3 harder at the second duck, where free ends leave the first without a bend', () => {
    // Away from a free end the bend parts from the circle's by d, with d(i-1) + 4 d(i) + d(i+1) = 0.
    expect(tried.number('radius')).toBeNear(8 / (1 + 2 - Math.sqrt(3)), 5e-3);
    expect(['frame1', 'frame19']).toContain(tried.all['near']);
    expect(tried.number('strain')).toBeNear(0.0095 / tried.number('radius'), 1e-12);
  });
});

describe('three supports, the middle one out by d: 48 EI d / L³', () => {
  const d = 0.01;
  const bent = tryCell(batten, { view: 'profile' }, onThreeSupports);
  const force = (48 * bent.number('stiffness') * d) / 4 ** 3;

  test('holds P in the middle and half of it back at each end', () => {
    // Slopes of 1/200 leave some hundred-thousandths between the chord and the base.
    expect(bent.number('frame1.duck')).toBeNear(force, 1e-4);
    expect(bent.number('transom.duck')).toBeNear(-force / 2, 1e-4);
    expect(bent.number('bow.duck')).toBeNear(-force / 2, 1e-4);
    expect(bent.all['hardest']).toBe('frame1');
    expect(bent.number('allDucks')).toBeNear(2 * force, 1e-4);
  });

  test('bends hardest in the middle, round L² / 12 d', () => {
    expect(bent.number('radius')).toBeNear(16 / (12 * d), 1e-3);
    expect(bent.number('along')).toBeNear(2, 1e-4);
  });
});

const anyLine = fc
  .array(
    fc.tuple(fc.double({ min: 0.2, max: 1.5, noNaN: true }), fc.double({ min: -0.6, max: 0.6, noNaN: true })),
    { minLength: 3, maxLength: 14 },
  )
  .map((steps) => {
    let [x, y] = [0, 0];
    return steps.map(([dx, dy]): Vec3 => [(x += dx), (y += dy), 0]);
  });
const free = { start: 'natural', end: 'natural' } as const;

describe('ducks on a batten with free ends, along any line', () => {
  test('are in balance, and so are their moments', () => {
    fc.assert(
      fc.property(anyLine, (points) => {
        const pushes = pushesOn(bendBatten(points, free));
        const sum = (of: (push: Vec3, at: Vec3) => number) =>
          pushes.reduce((total, push, i) => total + of(push, points[i]!), 0);
        const size = sum(([px, py]) => Math.hypot(px, py));
        expect(sum(([px]) => px)).toBeNear(0, 0, 1e-11 * size);
        expect(sum(([, py]) => py)).toBeNear(0, 0, 1e-11 * size);
        const reach = Math.max(...points.map(([x, y]) => Math.hypot(x, y)));
        expect(sum(([px, py], [x, y]) => x * py - y * px)).toBeNear(0, 0, 1e-11 * size * reach);
      }),
      seeded,
    );
  });

  test('push the other way on the line turned over, and in the other order on the line turned round', () => {
    fc.assert(
      fc.property(anyLine, (points) => {
        const across = (line: readonly Vec3[]) => pushesOn(bendBatten(line, free)).map(([, py]) => py);
        const as = across(points);
        const size = Math.max(...as.map(Math.abs));
        const over = across(points.map(([x, y]): Vec3 => [x, -y, 0]));
        const about = across(points.map(([x, y]): Vec3 => [-x, y, 0]).toReversed()).toReversed();
        as.forEach((push, i) => {
          expect(over[i]!).toBeNear(-push, 1e-9, 1e-11 * size);
          expect(about[i]!).toBeNear(push, 1e-9, 1e-9 * size);
        });
      }),
      seeded,
    );
  });
});

describe('on the dory', () => {
  const tried = tryCell(batten, {}, dory);
  const stations = lists(dory).stations.map(({ id }) => id);

  test('has in its answers the worst of its table', () => {
    const most = (key: string) =>
      Math.max(...stations.map((station) => Math.abs(tried.number(`${station}.${key}`))));
    expect(tried.number('share')).toBeNear(most('shareHere'), 1e-12);
    expect(tried.number('greatest')).toBeNear(most('duck'), 1e-12);
    const hull = buildHull(offsetsOf(dory));
    const { ducks } = longLine(hull, hull.edge('sheer'), 'plan');
    expect(tried.number('allDucks')).toBeNear(
      tried.number('stiffness') * ducks.reduce((sum, duck) => sum + Math.abs(duck), 0),
      1e-12,
    );
    expect(tried.number('margin')).toBeNear(1 / tried.number('share'), 1e-12);
  });

  test('twice the thickness takes eight times the force, and twice the share', () => {
    const twice = tryCell(batten, { thickness: '38 mm' }, dory);
    expect(twice.number('greatest') / tried.number('greatest')).toBeNear(8, 1e-12);
    expect(twice.number('share') / tried.number('share')).toBeNear(2, 1e-12);
    expect(twice.number('mass') / tried.number('mass')).toBeNear(2, 1e-12);
    expect(twice.number('radius')).toBe(tried.number('radius'));
  });

  test('its limits are where the limits are met', () => {
    const at = (key: string) => tryCell(batten, { thickness: `${tried.number(key)} m` }, dory);
    expect(at('thickest').number('share')).toBeNear(0.5, 1e-9);
    expect(at('thickest').number('leastRadius')).toBeNear(tried.number('radius'), 1e-9);
    expect(at('thickestHeld').number('greatest')).toBeNear(50, 1e-9);
    expect(at('thinnest').number('dent')).toBeNear(0.003, 1e-9);
  });

  test('warns of a batten too thick for its wood, too stiff for its ducks, or too limp', () => {
    expect(says(tried)).toBe('');
    const thick = tryCell(batten, { thickness: '50 mm' }, dory);
    expect(says(thick)).toMatch(/what breaks this wood on average.*has to hold/);
    expect(says(tryCell(batten, { thickness: '36 mm', holds: '2000 N' }, dory))).toMatch(
      /more than the 50 % allowed/,
    );
    expect(says(tryCell(batten, { thickness: '5 mm' }, dory))).toMatch(/^The batten is limp/);
  });

  test('is a metre and a half longer than the line', () => {
    expect(tried.number('length')).toBeNear(tried.number('curve') + 1.5, 1e-12);
    expect(tried.number('curve')).toBeGreaterThan(5.36);
    expect(tried.number('curve')).toBeLessThan(5.6);
    // 448 kg/m3, Sitka spruce.
    expect(tried.number('mass')).toBeNear(448 * 0.019 * 0.019 * tried.number('length'), 1e-9);
  });

  test('draws each force as long as it is strong, towards the batten', () => {
    const arrows = tried.drawing!.shapes.filter((shape) => shape.shape === 'arrow');
    expect(arrows).toHaveLength(stations.length);
    const scale = arrows.map(({ from, to }, i) => (to[1] - from[1]) / tried.number(`${stations[i]}.duck`));
    for (const one of scale) expect(one).toBeNear(scale[0]!, 1e-9);
    expect(scale[0]).toBeGreaterThan(0);
    const told = tried.drawing!.shapes.flatMap((shape) => (shape.shape === 'label' ? [shape.text] : []));
    const texts = stations.map((station) => write(tried.number(`${station}.duck`), 'force', plainShown).text);
    expect(told).toStrictEqual(texts);
  });

  test('has room for the numbers of many stations on a phone', () => {
    expect(provesItsDrawing(tryCell(batten, {}, round).drawing).shapes.length).toBeGreaterThan(20);
  });

  test('draws the batten past its ends as far as it is said to run', () => {
    // Twice as large across as along.
    const lengths = tried
      .drawing!.shapes.filter((shape) => shape.shape === 'line' && shape.pen === 'hidden')
      .map((shape) => {
        if (shape.shape !== 'line') return 0;
        const [from, to] = [shape.points[0]!, shape.points.at(-1)!];
        return Math.hypot(to[0] - from[0], (to[1] - from[1]) / 2);
      });
    for (const length of lengths) expect(length).toBeNear(750, 1e-9);
    expect(lengths).toHaveLength(2);
  });

  test('charts the share along the batten, as high as the answer where it is highest', () => {
    const { lines } = tried.chart!;
    expect(lines).toHaveLength(1);
    const { points } = lines[0]!;
    const highest = Math.max(...points.map(([, share]) => share));
    expect(highest).toBeNear(tried.number('share'), 0.01);
    expect(points[0]![1]).toBeNear(0, 0, 1e-12);
    expect(points.at(-1)![0]).toBeNear(tried.number('curve'), 1e-9);
  });
});

describe('its offers', () => {
  const offersWith = (entries: Readonly<Record<string, string>>) => {
    const { all } = tryCell(batten, entries, dory);
    const values = all as unknown as Values;
    const on = onHandAlone(batten, values, null, (value, kind) => write(value, kind, plainShown).text);
    return batten.offers!(values, on).map(({ label, changes }) => ({
      label,
      // The cell stands by its own name here.
      tried: tryCell(
        batten,
        {
          ...entries,
          ...Object.fromEntries(Object.entries(changes).map(([of, to]) => [of.replace('{self}.', ''), to])),
        },
        dory,
      ),
    }));
  };

  test('are as thick as the bend allows, where the ducks would hold more', () => {
    const [thick] = offersWith({ thickness: '40 mm', holds: '2000 N' });
    expect(thick!.label).toMatch(/^As thick as the bend allows/);
    expect(thick!.tried.number('share')).toBeLessThanOrEqual(0.5);
    expect(thick!.tried.number('share')).toBeGreaterThan(0.47);
  });

  test('are as thick as the ducks hold, where the bend would allow more', () => {
    const [thick] = offersWith({ holds: '10 N' });
    expect(thick!.label).toMatch(/^As thick as the ducks hold/);
    expect(thick!.tried.number('greatest')).toBeLessThanOrEqual(10);
    expect(thick!.tried.number('greatest')).toBeGreaterThan(8.5);
  });

  test('are stiff enough for one that is limp, and the same batten turned over', () => {
    const offers = offersWith({ thickness: '6 mm' });
    const stiff = offers.find(({ label }) => label.startsWith('Stiff enough'))!;
    expect(stiff.tried.number('dent')).toBeLessThanOrEqual(0.003);
    const turned = offers.find(({ label }) => label.startsWith('Turned over'))!;
    expect(turned.tried.number('thickness')).toBeNear(0.019, 1e-9);
    expect(turned.tried.number('width')).toBeNear(0.006, 1e-9);
    expect(offersWith({ thickness: '19 mm' }).some(({ label }) => label.startsWith('Turned'))).toBe(false);
  });
});

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['a boat without chines', withoutChines],
  ['a boat with two chines', withTwoChines],
];

test.each(
  boats.flatMap(([name, table]) =>
    lists(table).edges.flatMap((edge, i) =>
      (i === 0 ? ['profile'] : ['plan', 'profile']).map((view) => ({ name, edge: edge.id, view, table })),
    ),
  ),
)('has an answer and a clear drawing on $name for the $edge in $view', ({ edge, view, table }) => {
  const tried = tryCell(batten, { edge, view }, table);
  expect(tried.issues).toStrictEqual({});
  expect(provesItsDrawing(tried.drawing).shapes.length).toBeGreaterThan(10);
  expect(tried.chart!.lines[0]!.points.flat().every(Number.isFinite)).toBe(true);
});

test('the keel in plan is straight: it says so, and the rest goes on', () => {
  const tried = tryCell(batten, { edge: 'keel' }, dory);
  expect(tried.issues['radius']).toBe(
    'the keel is straight there in plan: a batten lies along it without bending',
  );
  expect(tried.issues['greatest']).toBeUndefined();
  expect(tried.number('length')).toBeGreaterThan(5);
  expect(tried.number('thinnest')).toBeGreaterThan(0.005);
});
