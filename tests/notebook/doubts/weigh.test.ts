import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { isIssue, plainShown } from '../../../src/measure';
import { groupsOf, othersOf } from '../../../src/notebook/doubts/groups';
import { weigh, type Weighing } from '../../../src/notebook/doubts/weigh';
import { createGraph, type Graph } from '../../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { bench, derived, given, sum } from '../small-graph';

function weighed(graph: Graph, name: string, doubts: Readonly<Record<string, string>> = {}): Weighing {
  const work = weigh(graph, name, (of) => doubts[of], plainShown);
  const done: number[] = [];
  let step = work.next();
  for (; !step.done; step = work.next()) done.push(step.value);
  expect(done).toStrictEqual(done.toSorted((a, b) => a - b));
  if (isIssue(step.value)) throw new Error(step.value.issue);
  return step.value;
}

const plank = () =>
  bench(
    [
      given('keelson.thickness', '18 mm', { min: '17.95 mm' }),
      given('scarf.thickness', 'keelson.thickness'),
      given('scarf.long', '2 m'),
    ],
    [
      sum('scarf.whole', 'scarf.long', 'scarf.thickness', 'keelson.thickness'),
      derived('scarf.square', (read) => (read.number('keelson.thickness') - 0.018) ** 2),
      derived('scarf.jump', (read) => (read.number('keelson.thickness') > 0.018 ? 0.1 : 0)),
    ],
  );

describe('weighing', () => {
  test('a sum moves by what its parts are out by, the one that comes twice twice; squares add up', () => {
    const found = weighed(plank().graph, 'scarf.whole', { 'keelson.thickness': '0.04 mm' });
    expect(found.rows.map(({ number }) => number.quantity.name)).toStrictEqual([
      'scarf.long',
      'keelson.thickness',
    ]);
    expect(found.rows[0]!.swing!.more).toBeCloseTo(0.003, 12);
    expect(found.rows[1]!.swing!.less).toBeCloseTo(-0.00008, 12);
    expect(found.isStraight).toBe(true);
    const by = Math.hypot(0.003, 0.00008);
    expect(found.range[0]).toBeCloseTo(2.036 - by, 12);
    expect(found.range[1]).toBeCloseTo(2.036 + by, 12);
    const groups = groupsOf(found);
    expect(groups[0]!.moves).toBeCloseTo(0.003, 12);
    expect(othersOf(groups)).toBeCloseTo(0.00008, 12);
  });

  test('no number is tried beyond its limits', () => {
    const found = weighed(plank().graph, 'scarf.whole', { 'keelson.thickness': '1 mm' });
    const { swing } = found.rows.find(({ number }) => number.quantity.name === 'keelson.thickness')!;
    expect(swing!.less).toBeCloseTo(-0.0001, 12);
    expect(swing!.more).toBeCloseTo(0.002, 12);
  });

  test('where it bends all are tried at once: of a square nineteen of twenty lie between the published quantiles', () => {
    const { graph } = bench(
      [given('keelson.thickness', '18 mm')],
      [
        derived(
          'scarf.square',
          (read) => ((read.number('keelson.thickness') - 0.018) / 0.0005) ** 2,
          'number',
        ),
      ],
    );
    const found = weighed(graph, 'scarf.square', { 'keelson.thickness': '1 mm' });
    expect(found.isStraight).toBe(false);
    // Chi squared with one degree of freedom: 0.00098 and 5.02 (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
    expect(found.range[0]).toBeLessThan(0.01);
    expect(found.range[1]).toBeGreaterThan(4.3);
    expect(found.range[1]).toBeLessThan(5.7);
  });

  test('where each bends by itself they are added up, after a few trials that come to the same', () => {
    const { graph, worked } = bench(
      [given('keelson.thickness', '100 mm'), given('keelson.width', '1 m')],
      [
        derived('scarf.bent', (read) => {
          // In tenths of a metre about what stands: x + x²/2 + y/1000, rising where x > -1.
          const x = (read.number('keelson.thickness') - 0.1) * 10;
          return x + x ** 2 / 2 + (read.number('keelson.width') - 1) / 1000;
        }),
      ],
    );
    const found = weighed(graph, 'scarf.bent', { 'keelson.thickness': '40 mm', 'keelson.width': '1 mm' });
    expect(found.isStraight).toBe(false);
    expect(found.added).toBeGreaterThan(found.tried);
    // The bent one both ways, the slight one once, and the trials; else it would be 200 of these.
    expect(worked()['scarf.bent']).toBeLessThanOrEqual(1 + 2 + 1 + found.tried);
    // A doubt is two standard deviations, and nineteen of twenty lie within 1.96 of them: x = ±0.392.
    expect(found.range[0]).toBeCloseTo(-0.392 + 0.392 ** 2 / 2, 2);
    expect(found.range[1]).toBeCloseTo(0.392 + 0.392 ** 2 / 2, 2);
  });

  test('where they bend together all are tried: of a product of two the spread is of their squares and their product', () => {
    const { graph } = bench(
      [given('keelson.thickness', '1 m'), given('keelson.width', '1 m')],
      [
        derived(
          'scarf.product',
          (read) => (read.number('keelson.thickness') - 1) * (read.number('keelson.width') - 1),
        ),
        derived(
          'scarf.sum',
          (read) => read.number('scarf.product') + Math.abs(read.number('keelson.width') - 1) / 50,
        ),
      ],
    );
    const found = weighed(graph, 'scarf.sum', { 'keelson.thickness': '1 m', 'keelson.width': '1 m' });
    expect(found).toMatchObject({ isStraight: false, added: 0, tried: 200 });
  });

  test('a number at its limit is asked to both sides, however little it moves', () => {
    const { graph } = bench(
      [given('keelson.thickness', '18 mm', { max: '18 mm' }), given('keelson.width', '1 m')],
      [
        derived(
          'scarf.sum',
          (read) => read.number('keelson.thickness') + 1000 * read.number('keelson.width'),
        ),
      ],
    );
    const found = weighed(graph, 'scarf.sum', { 'keelson.thickness': '1 mm', 'keelson.width': '1 m' });
    const { swing } = found.rows.find(({ number }) => number.quantity.name === 'keelson.thickness')!;
    expect(swing!.less).toBeCloseTo(-0.001, 9);
    expect(swing!.more).toBe(0);
  });

  test('a jump is not smoothed away', () => {
    const found = weighed(plank().graph, 'scarf.jump');
    expect(found.isStraight).toBe(false);
    expect(found.range).toStrictEqual([0, 0.1]);
  });

  test('a share of the number, and a doubt that says nothing', () => {
    const { graph } = plank();
    const part = weighed(graph, 'scarf.whole', { 'scarf.long': '5 %' });
    expect(part.rows[0]!.swing!.more).toBeCloseTo(0.1, 12);
    const amiss = weighed(graph, 'scarf.whole', { 'scarf.long': 'a bit' });
    const row = amiss.rows.find(({ number }) => number.quantity.name === 'scarf.long')!;
    expect(row.swing).toBeNull();
    expect(row.doubt.text).toBe('a bit');
    expect(isIssue(row.doubt.by) && row.doubt.by.issue).toMatch(
      /^doubt of the scarf long as given: there is no quantity "a"/,
    );
    const signed = weighed(graph, 'scarf.whole', { 'scarf.long': '-2 mm' });
    const { by } = signed.rows.find(({ number }) => number.quantity.name === 'scarf.long')!.doubt;
    expect(isIssue(by) && by.issue).toMatch(/without a sign/);
  });
});

describe('on the ferry dory', () => {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({}),
    shown: plainShown,
  });

  test('the offsets are one group, and where chine and keel meet at the stem they move as one point', () => {
    const found = weighed(graph, 'hull.length');
    expect(found.silent).toBe(0);
    const [head] = groupsOf(found);
    expect(head!.isOffsets).toBe(true);
    // Its ends are two numbers of the plan, each out by 3 mm: sqrt(2) x 3 mm.
    expect(head!.moves).toBeCloseTo(Math.SQRT2 * 0.003, 6);
    const stem = weighed(graph, 'hull.volume').rows.find(
      ({ number }) => number.quantity.name === 'stem.keel.height',
    )!;
    expect(stem.alike).toStrictEqual(['stem.chine.height']);
    expect(stem.swing).not.toBeNull();
  });

  test('the wood’s stiffness moves a bend in proportion', () => {
    const found = weighed(graph, 'bend.share');
    const modulus = found.rows.find(({ number }) => number.quantity.name === 'bend.modulus')!;
    expect(modulus.swing!.more / found.answer).toBeCloseTo(0.44, 6);
    expect(modulus.doubt.usual.source).toMatch(/Wood Handbook/);
  });
});
