/** Inputs that are asked only where they count. */
import * as fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoBoat, lists, starters } from '../../../src/boat';
import { type Cell, compiled, isAsked, isChoice, plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { notch } from '../../../src/cells/frames/notch';
import { bend } from '../../../src/cells/timber/bending/bend';
import { isIssue } from '../../../src/measure';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { freshState } from '../../../src/notebook/state/state';
import { ALL, entriesFor, moves, toldBy, TOLD } from '../moves';
import { withTwoChines } from '../odd-boats';
import { graphWith } from '../try-cell';

const askedIn = (cell: Cell, entries: Readonly<Record<string, string>> = {}) => {
  const graph = graphWith(cell, entries, withTwoChines);
  const instance = plainInstance(cell);
  return Object.keys(cell.inputs).filter((key) => isAsked(instance, key, graph));
};
const conditional = cells.flatMap((cell) =>
  Object.entries(cell.inputs)
    .filter(([, { when }]) => when !== undefined)
    .map(([key, { when = '' }]) => ({ cell, key, when, name: `${cell.id}.${key}` })),
);

/** `bilge.thickness`: what the boat has to have. */
const NAME = /^[a-z]\w*\.\w+$/;
const words = (setting: Readonly<Record<string, string>>) =>
  Object.entries(setting)
    .map(([name, id]) => `${name.split('.')[1]} ${id}`)
    .join() || 'as it stands';

/** A choice of the cell's own turns it on and off. */
function isTurnedOff(cell: Cell, key: string): boolean {
  const { when = '' } = cell.inputs[key]!; // the key is one of the inputs
  if (when === '' || NAME.test(when)) return false;
  return compiled(cell, when).names.some((name) => {
    const spec = cell.inputs[name];
    return spec && isChoice(spec) && typeof spec.options !== 'string';
  });
}

/** As it stands, and each answer of each choice that turns other inputs on or off. */
function settingsOf(cell: Cell): readonly Readonly<Record<string, string>>[] {
  const whens = conditional.filter((one) => one.cell === cell && !NAME.test(one.when));
  const switches = new Set(whens.flatMap(({ when }) => compiled(cell, when).names));
  return [
    {},
    ...[...switches].flatMap((key) => {
      const spec = cell.inputs[key];
      return spec && isChoice(spec) && typeof spec.options !== 'string'
        ? spec.options.map(({ id }) => ({ [`${cell.id}.${key}`]: id }))
        : [];
    }),
  ];
}

const boats = [demoBoat, withTwoChines, ...starters.map(({ table }) => table)];

type Telling = Readonly<Record<string, string>>;
/** States in which what is seldom seen to count does. */
const TELLING: Readonly<Record<string, Telling | readonly Telling[]>> = {
  // The printed lengths differ by the faces of 3/8 in alone.
  butt: { 'butt.thickness': '3/8 in' },
  // The plan is a little off.
  offsets: { 'offsets.planLength': '5.38 m' },
  // A rigid glue presses by the wood.
  clamps: { 'clamps.glue': 'resorcinol' },
  // A log bears on the bottom by its thickness, a keelson by its width alone.
  fairing: { 'fairing.timber': 'chineLog', 'fairing.face': 'below' },
  // The last of several coats slips otherwise than the first.
  cure: { 'cure.paintSlip': '30 h', 'cure.paintCoats': '4' },
  // Alone on the boat it is asked for nothing: some of all.
  buyList: {
    'buyList.sheetsNeed': '6',
    'buyList.sheetsCost': '300',
    'buyList.glueIs': 'resorcinol',
    'buyList.glueVolume': '3 L',
    'buyList.clothLength': '12 m',
    'buyList.clothCost': '90',
    'buyList.paintVolume': '7.7 L',
    'buyList.smallTinPrice': '12',
    'buyList.middleTinPrice': '20',
    'buyList.largeTinPrice': '60',
  },
  // The limber and the keelson are cut from the bottom's member.
  screwMap: { 'screwMap.member': 'bottom' },
  // Between thin panels the least radius is the custom of the system.
  fillet: { 'fillet.lowerThickness': '3 mm', 'fillet.upperThickness': '3 mm' },
  // Each line of the parts is asked below one that is filled in; another joint parts port from starboard.
  // And so many joints clear of frames, on blocks.
  sheets: [
    {
      'sheets.joint': 'scarf',
      'sheets.sideAt': 'frames',
      ...Object.fromEntries(['A', 'B', 'C', 'D'].map((part) => [`sheets.part${part}Pieces`, '1'])),
    },
    { 'sheets.bottomAt': 'clear', 'sheets.sideAt': 'clear' },
  ],
};
/** As many states are tried of each setting, as long as a field has moved nothing yet. */
const STATES = 6;

/** The cell set so, on one boat after another: first with all else as it stands, then with many of its numbers moved. */
function* states(cell: Cell, setting: Readonly<Record<string, string>>) {
  const next = fc.sample(fc.nat(999), { seed: 5, numRuns: 4000 });
  for (const telling of [TELLING[cell.id] ?? []].flat())
    yield { boat: lists(demoBoat), graph: graphWith(cell, { ...telling, ...setting }) };
  for (let at = 0; at < STATES; at += 1) {
    const table = boats[at % boats.length]!; // within the list
    const boat = lists(table);
    const bare = graphWith(cell, setting, table);
    const entries = Object.entries(cell.inputs).flatMap(([key, spec]): [string, string][] => {
      const name = `${cell.id}.${key}`;
      const now = bare.value(name);
      const isKept = at < 2 || name in setting || (isChoice(spec) && typeof spec.options === 'string');
      if (isKept || isIssue(now) || next.pop()! % 2 === 0) return []; // as many as are asked for
      const near = entriesFor(spec, now, boat).slice(0, 4);
      return near.length > 0 ? [[name, near[next.pop()! % near.length]!]] : [];
    });
    yield { boat, graph: graphWith(cell, { ...Object.fromEntries(entries), ...setting }, table) };
  }
}

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
  const book = createBook(freshState(withTwoChines, { 'bend.chord': '3 m' }), (of) =>
    catalogueOf(of, [plainInstance(bend)]),
  );
  book.write({ 'bend.curve': 'chord' });
  expect(book.first.value.value('bend.chord')).toBe(3);
});

describe.each(conditional)('$name', ({ cell, key, when }) => {
  test('turns on other inputs and steps of its own cell, or on what the boat has', () => {
    const named = NAME.test(when) ? [when] : compiled(cell, when).names;
    expect(named.length).toBeGreaterThan(0);
    const others = [...Object.keys(cell.inputs), ...Object.keys(cell.steps)].filter((of) => of !== key);
    const graph = graphWith(cell, {}, withTwoChines);
    expect(named.filter((name) => !others.includes(name) && !graph.has(name))).toStrictEqual([]);
  });
});

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_, cell) => {
  const instance = plainInstance(cell);
  const keys = Object.keys(cell.inputs);
  const settings = settingsOf(cell);
  /** By field and setting: whether it is asked there in a state in which it moves something. */
  const idle = new Set<string>();
  const unasked: string[] = [];
  beforeAll(() => {
    for (const [at, setting] of settings.entries()) {
      // What a choice turns off has to count wherever it is asked; all else somewhere.
      const left = new Set(keys.filter((key) => (at === 0) !== isTurnedOff(cell, key)));
      const asked = new Set<string>();
      let tried = 0;
      for (const { graph, boat } of states(cell, setting)) {
        const before = toldBy(instance, graph);
        const off: Record<string, readonly string[]> = {};
        tried += 1;
        for (const key of keys) {
          const isHere = isAsked(instance, key, graph);
          const now = graph.value(`${cell.id}.${key}`);
          if (isHere) asked.add(key);
          // What waits for a number elsewhere is told to wait.
          if (isHere && isIssue(now)) left.delete(key);
          if (isIssue(now) || (isHere ? !left.has(key) : tried > 2)) continue;
          const entries = entriesFor(cell.inputs[key]!, now, boat);
          if (!isHere) off[key] = entries.slice(0, 3);
          else if (moves(instance, { [key]: entries }, { graph, before }, ALL)) left.delete(key);
        }
        // All at once, for none of them should move anything; which it was where one does.
        if (moves(instance, off, { graph, before }, TOLD))
          for (const [key, entries] of Object.entries(off))
            if (moves(instance, { [key]: entries }, { graph, before }, TOLD))
              unasked.push(`${key}, ${words(setting)}`);
        if (left.size === 0 && tried > 1) break;
      }
      for (const key of left) if (asked.has(key)) idle.add(`${key}, ${words(setting)}`);
    }
  }, 120_000);

  test('asks for nothing that moves nothing', () => {
    expect([...idle]).toStrictEqual([]);
  });

  test('asks for all that moves what it says', () => {
    expect(unasked).toStrictEqual([]);
  });
});
