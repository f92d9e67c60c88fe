/** The example of the guide: its questions have answers, and anybody's word draws numbers that keep them good. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isIssue, plainShown } from '../../../src/measure';
import { draw } from '../../../src/notebook/lesson/draw';
import { judge } from '../../../src/notebook/lesson/judge';
import { keyTo } from '../../../src/notebook/lesson/key';
import { askedOf } from './asked-of';

const guide = readFileSync(new URL('../../../docs/authoring.md', import.meta.url), 'utf8');
const [, text = ''] = /^````markdown\n(---\ntitle: Ten minutes on tapers\n[^]*?)^````$/m.exec(guide) ?? [];
const { asks, seed, book } = askedOf(text, 'ten-minutes.md');
const graph = book.first.value;

test('has a key to every question', () => {
  expect(asks.map(({ answer }) => keyTo(answer, graph)).filter(isIssue)).toStrictEqual([]);
  // Eight thicknesses of 18 mm; a flatter taper is longer.
  const [taper, flatter] = asks.map(({ answer }) => keyTo(answer, graph));
  expect(taper).toMatchObject({ is: 'number', kind: 'length' });
  expect(flatter).toStrictEqual({ is: 'direction', so: 'rises' });
});

test.each(['Anna', 'Ben', '7', 'Łucja', '名前'])(
  'draws for %s, and slope times thickness is near enough',
  (word) => {
    const drawn = draw(word, seed!, asks, graph);
    if (isIssue(drawn)) throw new Error(drawn.issue);
    const thickness = Number.parseFloat(drawn['tenMinutes.thickness']!);
    const slope = Number.parseFloat(drawn['tenMinutes.slope']!);
    expect(thickness * slope).toBeLessThan(250);
    book.write(drawn);
    const key = keyTo(asks[0]!.answer, book.first.value);
    if (isIssue(key)) throw new Error(key.issue);
    expect(judge(`${thickness * slope} mm`, key, asks[0]!.within, plainShown).is).toBe('right');
    book.undo();
  },
);
