/** Inputs that are asked only where they count. */
import { describe, expect, test } from 'vitest';
import { lists } from '../../../src/boat';
import { compiled, isAsked, isChoice, partsOf, plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { notch } from '../../../src/cells/frames/notch';
import { bend } from '../../../src/cells/timber/bending/bend';
import { isIssue } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import type { Graph } from '../../../src/notebook/graph/graph';
import { freshState } from '../../../src/notebook/state/state';
import { withTwoChines } from '../odd-boats';

const bookOf = (cell: (typeof cells)[number], entries: Readonly<Record<string, string>>) =>
  createBook(freshState(withTwoChines, entries), (of) => catalogueOf(of, [plainInstance(cell)]));
const askedIn = (cell: (typeof cells)[number], entries: Readonly<Record<string, string>> = {}) => {
  const graph = bookOf(cell, entries).first.value;
  const instance = plainInstance(cell);
  return Object.keys(cell.inputs).filter((key) => isAsked(instance, key, (by) => graph.workOut(by)));
};
const conditional = cells.flatMap((cell) =>
  Object.entries(cell.inputs)
    .filter(([, { when }]) => when !== undefined)
    .map(([key, { when = '' }]) => ({ cell, key, when, name: `${cell.id}.${key}` })),
);

test('a chord is asked for where the curve is one, an edge where it is an edge', () => {
  const of = (curve: string) => askedIn(bend, { 'bend.curve': curve });
  expect(of('edge')).toContain('along');
  expect(of('edge')).not.toContain('chord');
  expect(of('chord')).toEqual(expect.arrayContaining(['chord', 'chordRise', 'radius']));
  expect(of('chord')).not.toContain('along');
  expect(of('own')).not.toContain('chord');
});

test('a notch is asked for the line that its own timber follows', () => {
  const sides = ['chineLog', 'sheerClamp'].map((timber) => askedIn(notch, { 'notch.timber': timber }));
  expect(sides[0]).toEqual(
    expect.arrayContaining(['chine', 'flare', 'deadrise', 'chinePlan', 'chineProfile']),
  );
  expect(sides[1]).toEqual(expect.arrayContaining(['sheerFlare', 'sheerPlan', 'sheerProfile', 'setBack']));
  expect(sides[0]!.filter((key) => /^sheer|^setBack/.test(key))).toStrictEqual([]);
  expect(sides[1]!.filter((key) => /^chine|^flare|^deadrise/.test(key))).toStrictEqual([]);
});

test('what is at fault is asked wherever it stands, and what is not asked keeps its entry', () => {
  const entries = { 'bend.curve': 'edge', 'bend.chord': '3 thumbs' };
  expect(askedIn(bend, entries)).toContain('chord');
  const book = bookOf(bend, { 'bend.chord': '3 m' });
  book.write({ 'bend.curve': 'chord' });
  expect(book.first.value.value('bend.chord')).toBe(3);
});

describe.each(conditional)('$name', ({ cell, key, when }) => {
  test('turns on other inputs of its own cell', () => {
    const names = compiled(cell, when).names;
    expect(names.length).toBeGreaterThan(0);
    expect(Object.keys(cell.inputs).filter((of) => of !== key)).toEqual(expect.arrayContaining([...names]));
  });

  test('counts where it is asked, and nowhere else', () => {
    const [switched = ''] = compiled(cell, when).names;
    const by = cell.inputs[switched]!;
    const answers = isChoice(by) && typeof by.options !== 'string' ? by.options.map(({ id }) => id) : [];
    expect(answers.length).toBeGreaterThan(1);
    for (const id of answers) {
      const entries = { [`${cell.id}.${switched}`]: id };
      const asked = askedIn(cell, entries).includes(key);
      // A step may speak of it alone, as the radius of a chord does; what is said and drawn by must not.
      expect([id, moves(entries, asked ? Object.keys(cell.steps) : saidBy(cell))]).toStrictEqual([id, asked]);
    }
  });

  /** Whether another entry moves one of these. */
  function moves(entries: Readonly<Record<string, string>>, of: readonly string[]): boolean {
    const spec = cell.inputs[key]!;
    const others = isChoice(spec)
      ? (typeof spec.options === 'string' ? lists(withTwoChines).edges : spec.options).map(({ id }) => id)
      : ['7 mm', '1.7 m', '11 deg', '40 deg', '0.3', '4', '90 g/m^2', '900 kg/m^3', '400 kg'];
    const told = (graph: Graph) => of.map((one) => JSON.stringify(graph.value(`${cell.id}.${one}`))).join();
    const before = told(bookOf(cell, entries).first.value);
    return others.some((text) => {
      const graph = bookOf(cell, { ...entries, [`${cell.id}.${key}`]: text }).first.value;
      return !isIssue(graph.value(`${cell.id}.${key}`)) && told(graph) !== before;
    });
  }
});

/** What the answers, the sentence, the warnings and the table say. */
function saidBy(cell: (typeof cells)[number]): readonly string[] {
  const sentences = partsOf(cell.inWords).map(({ text }) => text);
  const formulas = cell.warnings.flatMap(({ when: that }) => [...compiled(cell, that).names]);
  const put = [
    ...sentences,
    ...cell.warnings.flatMap(({ says }) => partsOf(says).map(({ text }) => text)),
  ].flatMap((text) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name));
  const columns = cell.table?.columns.map(({ of }) => of) ?? [];
  return [...new Set([...cell.answers.map(({ of }) => of), ...formulas, ...put, ...columns])].filter(
    (name) => name in cell.steps,
  );
}
