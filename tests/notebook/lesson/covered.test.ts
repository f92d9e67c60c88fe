/** What a question covers: nothing that is seen through the veil tells what is asked for, by whatever name it goes. */
import { describe, expect, test } from 'vitest';
import { nothingSaid, tradeTables } from '../../../src/boat';
import type { Instance } from '../../../src/cells';
import { isIssue } from '../../../src/measure';
import type { Graph } from '../../../src/notebook';
import { waitsFor } from '../../../src/notebook/lesson/blanks';
import { covering } from '../../../src/notebook/lesson/covered';
import type { AskPlace } from '../../../src/notebook/text/page-text';
import { askedOf, fence, SCARF } from './asked-of';
import { lesson } from './lesson-at';
import { lessons } from './six-lessons';

function coverOf(asks: readonly AskPlace[], placed: readonly Instance[], graph: Graph) {
  const instances = new Map(placed.map((one) => [one.name, one]));
  const waiting = new Map(
    asks.flatMap((ask) => waitsFor(ask, nothingSaid, graph).map((of): [string, string] => [of, ask.name])),
  );
  const isTyped = (name: string) => {
    const [word = '', key = ''] = name.split('.');
    return Object.hasOwn(instances.get(word)?.cell.inputs ?? {}, key);
  };
  const cover = covering(
    () => waiting,
    isTyped,
    (word) => instances.has(word),
  );
  return { waiting, isTyped, seen: cover.veiled(graph), ...cover };
}

describe.each(lessons)('%s', (id) => {
  const { asks, book, placed } = lesson(id);
  const graph = book.first.value;
  const { waiting, seen, isTyped } = coverOf(asks, placed, graph);
  const asked = [...waiting.keys()].filter((of) => !isTyped(of));
  const here = new Set(placed.map(({ name }) => name));
  const onSheet = ['hull', 'keel', 'sheer', 'keelson', 'stem', 'transom', 'shop', 'side', 'bottom'];
  const shown = [...here, ...onSheet].flatMap((word) => graph.namesOf(word));

  test('no number of its cells and its boat says what is asked for', () => {
    expect((tradeTables as readonly string[]).some((table) => here.has(table))).toBe(false);
    const telling = asked.flatMap((of) => {
      const is = graph.value(of);
      const { kind } = graph.quantity(of)!; // it is asked for
      const same = (name: string) => graph.quantity(name)?.kind === kind && graph.value(name) === is;
      const told = shown.filter((name) => !isTyped(name) && same(name) && !isIssue(seen.value(name)));
      return isIssue(is) || !isIssue(seen.value(of)) ? [of] : told;
    });
    expect(telling).toStrictEqual([]);
  });

  test('what is typed stays, and all is there again when the answers are shown', () => {
    const typed = placed
      .flatMap(({ name, cell }) => Object.keys(cell.inputs).map((key) => `${name}.${key}`))
      .filter((of) => graph.has(of) && !graph.entry(of)?.names.some((from) => waiting.has(from)));
    expect(typed.filter((of) => seen.value(of) !== graph.value(of))).toStrictEqual([]);
    const open = coverOf([], placed, graph).seen;
    for (const of of asked) expect(open.value(of)).toBe(graph.value(of));
  });
});

const OTHER = fence('cell scarf as otherScarf', 'thickness = askScarf.taper', 'slope = 8');
const asking = (answer: string, ...more: string[]) => {
  const { asks, placed, book } = askedOf(
    `${SCARF}\n${OTHER}\n${fence('ask a', 'question: How long?', `answer: ${answer}`, ...more)}`,
  );
  return { book, ...coverOf(asks, placed, book.first.value) };
};

test('an entry that is filled by what is asked, and what is reckoned on from it, wait for the guess', () => {
  const { seen, askOf, book } = asking('askScarf.taper');
  for (const name of ['askScarf.taper', 'otherScarf.thickness', 'otherScarf.taper'])
    expect(seen.value(name)).toHaveProperty('issue', expect.stringContaining('your guess first'));
  expect(askOf('otherScarf.taper', book.first.value)).toBe('a');
  expect(seen.entry('otherScarf.thickness')).toHaveProperty('text', '');
  // What has nothing to do with it stays.
  expect(seen.value('otherScarf.slope')).toBe(8);
  expect(seen.value('askScarf.thickness')).toBe(book.first.value.value('askScarf.thickness'));
  // By way of workings, of other entries, and from far off too.
  expect(seen.workOut((read) => read.number('askScarf.taper'))).toHaveProperty('issue');
  expect(seen.workOut((read) => read.maybe('askScarf.taper'))).toBeNull();
  const thick = seen.with(() => ({ 'askScarf.thickness': '30 mm' }));
  expect(thick.value('otherScarf.taper')).toHaveProperty('issue');
  expect(seen.supposing((read) => read.number('askScarf.taper'))({ 'askScarf.slope': '9' })).toHaveProperty(
    'issue',
  );
});

test('an entry keeps what a learner wrote into it, and not what that comes to', () => {
  const { book, seen } = asking('askScarf.taper');
  book.write({ 'otherScarf.boardLength': '2 * askScarf.taper' });
  expect(seen.entry('otherScarf.boardLength')).toMatchObject({ text: '2 * askScarf.taper', written: true });
  expect(isIssue(seen.value('otherScarf.boardLength'))).toBe(true);
});

test('a step that comes to the answer in other words is blank, and waits too', () => {
  const { waiting } = asking('askScarf.taper', 'step: what the other begins with | otherScarf.thickness');
  expect([...waiting.keys()]).toStrictEqual(['askScarf.taper', 'otherScarf.thickness']);
  const { waiting: none } = asking('144 mm', 'step: nine thicknesses less one | 14.4 cm');
  expect(none.size).toBe(0);
});
