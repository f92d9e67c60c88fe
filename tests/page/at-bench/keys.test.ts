import { describe, expect, test } from 'vitest';
import { array, assert, boolean, constantFrom, nat, property } from 'fast-check';
import { isIssue, plainShown, read, type Shown } from '../../../src/measure';
import { FEET, padFor, pressed, RUB_OUT } from '../../../src/page/at-bench/keys';

const feet: Shown = { ...plainShown, length: 'feet', fraction: 16 };
const typed = (...keys: string[]) => keys.reduce(pressed, '');

describe('the text that the keys make', () => {
  test.each([
    [['1', '8'], '18'],
    [['1', '8', '.', '5'], '18.5'],
    [['3', '1/4', '1/8'], '3 3/8'],
    [['1/2', '1/4', '1/8', '1/16'], '15/16'],
    [['5', FEET, '3', '1/2'], "5' 3 1/2"],
    [['5', FEET, '1/2'], "5' 1/2"],
    [['-', '3', '1/4'], '-3 1/4'],
    [['3', '-'], '-3'],
    [['-', '3', '-'], '3'],
  ])('%j gives %j', (keys, text) => expect(typed(...keys)).toBe(text));

  test('two halves make an inch more, and none of a fraction', () => {
    expect(typed('3', '1/2', '1/2')).toBe('4');
    expect(typed('3', '1/2', '1/4', '1/4', '1/8')).toBe('4 1/8');
  });

  test('a digit after the fraction is one of the whole inches', () => {
    expect(typed('1', '3/8', '2')).toBe('12 3/8');
  });

  test('rubbing out takes a digit, a fraction or the foot mark at a time', () => {
    expect(typed('1', '2', RUB_OUT)).toBe('1');
    expect(typed('1', '2', '1/8', RUB_OUT)).toBe('12');
    expect(typed('5', FEET, RUB_OUT)).toBe('5');
    expect(typed(RUB_OUT)).toBe('');
  });

  test('a key that can’t be meant changes nothing', () => {
    expect(typed('1', '.', '.', '5')).toBe('1.5');
    expect(typed('1', '.', '5', '1/2')).toBe('1.5');
    expect(typed('3', '1/2', '.')).toBe('3 1/2');
    expect(typed('5', FEET, '3', FEET)).toBe("5' 3");
    expect(typed(FEET)).toBe('');
    expect(typed('3', '1/2', FEET)).toBe('3 1/2');
  });

  test('whole inches, feet and marks pressed in any number are read as their sum', () => {
    const marks = array(constantFrom('1/2', '1/4', '1/8', '1/16'), { maxLength: 6 });
    assert(
      property(nat(40), nat(11), marks, boolean(), (ft, inches, fractions, minus) => {
        const digits = (of: number) => String(of).split('');
        const text = typed(...(minus ? ['-'] : []), ...digits(ft), FEET, ...digits(inches), ...fractions);
        const reading = read(text, { kind: 'length', shown: feet, field: 'length' });
        const whole = ft * 12 + inches + fractions.reduce((sum, one) => sum + 1 / Number(one.slice(2)), 0);
        const metres = isIssue(reading) ? reading : reading.evaluate(() => 0);
        expect(metres).toBeCloseTo((minus ? -1 : 1) * whole * 0.0254, 12);
      }),
    );
  });
});

describe('the keys there are', () => {
  const keysOf = (...of: Parameters<typeof padFor>) => padFor(...of).filter((key) => key !== null);

  test('tape fractions only where lengths are shown in them, down to the finest mark chosen', () => {
    expect(keysOf({ kind: 'length' }, feet)).toEqual(expect.arrayContaining(['1/16', FEET, '-']));
    expect(keysOf({ kind: 'length' }, feet)).not.toContain('1/32');
    expect(keysOf({ kind: 'length' }, { ...feet, fraction: 32 })).toContain('1/32');
    expect(keysOf({ kind: 'angle' }, feet)).not.toContain('1/16');
    expect(keysOf({ kind: 'length' }, plainShown)).not.toContain(FEET);
  });

  test('no minus where the number can’t be below nothing, no point in a count', () => {
    expect(keysOf({ kind: 'length', min: '1 mm' }, plainShown)).not.toContain('-');
    expect(keysOf({ kind: 'length', min: '-5 mm' }, plainShown)).toContain('-');
    expect(keysOf({ kind: 'count', min: '1' }, plainShown)).not.toContain('.');
  });

  test.each([
    plainShown,
    { ...plainShown, length: 'inches' as const },
    feet,
    { ...feet, fraction: 8 as const },
    { ...feet, fraction: 32 as const },
  ])('rows of four, with two places at the end for the keys that turn: %j', (shown) => {
    for (const kind of ['length', 'angle', 'count'] as const)
      expect((padFor({ kind }, shown).length + 2) % 4).toBe(0);
  });
});
