/** The six lessons: each question has a key, what the text says of it is so, and any learner's word keeps them good. */
import { describe, expect, test } from 'vitest';
import { isIssue } from '../../../src/measure';
import { draw } from '../../../src/notebook/lesson/draw';
import { keyTo } from '../../../src/notebook/lesson/key';
import { lesson } from './lesson-at';
import { lessons } from './six-lessons';

describe.each(lessons)('%s', (id) => {
  const { asks, page, keyOf, seed, book } = lesson(id);

  test('asks two questions or more, has a key to each and to each step, and ends in a mark on wood', () => {
    expect(asks.length).toBeGreaterThanOrEqual(2);
    for (const { name, steps } of asks) {
      expect(keyOf(name).is).not.toBe('words');
      for (const { answer } of steps) expect(keyTo(answer, book.first.value)).toHaveProperty('value');
    }
    expect(page.headings.at(-1)?.text).toBe('The mark');
    expect(page.places.length).toBeLessThanOrEqual(4);
  });

  test('keeps its questions good by any learner’s word', () => {
    const words = Array.from({ length: seed ? 30 : 0 }, (_, at) => `learner ${at}`);
    const bad = words.filter((word) => isIssue(draw(word, seed!, asks, book.first.value)));
    expect(bad).toStrictEqual([]);
  });
});

test('the table of offsets: feet, inches and eighths; half of her; a fifth of her size', () => {
  const { worth, starter, keyOf } = lesson('reading-offsets');
  // 5 x 12 + 3 + 4/8.
  expect(worth('eighths', '63.5 in')).toBe('right');
  // What is asked in inches is answered in inches.
  expect(worth('eighths', '63 1/2')).toBe('right');
  expect(worth('eighths', '5 ft 3 1/2 in')).toBe('right');
  expect(keyOf('face')).toStrictEqual({ is: 'direction', so: 'falls' });
  const frame = starter!.table.stations.find(({ name }) => name === 'frame 2');
  const text = JSON.stringify(frame);
  // Twice the half-breadth of her sheer at frame 1.
  expect(JSON.stringify(starter!.table.stations.find(({ name }) => name === 'frame 1'))).toContain('666');
  expect(worth('breadth', '1332 mm')).toBe('right');
  expect(worth('breadth', '666 mm')).toBe('low');
  const lines = JSON.stringify(lesson('reading-offsets').page.blocks);
  // Half-breadths and heights of chine and sheer over five, to the millimetre.
  for (const [full, fifth] of [
    [560, 112],
    [76, 15],
    [711, 142],
    [519, 104],
  ] as const) {
    expect(text).toContain(String(full));
    expect(Math.round(full / 5)).toBe(fifth);
    expect(lines).toContain(`${fifth} mm`);
  }
});

test('the line: frame 2, moved out by the 50 mm that were misread, within what is asked for', () => {
  const { keyOf, worth } = lesson('is-it-fair');
  expect(keyOf('where')).toMatchObject({ is: 'choice', id: 'frame2' });
  expect(worth('which', '50 mm')).toBe('right');
  expect(worth('which', '-50 mm')).toBe('low');
});

test('the scarf: eight thicknesses; steeper is weaker; flatter eats board', () => {
  const { keyOf, worth } = lesson('why-one-in-eight');
  expect(worth('taper', '8 * 18 mm')).toBe('right');
  expect(keyOf('steeper')).toStrictEqual({ is: 'direction', so: 'falls' });
  expect(keyOf('flatter')).toStrictEqual({ is: 'direction', so: 'falls' });
});

test('two boards: half the share, a quarter of the pull, four times as stiff once glued', () => {
  const { keyOf, book } = lesson('two-for-one');
  const of = (name: string) => {
    const value = book.first.value.value(name);
    return typeof value === 'number' ? value : Number.NaN;
  };
  const share = keyOf('share');
  expect(share.is === 'number' ? share.value / of('oneForAll.share') : 0).toBeCloseTo(1 / 2, 9);
  expect(of('twoForOne.force') / of('oneForAll.force')).toBeCloseTo(1 / 4, 2);
  expect(keyOf('pull')).toStrictEqual({ is: 'direction', so: 'falls' });
  expect(keyOf('glued')).toMatchObject({ value: expect.closeTo(4, 9) as number });
});

test('the pots: warmer is shorter, and 300 g at 200 g a square metre go 3 m over half a metre', () => {
  const { keyOf, worth } = lesson('mix-what-you-can-spread');
  expect(keyOf('warmer')).toStrictEqual({ is: 'direction', so: 'falls' });
  expect(worth('reach', `${0.3 / 0.2 / 0.5} m`)).toBe('right');
});

test('the weights: moments about the left end; forward is further from the stern', () => {
  const { keyOf, worth } = lesson('where-the-weight-goes');
  expect(worth('plank', `${(3 * 1 + 1 * 0.4) / 4} m`)).toBe('right');
  expect(worth('plank', '1 m')).toBe('high');
  expect(keyOf('forward')).toStrictEqual({ is: 'direction', so: 'rises' });
});
