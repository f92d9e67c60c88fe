import { describe, expect, test } from 'vitest';
import { isIssue, type KindId, plainShown, read } from '../../src/measure';

const kindOfName: Readonly<Record<string, KindId>> = {
  'side.thickness': 'length',
  'bottom.thickness': 'length',
  'hull.beam': 'length',
  'keelson.timber': 'choice',
  'hull.mass': 'mass',
  'shop.temperature': 'temperature',
  'frames.count': 'count',
};
const values: Readonly<Record<string, number>> = {
  'side.thickness': 0.009,
  'hull.beam': 1.5,
  'hull.mass': 120,
  'frames.count': 5,
};

function refusal(text: string, kind: KindId = 'length', field = 'thickness'): string {
  const reading = read(text, {
    kind,
    shown: plainShown,
    field,
    kindOf: (name) => kindOfName[name],
    known: () => Object.keys(kindOfName),
  });
  if (isIssue(reading)) return reading.issue;
  const value = reading.evaluate((name) => values[name] ?? Number.NaN);
  return isIssue(value) ? `(later) ${value.issue}` : `read as ${value}`;
}

describe('refusals name the field and say what is wrong', () => {
  const lengths: readonly [string, string][] = [
    ['', 'thickness is empty'],
    ['   ', 'thickness is empty'],
    ['3 kg', 'thickness is a length; "3 kg" is a mass'],
    ['12°', 'thickness is a length; "12°" is an angle'],
    ['5 m/s', 'thickness is a length; "5 m/s" is a speed'],
    ['$3', 'thickness is a length; "$3" is an amount of money'],
    ['12 %', 'thickness is a length; "12 %" is a number'],
    ['hull.beam * hull.beam', 'thickness is a length; "hull.beam * hull.beam" is an area'],
    [
      'hull.mass * hull.beam ^ 5',
      'thickness is a length; "hull.mass * hull.beam ^ 5" is a mass times a length to the power 5',
    ],
    ['hull.beam > 1 m', 'thickness is a length; "hull.beam > 1 m" is a yes or no'],
    ['5-3-9', 'thickness: eighths run from 0 to 7; "5-3-9" has 9'],
    ['5-13-4', 'thickness: inches run from 0 to 11; "5-13-4" has 13'],
    [`5' 13"`, `thickness: inches run from 0 to 11; "5' 13"" has 13`],
    ['5 ft 12 in', 'thickness: inches run from 0 to 11; "5 ft 12 in" has 12'],
    ['5.5 ft 3 in', 'thickness: "5.5 ft 3 in" has inches after a broken number; write it in one unit'],
    ['14 9/8', 'thickness: the fraction in "14 9/8" is not less than one'],
    ['3/0', 'thickness: "3/0" divides by zero'],
    ['2 3/0 in', 'thickness: "2 3/0" divides by zero'],
    ['1,200 mm', 'thickness: "1,200" could be 1.200 or 1200; write one of these'],
    [
      '1,2,3 mm',
      'thickness: "1,2,3" is not a number; write decimals after one point, and thousands without a sign',
    ],
    [
      '1.2.3 mm',
      'thickness: "1.2.3" is not a number; write decimals after one point, and thousands without a sign',
    ],
    ['1e999 mm', 'thickness: "1e999 mm" is too large a number'],
    ['1e308 m + 1e308 m', '(later) thickness comes to a number too large to reckon with'],
    ['3 furlongs', 'thickness: there is no unit "furlongs"'],
    ['3 milimetre', 'thickness: there is no unit "milimetre"; nearest: millimetre, kilometre, millimetres'],
    ['side.thicknes', 'thickness: there is no quantity "side.thicknes"; nearest: side.thickness'],
    ['thickness', 'thickness: there is no quantity "thickness"; nearest: side.thickness, bottom.thickness'],
    ['keel.rocker + 3 mm', 'thickness: there is no quantity "keel.rocker"; write a length, as 12 mm'],
    ['twelve mm', 'thickness: there is no quantity "twelve"; write a length, as 12 mm'],
    ['keelson.timber', 'thickness: "keelson.timber" is a choice, not a number'],
    ['2 * keelson.timber', 'thickness: "keelson.timber" is a choice, not a number'],
    ['max(keelson.timber, 3)', 'thickness: "keelson.timber" is a choice, not a number'],
    ['"oak"', 'thickness: a choice is not a number'],
    ['(2 + 3', 'thickness: a bracket is not closed'],
    ['((2 + 3', 'thickness: 2 brackets are not closed'],
    ['2 + 3)', 'thickness: a bracket is closed that was never opened'],
    ['()', 'thickness: nothing stands between the brackets'],
    ['2 + ', 'thickness: nothing stands after "+"'],
    ['* 2', 'thickness: nothing stands before "*"'],
    ['2 * / 3', 'thickness: nothing stands before "/"'],
    ['(2 +) 3', 'thickness: nothing stands after "+"'],
    ['3 4', 'thickness: a sign is missing between "3" and "4"; put + - * or / there'],
    ['1 200 mm', 'thickness: a sign is missing between "1" and "200 mm"; put + - * or / there'],
    [
      '2 side.thickness',
      'thickness: a sign is missing between "2" and "side.thickness"; put + - * or / there',
    ],
    ['2(3)', 'thickness: a sign is missing between "2" and "("; put + - * or / there'],
    ['1 in 8', 'thickness: a sign is missing between "1 in" and "8"; put + - * or / there'],
    ['2 not 3', 'thickness: a sign is missing between "2" and "not"; put + - * or / there'],
    ['hull.beam / 3/4 in', 'thickness: put brackets round "3/4 in" after the "/"'],
    ['side.thickness + hull.mass', "thickness: can't add a mass to a length"],
    ['hull.mass - side.thickness', "thickness: can't take a length from a mass"],
    ['side.thickness + 3', "thickness: can't add a number to a length; give the number its unit"],
    ['hull.mass > side.thickness ? 1 mm : 2 mm', "thickness: can't compare a mass with a length"],
    ['1 mm > 2 mm ? 3 mm : 3 kg', 'thickness: the two answers of "? :" are a length and a mass'],
    ['hull.beam ? 1 mm : 2 mm', 'thickness: what stands before "?" must be a yes or no, as in a > b ? c : d'],
    ['1 mm > 2 mm ? 3 mm', 'thickness: a choice between two takes both signs: a > b ? c : d'],
    ['8:1', 'thickness: ":" has a meaning after "?" only, as in a > b ? c : d'],
    ['1 mm < 2 mm < 3 mm', 'thickness: compare two at a time, joined by "and"'],
    ['(1 < 2) + 3', 'thickness: a yes or no is no number to reckon with'],
    ['1 and 2', 'thickness: "and" joins two of yes or no, as in a > b and c > d'],
    ['not 2', 'thickness: "not" turns a yes or no about, as in not (a > b)'],
    ['max(1 < 2, 3)', "thickness: max can't take a yes or no"],
    ['2 ^ (3 mm)', 'thickness: a power must be a plain number; this one is a length'],
    ['hull.beam ^ frames.count', 'thickness: the power of a length must be written as a number'],
    ['max(1 mm, 2 kg)', 'thickness: max takes quantities of one kind; here are a length and a mass'],
    ['sin(30) * 1 m', 'thickness: sin takes an angle; this is a number'],
    ['atan(3 mm) * 1 m', 'thickness: atan takes a number; this is a length'],
    ['ceil(hull.beam)', 'thickness: ceil of a length wants a step to round to, as in ceil(a, 1 mm)'],
    ['sqrt(1, 2)', 'thickness: sqrt takes 1 figure; here are 2'],
    ['atan2(1)', 'thickness: atan2 takes 2 figures; here is 1'],
    ['hypot(1 mm)', 'thickness: hypot takes at least 2 figures; here is 1'],
    ['round(1 mm, 2 mm, 3 mm)', 'thickness: round takes at most 2 figures; here are 3'],
    ['sqr(4)', 'thickness: there is no function "sqr"; nearest: sqrt'],
    ['(1, 2)', 'thickness: a comma parts the figures of a function only; write decimals with a point'],
    ['3 mm, 4 mm', 'thickness: a comma parts the figures of a function only; write decimals with a point'],
    ['max(1 mm,)', 'thickness: nothing stands after ","'],
    ['x = 3', 'thickness: there is no quantity "x"; write a length, as 12 mm'],
    ['side.thickness = 3', 'thickness: one "=" has no meaning here; write "==" to compare'],
    ['side.thickness; 3', 'thickness: ";" has no meaning after "side.thickness"'],
    ['[1]', 'thickness: "[" has no meaning at the start'],
    ['3!', 'thickness: "!" has no meaning after "3"'],
    ['😀', 'thickness: "😀" has no meaning at the start'],
    ['side.thickness / 0', '(later) thickness divides by zero'],
    ['side.thickness / (hull.beam - 1.5 m) * 1 mm', '(later) thickness divides by zero'],
    ['0 ^ -1 * 1 mm', '(later) thickness divides by zero'],
    ['sqrt(-1) * 1 mm', '(later) thickness takes the square root of a number below zero'],
    ['(-8) ^ (1/3) * 1 mm', '(later) thickness takes a broken power of a number below zero'],
    ['asin(1.5) / rad * 1 mm', '(later) thickness takes asin of 1.5, which is beyond 1'],
    ['ln(0) * 1 mm', '(later) thickness takes the logarithm of a number that is not above zero'],
    ['bottom.thickness', '(later) thickness comes to no number'],
  ];
  test.each(lengths)('%s', (text, sentence) => {
    expect(refusal(text)).toBe(sentence);
  });

  const others: readonly [string, KindId, string][] = [
    ['50 lb', 'force', 'pull is a force; "50 lb" is a mass; for a force write lbf, kgf or N'],
    [
      '5 kg/mm',
      'stiffness',
      'pull is a force per length; "5 kg/mm" is a mass per length; for a force write lbf, kgf or N',
    ],
    ['2.5', 'count', 'pull is a count; 2.5 is not a whole number'],
    ['frames.count / 2', 'count', '(later) pull is a count; 2.5 is not a whole number'],
    ['2:16', 'slope', 'pull is a slope; write it as 1 in 8'],
    ['12 %', 'slope', 'pull is a slope; write it as 1 in 8'],
    ['1 in 0', 'slope', 'pull: neither side of "1 in 0" may be 0'],
    ['0', 'slope', 'pull is a slope; its run must be more than 0'],
    ['1:1,200', 'ratio', 'pull: "1,200" could be 1.200 or 1200; write one of these'],
    [
      '20 °C + 5 °C',
      'temperature',
      'pull: "20 °C" in a sum could be a temperature or a difference; write a difference in K or Δ°F',
    ],
    [
      'shop.temperature - 9 °F',
      'temperature',
      'pull: "9 °F" in a sum could be a temperature or a difference; write a difference in K or Δ°F',
    ],
    [
      'shop.temperature > 0 ? 1 K : 2 K',
      'temperature',
      "pull: can't compare a temperature with a number; give the number its unit",
    ],
    ['2 * 10', 'temperature', 'pull needs one temperature, as in 20 °C; a sum must be in K'],
    ['oak', 'choice', 'pull is a choice, not a number'],
    ['3 m', 'number', 'pull is a number; "3 m" is a length'],
  ];
  test.each(others)('%s as a %s', (text, kind, sentence) => {
    expect(refusal(text, kind, 'pull')).toBe(sentence);
  });

  test('a long text is quoted in part', () => {
    const long = `${'hull.beam * '.repeat(6)}hull.beam`;
    expect(refusal(long)).toBe(
      'thickness is a length; "hull.beam * hull.beam * hull.beam * hul…" is a length to the power 7',
    );
  });
  test('a text beyond 300 signs is refused unread', () => {
    expect(refusal('1+'.repeat(150) + '1')).toBe(
      'thickness is too long: at most 300 letters and signs are read',
    );
    expect(refusal('1+'.repeat(149) + '1')).toBe('read as 0.15');
  });
});

test('a price for one piece is no price per length', () => {
  expect(refusal('3 each', 'pricePerLength', 'price')).toBe(
    'price is a price per length; "3 each" is for one piece',
  );
  expect(refusal('12.50 per litre', 'money', 'price')).toContain('is a price per volume');
});
