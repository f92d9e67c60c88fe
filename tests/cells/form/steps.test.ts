import { describe, expect, test } from 'vitest';
import { choice, defineCell, input, step } from '../../../src/cells';
import { fact, tell } from '../../../src/cells/form/fact';
import { tryCell } from '../try-cell';

const longestEdge = fact(
  'the edge whose batten is longest',
  'geometry',
  ({ over }: { readonly over: number }, { hull }) => {
    const long = hull.edges.filter((edge) => edge.length > over);
    if (long.length === 0) throw new Error('no edge is as long as that');
    return long.reduce((a, b) => (b.length > a.length ? b : a));
  },
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
    isSheer: step('number', 'edge == "sheer" ? 1 : 0', 'one if it is the sheer', 'geometry'),
  },
  answers: [{ of: 'edge', label: 'edge', from: 'of this hull' }],
  inWords: 'The {edge} is longest.',
  table: { caption: 'At every frame', over: 'frame', columns: [{ of: 'edge', label: 'edge' }] },
  warnings: [],
  cautions: [],
  sources: [{ text: 'geometry', known: 'geometry' }],
  about: [],
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
