import { describe, expect, test } from 'vitest';
import { around, formulaBench } from './with';
import { given } from '../small-graph';

const told = (line: string): string => formulaBench({ day: `x = ${line}` }).told('day.x');
const spot = (line: string): string | undefined => formulaBench({ day: line }).spots()[0];

describe('a line comes to', () => {
  test.each([
    ['hull.mass / keelson.length', '25.6 kg/m'],
    ['hull.mass / keelson.length | of a foot | in lb/ft', '17.2 lb/ft'],
    ['hull.mass / keelson.length | in lb/ft | of a foot', '17.2 lb/ft'],
    ['keelson.length / hull.length', '0.8'],
    ['keelson.length / hull.length | in %', '80 %'],
    ['1 - bend.share', '60 %'],
    ['shop.air - shop.night', '12 °C'],
    ['shop.air + 5 K', '25 °C'],
    ['2 * paint.film', '200 µm'],
    ['3 * sheet.price', '150.00'],
    ['sheet.price / (1.22 m * 2.44 m)', '16.80/m²'],
    ['count.screws * 6 g', '72 g'],
    ['hull.mass / 3 h', '0.00759 kg/s'],
    ['hull.length > 3 m', 'yes'],
    ['hull.length > 3 m and frame.timber == "ash"', 'no'],
    ['frame.timber == "oak" ? 25 mm : 20 mm', '25 mm'],
    ['max(keelson.length, 1.5 * 3 m)', '4500 mm'],
    ['½ * hull.length', '2000 mm'],
  ])('%s', (line, says) => {
    expect(told(line)).toBe(says);
  });
});

describe('what is amiss is told at its place', () => {
  test.each([
    ['a = hull.mass + hull.length', `can't add a length to a mass [hull.mass + hull.length]`],
    ['a = 2 * (hull.mass + 3)', `can't add a number to a mass; give the number its unit [hull.mass + 3]`],
    ['a = hull.mass / keelson.lenght', 'there is no quantity "keelson.lenght" [keelson.lenght]'],
    ['a = hull.mass +', 'nothing stands after "+" [+]'],
    ['a = (hull.mass', 'a bracket is not closed [(]'],
    ['a = hull.mass | in m', 'the sum comes to a mass, and "m" is for a length [m]'],
    ['a = hull.mass | in stones of gold', 'there is no unit "stones of gold" [stones of gold]'],
    [
      'hull.mass',
      'a line is a name, "=" and a sum, as in "perFoot = hull.structureMass / hull.length" [hull.mass]',
    ],
    [
      'Per Foot = 1',
      'a name is one word, a small letter first, then letters and figures, as in "perFoot = hull.structureMass / hull.length" [Per Foot]',
    ],
    ['kg = 1', '"kg" is a unit; give the line a name of its own [kg]'],
    ['sqrt = 1', '"sqrt" has another meaning in sums; give the line a name of its own [sqrt]'],
    [
      'constructor = 1',
      '"constructor" has another meaning in sums; give the line a name of its own [constructor]',
    ],
    ['  two = 1 < 2 < 3', 'compare two at a time, joined by "and" [<]'],
    ['a = sqrt(hull.length)', 'it comes to a length to the power 0.5, for which there is no unit'],
    ['a = import("x")', 'there is no function "import" [import]'],
    ['a = 1 | a | b', 'after the sum stands once what it is, and once the unit'],
  ])('%s', (line, says) => {
    expect(spot(line)?.slice(0, says.length)).toBe(says);
  });
  test('and of two lines of one name the second', () => {
    expect(formulaBench({ day: 'a = 1\na = 2' }).spots()[1]).toBe(
      '"a" is already the name of a line above [a]',
    );
  });
});

describe('lines among each other', () => {
  test('name each other in any order, and lines of other blocks in full', () => {
    const { told } = formulaBench({
      day: 'twice = 2 * perFoot\nperFoot = hull.mass / keelson.length',
      night: 'all = day.twice * keelson.length',
    });
    expect(told('day.twice')).toBe('51.3 kg/m');
    expect(told('night.all')).toBe('164 kg');
  });
  test('of a circle the graph names the way round', () => {
    const { told } = formulaBench({ day: 'a = b + 1\nb = c\nc = day.a', night: 'x = day.a' });
    expect(told('day.a')).toBe('goes round in a circle: day.a -> day.b -> day.c -> day.a');
    expect(told('night.x')).toBe('waits for day.a');
  });
  test('so of one that leads through a field', () => {
    const { told, write } = formulaBench({ day: 'a = hull.length / 2' });
    write('hull.length', 'day.a');
    expect(told('day.a')).toMatch(/^goes round in a circle: .*day\.a -> hull\.length/);
    write('hull.length', '3 m');
    expect(told('day.a')).toBe('1500 mm');
  });
  test('one that waits for a line amiss says for which, and is told nothing of its own', () => {
    const bench = formulaBench({ day: 'a = 1 +\nb = a * 1 kg + 3 m' });
    expect(bench.told('day.b')).toBe('waits for day.a');
    expect(bench.spots()).toStrictEqual(['nothing stands after "+" [+]', undefined]);
    bench.set('day', 'a = 1 + 1\nb = a * 1 kg + 3 m');
    expect(bench.told('day.b')).toBe(`can't add a length to a mass`);
  });
  test('an edit of one line leaves what does not hang on it as it was worked out', () => {
    let count = 0;
    const counted = {
      name: 'far.off',
      kind: 'length' as const,
      meaning: 'far off',
      from: (read: { number: (name: string) => number }) => {
        count += 1;
        return read.number('hull.length');
      },
    };
    const bench = formulaBench({ day: 'a = 2 * far.off', night: 'b = 1' }, [...around, counted]);
    expect(bench.told('day.a')).toBe('8000 mm');
    bench.set('night', 'b = 2');
    expect([bench.told('night.b'), bench.told('day.a'), count]).toStrictEqual(['2', '8000 mm', 1]);
  });
  test('a field takes a result by its name, held to what the field measures', () => {
    const bench = formulaBench({ day: 'half = hull.length / 2\nheavy = 2 * hull.mass' }, [
      ...around,
      given('scarf.taper', '100 mm'),
    ]);
    bench.write('scarf.taper', 'day.half + 1 mm');
    expect(bench.told('scarf.taper')).toBe('2001 mm');
    bench.write('scarf.taper', 'day.heavy');
    expect(bench.told('scarf.taper')).toMatch(/is a length; "day\.heavy" is a mass/);
  });
});

describe('bounds, each told where it is passed', () => {
  test('lines of a block', () => {
    const text = Array.from({ length: 45 }, (_, at) => `line${at} = ${at}`).join('\n');
    const spots = formulaBench({ day: text }).spots();
    expect(spots).toHaveLength(41);
    expect(spots[40]).toBe('40 lines is the most; this one and those below are left out [line40 = 40]');
  });
  test('letters of a block', () => {
    expect(formulaBench({ day: `a = ${'1 + '.repeat(2000)}1` }).spots()).toStrictEqual([
      'these lines are too long together; 4000 characters is the most, and here are 8005 []',
    ]);
  });
  test('letters of a sum', () => {
    expect(spot(`a = ${'1 + '.repeat(200)}1`)).toMatch(
      /^this sum is too long: at most 600 letters and signs are read/,
    );
  });
  test('brackets in brackets', () => {
    expect(spot(`a = ${'('.repeat(40)}1${')'.repeat(40)}`)).toBe(
      'brackets stand too deep in each other: at most 30 are read [(]',
    );
  });
  test('lines of all blocks together', () => {
    const block = Array.from({ length: 40 }, (_, at) => `line${at} = ${at}`).join('\n');
    const texts = Object.fromEntries(Array.from({ length: 11 }, (_, at) => [`block${at}`, block]));
    expect(formulaBench(texts).spots()[400]).toMatch(/^400 lines in all formulas together is the most/);
  });
  test('the longest chain of lines that there can be is worked out to its end', () => {
    const texts = Object.fromEntries(
      Array.from({ length: 10 }, (_, block) => [
        `block${block}`,
        Array.from({ length: 40 }, (_, line) => {
          const next = line < 39 ? `line${line + 1}` : block < 9 ? `block${block + 1}.line0` : '1 mm';
          return `line${line} = ${next} + ${next} - ${next}`;
        }).join('\n'),
      ]),
    );
    expect(formulaBench(texts).told('block0.line0')).toBe('1 mm');
  });
});
