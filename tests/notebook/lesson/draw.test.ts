/** Numbers for each: the same from the same word, within their limits, and every question has an answer under them. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isIssue } from '../../../src/measure';
import { draw } from '../../../src/notebook/lesson/draw';
import { askedOf, fence, SCARF } from './asked-of';

const ASK = fence('ask a', 'question: How long?', 'answer: askScarf.taper');
const notebook = (...lines: string[]) => askedOf(`${SCARF}\n${ASK}\n${fence('seed', ...lines)}`);
const drawn = (word: string, ...lines: string[]) => {
  const { seed, asks, book } = notebook(...lines);
  const found = draw(word, seed!, asks, book.first.value);
  if (isIssue(found)) throw new Error(found.issue);
  return found;
};
const why = (...lines: string[]) => {
  const { seed, asks, book } = notebook(...lines);
  const found = draw('anna', seed!, asks, book.first.value);
  return isIssue(found) ? found.issue : JSON.stringify(found);
};
const THICK = 'askScarf.thickness = 12 mm to 25 mm by 1 mm';

test('the same word, however it is typed, draws the same; another another', () => {
  expect(drawn('Anna', THICK)).toStrictEqual(drawn(' anna ', THICK));
  const all = ['anna', 'ben', 'cleo', 'dina', 'emil', 'finn'].map((word) =>
    JSON.stringify(drawn(word, THICK)),
  );
  expect(new Set(all).size).toBeGreaterThan(3);
});

test('what was typed over in the meantime changes nothing of the draw', () => {
  const { seed, asks, book } = notebook(THICK, 'askScarf.slope = 8 or 10 or 12');
  const before = draw('anna', seed!, asks, book.first.value);
  book.write({ 'askScarf.thickness': '40 mm' });
  expect(draw('anna', seed!, asks, book.first.value)).toStrictEqual(before);
});

test('any word draws numbers on their steps and within their ends, and conditions hold of them', () => {
  const { seed, asks, book } = notebook(
    THICK,
    'askScarf.slope = 6 to 12 by 2',
    'keep: askScarf.taper < 200 mm',
  );
  const isGood = (word: string): boolean => {
    const found = draw(word, seed!, asks, book.first.value);
    if (isIssue(found)) return false;
    const thick = Number(/^(\d+) mm$/.exec(found['askScarf.thickness'] ?? '')?.[1]);
    const slope = Number(/^1 in (\d+)$/.exec(found['askScarf.slope'] ?? '')?.[1]);
    return thick >= 12 && thick <= 25 && [6, 8, 10, 12].includes(slope) && thick * slope < 200;
  };
  const words = fc.sample(fc.string({ maxLength: 40 }), 60);
  expect(words.filter((word) => !isGood(word))).toStrictEqual([]);
});

test('every step is reached, and none far more often than the others', () => {
  const { seed, asks, book } = notebook('askScarf.thickness = 10 mm to 19 mm by 1 mm');
  const counts = new Map<string, number>();
  for (let n = 0; n < 1000; n += 1) {
    const found = draw(`learner ${n}`, seed!, asks, book.first.value);
    const text = isIssue(found) ? 'none' : (found['askScarf.thickness'] ?? 'none');
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  expect(counts.size).toBe(10);
  // Of 1000 draws in 10 equal parts, one strays by more than 5 standard deviations (47) once in millions.
  for (const count of counts.values()) expect(Math.abs(count - 100)).toBeLessThan(48);
});

test('inches are written as inches', () => {
  expect(['1/2 in', '5/8 in', '3/4 in', '7/8 in', '1 in']).toContain(
    drawn('anna', 'askScarf.thickness = 1/2 in to 1 in by 1/8 in')['askScarf.thickness'],
  );
});

test('numbers beyond the limits of a field are drawn again', () => {
  // A slope of a scarf has limits of its own: what lies beyond is never kept.
  for (const word of ['anna', 'ben', 'cleo', 'dina'])
    expect(drawn(word, 'askScarf.slope = 8 or 8000000')['askScarf.slope']).toBe('8');
});

describe('says why there are none', () => {
  test.each([
    [['askScarf.thick = 1 mm to 2 mm by 1 mm'], /nothing to write under "askScarf.thick"/],
    [['askScarf.taper = 1 mm to 2 mm by 1 mm'], /nothing to write under "askScarf.taper"/],
    [['askScarf.thickness = 1 kg to 2 kg by 1 kg'], /is a mass/],
    [['askScarf.thickness = 25 mm to 12 mm by 1 mm'], /from the smaller number to the larger/],
    [['askScarf.thickness = 12 mm to 25 mm by 0 mm'], /from the smaller number to the larger/],
    [['askScarf.thickness = 1 mm to 1000 m by 1 mm'], /10000 at most/],
    [[THICK, 'keep: askScarf.taper > 9 m'], /no numbers were found that keep the questions good/],
    [[THICK, 'keep: askScarf.nothing > 9 m'], /no quantity "askScarf.nothing"/],
  ])('%s', (lines, says) => expect(why(...lines)).toMatch(says));
});
