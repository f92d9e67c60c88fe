import { describe, expect, test } from 'vitest';
import { type Cell, choice, defineCell, input, type ListRow, step } from '../../../src/cells';
import { fact, tell } from '../../../src/cells/form/fact';
import { tableOf } from '../../../src/cells/form/row-quantities';
import { demoBoat, offsetsOf, buildHull } from '../../../src/boat';
import { tryCell } from '../try-cell';

let found = 0;

const longestEdge = fact(
  'the edge whose batten is longest',
  'geometry',
  ({ over }: { readonly over: number }, { hull }) => {
    found += 1;
    const long = hull.edges.filter((edge) => edge.length > over);
    if (long.length === 0) throw new Error('no edge is as long as that');
    return long.reduce((a, b) => (b.length > a.length ? b : a));
  },
);

/** Asks for the frame only where it is asked for a little: what it hangs on shows late. */
const here = fact(
  'the frame’s place, where that counts',
  'geometry',
  ({ over, frame }: { readonly over: number; readonly frame: string }, { hull }) =>
    over > 1.5 ? 0 : hull.station(frame).corners[0]![0],
);

const bays = fact('each frame', 'geometry', (_: { readonly over: number }, { hull }): readonly ListRow[] =>
  hull.frames.map(({ label }, i) => ({ id: `bay${i + 1}`, label, value: (i + 2) / 2 })),
);

/** Asks the hull for the longest edge, and reckons on from what it finds. */
const longest = defineCell({
  id: 'longest',
  stage: 'shape',
  title: 'Longest edge',
  question: 'Which edge is longest?',
  inputs: {
    over: input('length', 'Longer than', { preset: '1 m' }),
    frame: choice('Frame', { options: 'frames', preset: 'frame1' }),
  },
  steps: {
    edge: tell(longestEdge, 'choice', 'name of the longest edge', ({ name }) => name),
    pastIt: tell(here, 'length', 'forward of the frame, with what is asked', (x) => x, { how: 'added' }),
    isSheer: step('number', 'edge == "sheer" ? 1 : 0', 'one if it is the sheer', 'geometry'),
  },
  answers: [{ of: 'edge', label: 'edge', from: 'of this hull' }],
  inWords: 'The {edge} is longest.',
  table: tableOf({ caption: 'At every frame', over: 'frame', columns: [{ of: 'edge', label: 'edge' }] }),
  warnings: [],
  cautions: [],
  sources: [{ text: 'geometry', known: 'geometry' }],
  about: [],
});

const listed: Cell = {
  ...longest,
  table: tableOf({
    caption: 'By what is asked',
    over: 'over',
    rows: bays,
    columns: [{ of: 'pastIt', label: 'past it' }],
  }),
};

describe('a fact', () => {
  test('is found once for all that speak of it, in every row that makes no difference to it', () => {
    found = 0;
    const tried = tryCell(longest);
    expect(['edge', 'frame1.edge', 'frame2.edge', 'frame3.isSheer'].map((key) => tried.all[key])).toEqual([
      'sheer',
      'sheer',
      'sheer',
      1,
    ]);
    expect(found).toBe(1);
  });

  test('turns with the row as soon as it asks for what the row gives', () => {
    const places = buildHull(offsetsOf(demoBoat)).frames.map(({ corners }) => corners[0]![0]);
    const inRows = (over: string) => {
      const tried = tryCell(longest, { over });
      return places.map((_, i) => tried.all[`frame${i + 1}.pastIt`]);
    };
    expect(inRows('2 m')).toEqual(places.map(() => 0));
    expect(inRows('1 m')).toEqual(places);
    expect(inRows('2 m')).toEqual(places.map(() => 0));
  });

  test('gives a table its rows, and each row what the table runs over', () => {
    const tried = tryCell(listed, { over: '1500 mm', frame: 'frame2' });
    const x = buildHull(offsetsOf(demoBoat)).station('frame2').corners[0]![0];
    expect(tried.rows.map(({ id, value }) => [id, value])).toEqual(
      [1, 1.5, 2, 2.5, 3].map((value, i) => [`bay${i + 1}`, value]),
    );
    expect(tried.rows.map(({ id }) => tried.inRow(id, 'pastIt'))).toEqual([x, x, 0, 0, 0]);
  });
});

describe('a step that asks the hull', () => {
  test('gives a word that later steps and sentences can use', () => {
    const tried = tryCell(longest);
    expect(tried.all['edge']).toBe('sheer');
    expect(tried.number('isSheer')).toBe(1);
    expect(tried.words).toBe('The sheer is longest.');
  });
  test('stands in the rows of a table', () => expect(tryCell(longest).all['frame2.edge']).toBe('sheer'));
  test('says its reason where it finds nothing, and what follows waits', () => {
    const tried = tryCell(longest, { over: '40 m' });
    expect(tried.issues['edge']).toBe('no edge is as long as that');
    expect(tried.issues['isSheer']).toBe('no edge is as long as that');
  });
  test('waits with the hull', () => {
    const tried = tryCell(longest, { 'frame2.sheer.height': '3 kg' });
    expect(tried.issues['edge']).toMatch(/sheer/);
  });
});
