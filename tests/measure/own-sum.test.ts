/** Sums of the builder's own: against mathjs and its own units, at their places, and whatever a stranger writes. */
import * as fc from 'fast-check';
import { all, create, type FactoryFunctionMap, type Unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { isIssue, kindOf, type KindId } from '../../src/measure';
import { isMisread, ownSum } from '../../src/measure/own-sum';

const math = create(all as FactoryFunctionMap);

/** A few quantities, SI, and the same for mathjs with their units. */
const kinds: Readonly<Record<string, KindId>> = {
  'keel.length': 'length',
  'keel.mass': 'mass',
  'wind.speed': 'speed',
  'bend.share': 'share',
  'saw.angle': 'angle',
  'board.area': 'area',
  'frame.timber': 'choice',
};
const values: Readonly<Record<string, number | string>> = {
  'keel.length': 4.2,
  'keel.mass': 61,
  'wind.speed': 6,
  'bend.share': 0.4,
  'saw.angle': 0.3,
  'board.area': 2.9,
  'frame.timber': 'oak',
};
const asUnits = {
  keel_length: math.unit('4.2 m'),
  keel_mass: math.unit('61 kg'),
  wind_speed: math.unit('6 m/s'),
  bend_share: 0.4,
  saw_angle: math.unit('0.3 rad'),
  board_area: math.unit('2.9 m^2'),
};
const kindNamed = (name: string): KindId | undefined =>
  Object.hasOwn(kinds, name) ? kinds[name] : undefined;
const get = (name: string): number | string => values[name]!; // of names that are known

/** The answer, SI, with its kind; or the sentence with what it speaks of. */
function read(text: string) {
  const sum = ownSum(text, new Set(['half']));
  if (isMisread(sum)) return sum;
  const kind = sum.measure((name) => (name === 'half' ? 'length' : kindNamed(name)));
  if (typeof kind !== 'string') return kind;
  const answer = sum.reckon((name) => (name === 'half' ? 2.1 : get(name)));
  return isIssue(answer) ? { says: answer.issue, ...sum.placeOf(get) } : { kind, answer };
}

// Referee: mathjs 15, evaluate with units and no part of it shared with the reader: the texts are its own where it
// writes a thing otherwise (names without a dot, roots and angles as its functions take them).
describe('a sum comes to what mathjs makes of it in its own units', () => {
  test.each<readonly [text: string, theirs?: string]>([
    ['keel.mass / keel.length'],
    ['keel.mass / keel.length * 9 ft'],
    ['2 * keel.length + 6 in - 15 mm'],
    ['(keel.length - 1 ft) * 2 ft * 3/4 in', '(keel_length - 1 ft) * 2 ft * (0.75 in)'],
    ['keel.length^2 / board.area'],
    ['-keel.length^2 + board.area'],
    ['2^3^2 * keel.mass'],
    ['sqrt(board.area) + keel.length'],
    ['hypot(3 m, 4 m) + 1 m', 'sqrt((3 m)^2 + (4 m)^2) + 1 m'],
    ['keel.length * sin(saw.angle)'],
    ['keel.length * tan(30 deg)'],
    ['atan(1/4) + saw.angle', 'atan(1/4) * 1 rad + saw_angle'],
    ['min(keel.length, 14 ft)'],
    ['max(keel.length, 14 ft, 3 m)'],
    ['abs(1 m - keel.length)'],
    ['keel.length > 4 m ? keel.mass : 3 kg'],
    ['keel.length > 4 m and keel.mass < 60 kg ? 1 : 2'],
    ['keel.length > 5 m or not (keel.mass < 60 kg) ? 1 : 2'],
    ['wind.speed * 2 h'],
    ['keel.mass * 9.81 m/s^2 / board.area', 'keel_mass * (9.81 m/s^2) / board_area'],
    ['0.5 * 1.2 kg/m^3 * wind.speed^2 * board.area', '0.5 * (1.2 kg/m^3) * wind_speed^2 * board_area'],
    ['exp(bend.share) * ln(2) / log10(50)', 'exp(bend_share) * log(2) / log10(50)'],
    ['3 lb + 5 oz + keel.mass'],
    ['2 gal / board.area', '(2 gallon) / board_area'],
    ['keel.mass^2 / keel.mass / 1 m^3', 'keel_mass^2 / keel_mass / (1 m^3)'],
    ['keel.mass / (keel.length / wind.speed)'],
    ['1 h / (keel.length / wind.speed)'],
  ])('%s', (text = '', theirs = text.replaceAll(/([a-z])\.([a-z])/g, '$1_$2')) => {
    const ours = read(text);
    const other = math.evaluate(theirs, asUnits) as number | Unit;
    if (!('kind' in ours)) throw new Error(ours.says);
    const { si } = kindOf(ours.kind);
    const unit = si.replaceAll('·', ' ').replaceAll(/[²³⁴]/g, (power) => `^${'²³⁴'.indexOf(power) + 2}`);
    const inSi = typeof other === 'number' ? other : other.toNumber(unit.replaceAll(/([a-z])(\d)/g, '$1^$2'));
    expect(ours.answer).toBeCloseTo(inSi, 10 - Math.ceil(Math.log10(Math.abs(inSi) + 1)));
  });
});

describe('what is amiss stands where it is', () => {
  test.each([
    ['1 + keel.mass + 2', '1 + keel.mass', "can't add a mass to a number; give the number its unit"],
    ['2 * sqrt(keel.mass - keel.length) + 1', 'keel.mass - keel.length', "can't take a length from a mass"],
    ['keel.length > 3 kg ? 1 : 2', 'keel.length > 3 kg', "can't compare a length with a mass"],
    ['sin(keel.length)', 'sin(keel.length)', 'sin takes an angle; this is a length'],
    ['max(1, 2) + sin(1, 2)', 'sin(1, 2)', 'sin takes 1 figure; here are 2'],
    ['1 + frame.timber', 'frame.timber', '"frame.timber" is a choice, not a number'],
    ['keel.lenght * 2', 'keel.lenght', 'there is no quantity "keel.lenght"'],
    ['2 * halff', 'halff', 'there is no quantity "halff"; nearest: half'],
    ['(1 + (2 * 3)', '(', 'a bracket is not closed'],
    ['1 + * 2', '*', 'nothing stands before "*"'],
    ['1 +', '+', 'nothing stands after "+"'],
    ['3 metrez', 'metrez', 'there is no unit "metrez"; nearest: metre, metres, meter'],
    ['1 m / (keel.length - keel.length) + 2', '1 m / (keel.length - keel.length)', 'it divides by zero'],
    ['keel.length > 1 m ? 1/(2 - 2) : 1/(3 - 3)', '1/(2 - 2)', 'it divides by zero'],
    ['½ * keel.mass + ¼ * keel.length', '½ * keel.mass + ¼ * keel.length', "can't add a length to a mass"],
    ['  ½ * keel.mas', 'keel.mas', 'there is no quantity "keel.mas"'],
    ['1 ≤ 2 ≤ 3', '≤', 'compare two at a time, joined by "and"'],
    ['', '', 'nothing is written here'],
  ])('%s', (text, place, says) => {
    const told = read(text);
    if (!('says' in told)) throw new Error('it was read');
    expect([text.slice(told.from, told.to), told.says]).toStrictEqual([place, says]);
  });
});

describe('whatever a stranger writes', () => {
  /** A finite number, or a sentence about characters that are there. */
  function holds(text: string): boolean {
    const told = read(text);
    if ('kind' in told) return Number.isFinite(told.answer);
    const { says, from, to } = told;
    return /\S/.test(says) && from >= 0 && from <= to && to <= text.length;
  }
  test('any text at all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        expect(holds(text)).toBe(true);
      }),
      { seed: 11, numRuns: 400 },
    );
  });
  test('any text of the very signs that are read', () => {
    const signs = '1|0|2.5|3/4|1e9|1e-300|½|,| |+|-|*|/|^|(|)|<|>=|≠|==|=|?|:|\'|"|°|%|$|!|[|]|{|}|;|.|_';
    const words =
      'm|in|kg|°C|K|pi|g|sqrt|max|sin|round|and|or|not|keel.length|keel.mass|frame.timber|half|"oak"';
    const scraps = fc.constantFrom(...signs.split('|'), ...words.split('|'));
    fc.assert(
      fc.property(fc.array(scraps, { maxLength: 16 }), fc.constantFrom('', ' '), (parts, gap) => {
        expect(holds(parts.join(gap))).toBe(true);
      }),
      { seed: 12, numRuns: 3000 },
    );
  });
  test('sums that are read, nested at random', () => {
    const { sum } = fc.letrec<{ sum: string }>((tie) => ({
      sum: fc.oneof(
        { depthSize: 'medium', withCrossShrink: true },
        fc.constantFrom('keel.length', 'keel.mass', 'half', '2', '0', '3 ft', '1e150', 'bend.share'),
        fc
          .tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/', '^', '<', 'and'), tie('sum'))
          .map((parts) => `(${parts.join(' ')})`),
        fc
          .tuple(fc.constantFrom('sqrt', 'abs', 'ln', 'exp', 'asin'), tie('sum'))
          .map(([name, part]) => `${name}(${part})`),
        fc.tuple(tie('sum'), tie('sum'), tie('sum')).map(([a, b, c]) => `(${a} > ${b} ? ${b} : ${c})`),
      ),
    }));
    fc.assert(
      fc.property(sum, (text) => {
        expect(holds(text)).toBe(true);
      }),
      { seed: 13, numRuns: 400 },
    );
  });
  test.each([
    ['reaches for the language', 'constructor', 'there is no quantity "constructor"'],
    ['reaches for a prototype', '__proto__ + 1', '"_" has no meaning at the start'],
    [
      'reaches through a name',
      'keel.constructor.constructor',
      'there is no quantity "keel.constructor.constructor"',
    ],
    ['calls through a name', 'keel.length.constructor("return 1")()', '""" has no meaning after "("'],
    ['calls what a parser may know', 'import({a: 1})', 'there is no function "import"'],
    ['evaluates', 'evaluate("1")', 'there is no function "evaluate"'],
    ['makes a matrix', 'ones(1000000)', 'there is no function "ones"'],
    ['lists', '[1, 2, 3]', '"[" has no meaning at the start'],
    ['counts up', '1:1000000000', '":" has a meaning after "?" only, as in a > b ? c : d'],
    ['sets', 'a = 5', 'there is no quantity "a"'],
    ['says two things', '1; 2', '";" has no meaning after "1"'],
    ['builds a tower', '9^9^9^9^9^9', 'it comes to a number too large to reckon with'],
    ['takes a factorial', '170!', '"!" has no meaning after "170"'],
    ['writes a text', '"a" * 5', 'a choice is not a number'],
    ['writes a huge number', '1e999', '"1e999" is too large a number'],
    ['calls the function of an object', 'toString(1)', 'there is no function "toString"'],
    ['calls what objects have', 'hasOwnProperty(1)', 'there is no function "hasOwnProperty"'],
  ])('who %s is told so', (_, text, says) => {
    const told = read(text);
    expect('says' in told && told.says.slice(0, says.length)).toBe(says);
  });
  test.each([
    ['a million letters', 'x'.repeat(1_000_000)],
    ['a million figures', '9'.repeat(1_000_000)],
    ['a million brackets', '('.repeat(1_000_000)],
    ['a million signs', '-'.repeat(1_000_000)],
  ])('%s are not read', (_, text) => {
    expect(read(text)).toMatchObject({
      says: 'this sum is too long: at most 600 letters and signs are read',
    });
  });
  test.each([
    ['signs', `${'-'.repeat(590)}1`],
    ['powers', `1${'^1'.repeat(290)}`],
    ['factors', `keel.mass${'*2'.repeat(290)}`],
    ['factors of one kind', `bend.share${' * bend.share'.repeat(40)}`],
    ['summands', `keel.mass${' + keel.mass'.repeat(48)}`],
    ['questions', `${'1>0?'.repeat(80)}1${':1'.repeat(80)}`],
    ['functions', `${'abs('.repeat(30)}1${')'.repeat(30)}`],
    ['nots', `${'not '.repeat(140)}(1 > 0) ? 1 : 2`],
    ['figures of a function', `max(${'1,'.repeat(98)}2)`],
  ])('the most %s that a sum has room for end in a number or a sentence', (_, text) => {
    expect(holds(text)).toBe(true);
  });
  test('and nothing of the language is changed by it', () => {
    const before = Object.getOwnPropertyNames(Object.prototype).toSorted();
    for (const text of ['__proto__.polluted = 1', 'constructor.prototype', 'half.__proto__']) read(text);
    expect(Object.getOwnPropertyNames(Object.prototype).toSorted()).toStrictEqual(before);
  });
});
