/** Parts that are cut: nothing is said right after, and afterwards what no longer fits, and by how much. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, partOf, starters, type Table } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { isIssue } from '../../../src/measure';
import { type Book, createBook } from '../../../src/notebook/book';
import { cutAs, givensOf } from '../../../src/notebook/graph/cut-part';
import type { Graph } from '../../../src/notebook/graph/graph';
import { apart, type Misfit, misfits } from '../../../src/notebook/graph/misfits';
import { freshState } from '../../../src/notebook/state/state';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { withoutChines, withTwoChines } from '../../cells/odd-boats';
import { allOf } from '../all-of';

const instances = cells.map(plainInstance);
const opened = (table: Table = demoBoat, entries: Record<string, string> = {}): Book =>
  createBook(freshState(table, entries), wholeCatalogue);
const cut = (book: Book, ...parts: string[]): void => {
  for (const part of parts) book.markCut(part, cutAs(part, book.inHand.value, instances));
};
const found = (book: Book): readonly Misfit[] => misfits(book.asBuilt.value, book.inHand.value, instances);
const cellNames = new Set(cells.map(({ id }) => id));
const partsOf = (graph: Graph): readonly string[] =>
  [...new Set(graph.names.map(partOf))].filter(
    (part) => !cellNames.has(part) && givensOf(part, graph).length > 0,
  );
const named = (all: readonly Misfit[], name: string): Misfit => {
  const one = all.find((misfit) => misfit.name === name);
  if (!one) throw new Error(`${name} is not among ${all.map((misfit) => misfit.name).join(', ')}`);
  return one;
};
const number = (graph: Graph, name: string): number => {
  const value = graph.value(name);
  if (typeof value !== 'number') throw new Error(`${name} has no number`);
  return value;
};

describe.each([
  ...starters.map(({ id, table }) => [id, table] as const),
  ['without chines', withoutChines] as const,
  ['with two chines', withTwoChines] as const,
])('%s', (_, table) => {
  test('with every part cut, nothing is said, and no number of the boat has moved', () => {
    const book = opened(table);
    const graph = book.first.value;
    const parts = partsOf(graph);
    const frames = parts.filter((part) => /^frame\d/.test(part));
    expect(frames.length).toBeGreaterThan(2);
    expect(parts).toContain('keelson');
    const before = new Map(graph.names.map((name) => [name, graph.value(name)]));
    cut(book, ...parts);
    for (const part of frames) {
      const { held, numbers } = book.asBuilt.value.cut[part]!;
      expect(Object.keys(held)).toContain(`${part}.sheer.height`);
      expect(Object.keys(numbers)).toContain(`${part}.side.flare`);
      expect(Object.keys(numbers)).toContain(`framePattern.side.cutLength`);
    }
    expect(found(book)).toStrictEqual([]);
    const moved = [...before].filter(([name, value]) => !isIssue(value) && graph.value(name) !== value);
    expect(moved).toStrictEqual([]);
  });

  test('with the whole table 20 mm higher by the plan, each frame says so of its heights alone', () => {
    const book = opened(table);
    cut(book, 'frame2');
    const graph = book.first.value;
    const heights = graph.names.filter((name) => /^\w+\.\w+\.height$/.test(name) && graph.entry(name));
    book.write(Object.fromEntries(heights.map((name) => [name, `${number(graph, name) + 0.02} m`])));
    const ofDesign = found(book).filter(({ how }) => how === 'designed');
    expect(ofDesign.map(({ name }) => name).toSorted()).toStrictEqual(
      heights.filter((name) => partOf(name) === 'frame2').toSorted(),
    );
    for (const { was, now } of ofDesign) expect((now as number) - (was as number)).toBeCloseTo(0.02, 9);
  });
});

describe('a cut frame', () => {
  test('says by how much a bevel is another, when its neighbour is widened', () => {
    const book = opened();
    const graph = book.first.value;
    const was = number(graph, 'frame3.chine.side.bevel');
    cut(book, 'frame3');
    const wider = { 'frame4.chine.halfBreadth': `${number(graph, 'frame4.chine.halfBreadth') + 0.06} m` };
    book.write(wider);
    // A boat that was drawn so from the beginning has the bevel that is told.
    const now = number(opened(demoBoat, wider).first.value, 'frame3.chine.side.bevel');
    const told = named(found(book), 'frame3.chine.side.bevel');
    expect(told).toMatchObject({ part: 'frame3', how: 'follows' });
    expect(told.was).toBeCloseTo(was, 8);
    expect(told.now).toBe(now);
    // The slope in plan rises with a wider neighbour forward, and the bevel with the slope.
    expect(now - was).toBeGreaterThan((0.25 * Math.PI) / 180);
    // The cell that gives the same bevel does not tell it again, nor the deadrise what the flare lacks to 90°.
    const names = found(book).map(({ name }) => name);
    expect(names).not.toContain('bevels.frame3.chineBevel');
    const flares = names.filter((name) => /^frame3\.sheer\.below\.(flare|deadrise)$/.test(name));
    expect(flares.length).toBeLessThanOrEqual(1);
    // What is cut comes before the slopes it is cut to.
    const firstSlope = names.findIndex((name) => name.endsWith('Slope'));
    expect(firstSlope).toBeGreaterThan(names.indexOf('frame3.chine.side.bevel'));
  });

  test('says nothing of what can be neither cut nor seen', () => {
    const book = opened();
    cut(book, 'frame3');
    const half = number(book.first.value, 'frame4.chine.halfBreadth');
    book.write({ 'frame4.chine.halfBreadth': `${half + 0.0002} m`, 'frame3.sheer.height': null });
    expect(found(book)).toStrictEqual([]);
  });

  test('stays where it is when the plan moves, and says how far', () => {
    const book = opened();
    cut(book, 'frame3');
    const graph = book.first.value;
    const half = number(graph, 'frame3.sheer.halfBreadth');
    book.write({ 'frame3.sheer.halfBreadth': `${half - 0.01} m` });
    expect(graph.value('frame3.sheer.halfBreadth')).toBe(half);
    expect(graph.designed('frame3.sheer.halfBreadth')).toBeCloseTo(half - 0.01, 12);
    expect(found(book)).toMatchObject([
      {
        name: 'frame3.sheer.halfBreadth',
        how: 'designed',
        was: half,
        now: graph.designed('frame3.sheer.halfBreadth'),
      },
    ]);
    expect(found(book)[0]!.size).toBeCloseTo(20, 6); // half a millimetre goes twenty times into ten
    book.markCut('frame3', null);
    expect(graph.value('frame3.sheer.halfBreadth')).toBeCloseTo(half - 0.01, 12);
    expect(found(book)).toStrictEqual([]);
  });

  test('that turns out otherwise than it was cut says what it measures, and the boat follows', () => {
    const book = opened();
    cut(book, 'frame3');
    const half = number(book.first.value, 'frame3.sheer.halfBreadth');
    book.measure({ 'frame3.sheer.halfBreadth': `${half - 0.004} m` });
    expect(named(found(book), 'frame3.sheer.halfBreadth')).toMatchObject({
      how: 'measured',
      was: half,
      now: book.first.value.value('frame3.sheer.halfBreadth'),
    });
    expect(number(book.first.value, 'frame3.sheer.halfBreadth')).toBeCloseTo(half - 0.004, 12);
  });

  test('of a measured breadth is cut to what was measured', () => {
    const book = opened();
    book.measure({ 'frame3.sheer.halfBreadth': '2 ft 1 1/2 in' });
    cut(book, 'frame3');
    expect(found(book)).toStrictEqual([]);
    book.measure({ 'frame3.sheer.halfBreadth': null });
    expect(number(book.first.value, 'frame3.sheer.halfBreadth')).toBe(0.6477);
    expect(found(book)).toMatchObject([{ name: 'frame3.sheer.halfBreadth', how: 'designed' }]);
  });

  test('does not mind what a cell is turned to, but minds how it is joined', () => {
    const book = opened(withTwoChines);
    cut(book, 'frame3');
    book.write({
      'bevels.frame': 'frame2',
      'bevels.chine': 'upperChine',
      'framePattern.frame': 'frame5',
      'framePattern.member': 'bottom',
      'limber.frame': 'frame1',
    });
    expect(found(book)).toStrictEqual([]);
    book.write({ 'framePattern.joint': 'butt' });
    expect(found(book).map(({ name }) => name.split('.')[0])).toContain('framePattern');
    expect(found(book).every(({ how }) => how === 'follows')).toBe(true);
  });

  test('says what can’t be reckoned any more, and what is there no more', () => {
    const book = opened();
    cut(book, 'frame3');
    book.write({ 'frame4.chine.halfBreadth': 'about so' });
    const missing = named(found(book), 'frame3.chine.side.bevel');
    expect(missing.size).toBe(Infinity);
    expect(missing.now).toMatchObject({ issue: expect.any(String) as string });
    book.undo();
    const { asBuilt } = book.state.value;
    const rest = { ...demoBoat, stations: demoBoat.stations.filter(({ name }) => name !== 'frame 3') };
    book.open({ ...book.state.value, table: rest, asBuilt });
    expect(found(book)).toMatchObject([{ part: 'frame3', how: 'gone', name: 'frame3' }]);
  });

  test('of a version that is tried holds in both, and each says where its own design differs', () => {
    const book = opened();
    const half = number(book.first.value, 'frame3.sheer.halfBreadth');
    book.tryAnother({ 'frame3.sheer.halfBreadth': `${half + 0.01} m` });
    cut(book, 'frame3');
    expect(found(book)).toStrictEqual([]);
    const values = [book.first.value, book.second.value!].map((graph) =>
      graph.value('frame3.sheer.halfBreadth'),
    );
    expect(values[0]).toBe(values[1]);
    expect(values[0]).toBeCloseTo(half + 0.01, 12);
    book.hold('first');
    expect(found(book)).toMatchObject([{ name: 'frame3.sheer.halfBreadth', how: 'designed', now: half }]);
  });
});

test.each([
  ['length', 0.65, 0.65049, 0.65051],
  ['angle', 0.2, 0.2 + (0.249 * Math.PI) / 180, 0.2 + (0.251 * Math.PI) / 180],
  ['mass', 40, 40.19, 40.21],
  ['count', 40, 40, 41],
  ['area', 0, 1e-13, 1e-9],
] as const)('a %s fits within its tolerance and no further', (kind, was, fits, misses) => {
  expect(apart(was, fits, kind)).toBeLessThanOrEqual(1);
  expect(apart(was, misses, kind)).toBeGreaterThan(1);
});

describe('whatever else is edited', () => {
  const { given } = allOf(wholeCatalogue(demoBoat));
  const names = given.map(({ name }) => name);
  const text = fc.constantFrom(
    '12 mm',
    '640 mm',
    '3',
    '7°',
    'butt',
    'nothing of sense',
    'frame3.sheer.height',
    '2 * side.thickness',
  );
  const changes = fc.dictionary(fc.constantFrom(...names), fc.option(text), {
    maxKeys: 6,
    noNullPrototype: true,
  });

  test('what is held of a cut part does not move, in either version', () => {
    const book = opened();
    cut(book, 'frame3', 'keelson', 'side');
    const { cut: as } = book.asBuilt.value;
    const held = Object.values(as).flatMap((part) => Object.keys(part.held));
    const before = held.map((name) => book.first.value.value(name));
    expect(held.length).toBeGreaterThan(12);
    fc.assert(
      fc.property(changes, changes, (one, other) => {
        const { value: start } = book.state;
        book.write(one);
        book.tryAnother(other);
        const graphs = [book.first.value, book.second.value!];
        const after = graphs.map((graph) => held.map((name) => graph.value(name)));
        expect(book.asBuilt.value.cut).toBe(as);
        // It can be told whatever was typed.
        for (const misfit of found(book)) expect(misfit.size).toBeGreaterThan(1);
        book.open(start);
        expect(after).toStrictEqual([before, before]);
      }),
      { seed: 17, numRuns: 40 },
    );
  });
});
