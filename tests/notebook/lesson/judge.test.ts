/** What a guess is told: near enough, too high, too low, or that it is no guess at what was asked. */
import { describe, expect, test } from 'vitest';
import { plainShown } from '../../../src/measure';
import { gap, judge, toleranceOf } from '../../../src/notebook/lesson/judge';
import { keyTo, type Key } from '../../../src/notebook/lesson/key';
import { askedOf, fence, SCARF } from './asked-of';

const feet = { ...plainShown, length: 'feet', mass: 'lb' } as const;
const taper: Key = { is: 'number', value: 0.144, kind: 'length' };

describe('a guess at a length of 144 mm, within 5 mm', () => {
  test.each([
    ['144', 'right'],
    ['139 mm', 'right'],
    ['149', 'right'],
    ['14.9 cm', 'right'],
    ['8 * 18 mm', 'right'],
    // 5 5/8 in are 142.9 mm, by 25.4 mm to the inch (ISO 80000-3).
    ['5 5/8 in', 'right'],
    ['138.9', 'low'],
    ['150', 'high'],
    ['1 m', 'high'],
    ['-144 mm', 'low'],
  ] as const)('%s is %s', (text, is) => expect(judge(text, taper, '5 mm', plainShown).is).toBe(is));

  test.each([
    ['5 kg', /is a length; "5 kg" is a mass/],
    ['', /Nothing is written yet/],
    ['about that', /^Your guess/],
    ['askScarf.taper', /guess/i],
    ['1/0', /./],
  ])('%s is told why it is none', (text, says) => {
    const verdict = judge(text, taper, '5 mm', plainShown);
    expect(verdict.is).toBe('unread');
    expect(verdict.says).toMatch(says);
    expect(verdict.says).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('a bare number takes the learner’s units', () => {
    expect(judge('5.65', taper, '5 mm', feet).is).toBe('right');
    expect(judge('5.65', taper, '5 mm', plainShown).is).toBe('low');
  });

  test('once the answer is seen, the gap is told in those units', () => {
    expect(gap('100', taper, '5 mm', plainShown)).toBe('Your guess was 44 mm too low.');
    expect(gap('147', taper, '5 mm', plainShown)).toBe('Your guess was 3 mm too high, near enough.');
    const metres = { is: 'number', value: 3, kind: 'length', text: '3 m' } as const;
    expect(gap('1', metres, '', plainShown)).toBe('Your guess was 2\u00a0m too low.');
    expect(gap('144 mm', taper, '5 mm', plainShown)).toBe('Your guess was it exactly.');
  });
});

describe('how far off a guess may be', () => {
  test.each([
    ['10 %', { is: 'number', value: 200, kind: 'force' }, 20],
    ['', { is: 'number', value: -2, kind: 'length' }, 0.1],
    ['3 °C', { is: 'number', value: 293.15, kind: 'temperature' }, 3],
    ['1', { is: 'number', value: 8, kind: 'slope' }, 1],
    ['2', { is: 'number', value: 40, kind: 'count' }, 2],
  ] as const)('%s', (within, key, far) => expect(toleranceOf(key, within)).toBeCloseTo(far, 12));

  test('an answer of nothing is met by nothing alone', () => {
    const none: Key = { is: 'number', value: 0, kind: 'length' };
    expect(judge('0', none, '5 %', plainShown).is).toBe('right');
    expect(judge('1 mm', none, '5 %', plainShown).is).toBe('high');
  });
});

describe('what the key is', () => {
  const keyOf = (...lines: string[]) => {
    const { asks, book } = askedOf(`${SCARF}\n${fence('ask a', 'question: What?', ...lines)}`);
    return { key: keyTo(asks[0]!.answer, book.first.value), book, ask: asks[0]! };
  };

  test('a quantity: eight thicknesses of 18 mm, and it follows an edit', () => {
    const { key, book, ask } = keyOf('answer: askScarf.taper');
    expect(key).toMatchObject({ is: 'number', kind: 'length' });
    expect('value' in key ? key.value : 0).toBeCloseTo(0.144, 12);
    book.write({ 'askScarf.thickness': '24 mm' });
    const after = keyTo(ask.answer, book.first.value);
    expect('value' in after ? after.value : 0).toBeCloseTo(0.192, 12);
  });

  test.each([
    ['144 mm', { kind: 'length', value: 0.144 }],
    ['1 in 8', { kind: 'slope', value: 8 }],
    ['25 %', { kind: 'share', value: 0.25 }],
    ['3', { kind: 'number', value: 3 }],
    ['20 °C', { kind: 'temperature', value: 293.15 }],
  ])('a number of its own, %s', (text, is) => expect(keyOf(`answer: ${text}`).key).toMatchObject(is));

  test.each([
    // A flatter taper is longer; the number of boards has no part in it.
    [['change: askScarf.slope = 12'], 'rises'],
    [['change: askScarf.thickness = 12 mm'], 'falls'],
    [['change: askScarf.boards = 3'], 'stays'],
    [['change: askScarf.slope = 12', 'change: askScarf.thickness = 9 mm'], 'falls'],
  ])('where something changes, %s: it %s', (changes, so) =>
    expect(keyOf('answer: askScarf.taper', ...changes).key).toStrictEqual({ is: 'direction', so }),
  );

  test('a choice is met by the same answer alone', () => {
    const { key } = keyOf('answer: askScarf.part');
    expect(key).toMatchObject({ is: 'choice' });
    if ('issue' in key || key.is !== 'choice') throw new Error('no choice');
    expect(judge(key.id, key, '', plainShown).is).toBe('right');
    expect(judge('spar', key, '', plainShown).is).toBe('other');
  });

  test.each([
    [['answer: askScarf.tapper'], /no quantity "askScarf.tapper"/],
    [['answer: askScarf.taper', 'change: askScarf.slop = 3'], /nothing to write under "askScarf.slop"/],
    [['answer: askScarf.taper', 'change: askScarf.slope = a lot'], /./],
  ])('what can’t be worked out says why: %s', (lines, says) => {
    const { key } = keyOf(...lines);
    expect('issue' in key ? key.issue : '').toMatch(says);
  });
});
