/** What is found backwards is written as a builder writes such a number, in either system of units, and says how near it comes. */
import { describe, expect, test } from 'vitest';
import {
  kinds,
  type KindId,
  isIssue,
  plainShown,
  read,
  type Shown,
  writeInPicture,
} from '../../../src/measure';
import { shelfOf } from '../../../src/measure/sold';
import { comesToInWords } from '../../../src/notebook/sweep/backwards';
import type { Backwards } from '../../../src/notebook/sweep/wanted';
import { numbersToWrite } from '../../../src/notebook/sweep/to-write';
import '../../../src/cells/all';
import '../../kernel/near';

const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };
const inches: Shown = { ...feet, length: 'inches' };

/** Asked for a result that is so many times the number, which is found at one place, or from there to another. */
function written(
  kind: KindId,
  at: number | readonly [from: number, to: number],
  shown: Shown,
  { times = 8, ...more }: Partial<Backwards> & { times?: number } = {},
) {
  const [from, to] = typeof at === 'number' ? [at, at] : at;
  const given = { name: 'a.b', kind, meaning: 'the number', preset: '1' };
  const by = { name: 'a.b', given, value: from / 2, least: -Infinity, most: Infinity, away: 1 };
  const asked: Backwards = {
    result: 'a.c',
    kind: 'length',
    by,
    wanted: 'exactly',
    value: times * from,
    ...more,
  };
  const found = numbersToWrite({ met: [{ from, to }] }, asked, (x) => times * x, { shown });
  const say = (value: number, of: KindId) => writeInPicture(value, of, shown);
  return found.map((one) => ({ ...one, says: comesToInWords(one, asked, say) }));
}
const texts = (...asked: Parameters<typeof written>) => written(...asked).map(({ text }) => text);

describe('as a builder writes it', () => {
  test('a slope is one in so many to three figures, and says how near it comes', () => {
    // 18 mm at 1 in 11.1 is 199.8 mm.
    const [slope] = written('slope', 100 / 9, plainShown, { times: 0.018 });
    expect(slope).toMatchObject({ text: '1 in 11.1', value: 11.1, says: 'gives 199.8 mm, not 200 mm' });
    expect(texts('slope', 8.000000001, feet)).toStrictEqual(['1 in 8']);
  });

  test('a length to the tenth of a millimetre, or to a mark of the tape, halved where that comes nearer', () => {
    expect(texts('length', 0.0255555, plainShown)).toStrictEqual(['25.6 mm']);
    // 1/8 in, 5/64 in and 3/4 in by eight: what a rule has is met, and told so.
    expect(written('length', 0.75 * 0.0254, feet)).toMatchObject([{ text: '3/4 in', comesTo: null }]);
    expect(written('length', (5 / 64) * 0.0254, feet)).toMatchObject([{ text: '5/64 in', comesTo: null }]);
    // 0.7715 in is no mark: 49/64 in by eight is 6 1/8 in, where 6.172 in, 6 3/16 in scant, was wanted.
    expect(written('length', 0.7715 * 0.0254, feet)).toMatchObject([
      { text: '49/64 in', says: 'gives 6 1/8 in, not 6 3/16 in scant' },
    ]);
    expect(texts('length', 60.4999 * 0.0254, feet)).toStrictEqual([`5' 0 1/2"`]);
  });

  test('of a stretch the nearest number within it', () => {
    expect(texts('length', [1 / 30, 0.04], plainShown, { wanted: 'at least' })).toStrictEqual(['33.4 mm']);
    expect(texts('share', [0.1234567, 0.2], plainShown, { wanted: 'at least' })).toStrictEqual(['12.4 %']);
    // A stretch between two marks: the nearest mark, and that it is past.
    const [narrow] = written('length', [0.01003, 0.01004], plainShown, { wanted: 'at most', value: 0.0803 });
    expect(narrow).toMatchObject({ text: '10.1 mm', says: 'gives 80.8 mm, more than 80.3 mm' });
  });

  test('a drill is one of those in the box', () => {
    const [drill] = written('drill', 0.0037, feet);
    const sizes = shelfOf('drill')!.sizes!(feet);
    expect(sizes).toContain(drill!.value);
    expect(drill!.says).toMatch(/^gives .*, not /);
  });

  test('what is written now is left as it is', () => {
    const [now] = written('length', [0.01, 0.02], plainShown, {
      by: {
        name: 'a.b',
        given: { name: 'a.b', kind: 'length', meaning: 'the number', preset: '1' },
        value: 0.0123456,
        least: 0,
        most: 1,
        away: 1,
      },
    });
    expect(now).toMatchObject({ value: 0.0123456, comesTo: null });
  });

  describe.each([
    ['millimetres', plainShown],
    ['feet', feet],
    ['decimal inches', inches],
  ])('in %s', (_, shown) => {
    const plain = kinds.filter(({ id }) => id !== 'choice' && id !== 'count' && id !== 'drill');
    test.each(plain.map(({ id }) => id))('%s: few figures, read back as they are told, and near', (kind) => {
      const inField = (text: string) => {
        const reading = read(text, { kind, shown, field: kind });
        const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
        return isIssue(value) ? Number.NaN : value;
      };
      const mark = inField('1.12') - inField('1');
      // A tenth of a micrometre is none.
      for (const number of [
        kind === 'film' ? '5.1111111' : '0.1111111',
        '1.1111111',
        '11.1111111',
        '111.1111111',
      ]) {
        const value = inField(number);
        const [one] = written(kind, value, shown, { kind: 'number' });
        expect(inField(one!.text)).toBeNear(one!.value, 1e-9);
        // No figure of a fraction counts, nor the noughts before.
        const [decimal = ''] = /\d+(\.\d+)?/.exec(one!.text.replaceAll(/\d+\/\d+/g, '')) ?? [];
        expect(decimal.replace('.', '').replace(/^0+/, '').length).toBeLessThanOrEqual(5);
        // A size that is sold may be the last on its shelf.
        const near = shelfOf(kind) ? Infinity : 0.02 * Math.abs(value) + mark;
        expect(Math.abs(one!.value - value)).toBeLessThanOrEqual(near);
      }
    });
  });
});
