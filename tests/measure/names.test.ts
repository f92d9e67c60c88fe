import { describe, expect, test } from 'vitest';
import { nameOf, nearestNames, wordsOf } from '../../src/measure';

const known = [
  'keelson.thickness',
  'side.thickness',
  'bottom.thickness',
  'side.timber',
  'hull.length',
  'frame3.sheer.halfBreadth',
  'frame3.sheer.height',
];

describe('the nearest names', () => {
  const cases: readonly [string, readonly string[]][] = [
    ['side.thicknes', ['side.thickness']],
    ['Side.Thickness', ['side.thickness']],
    ['keelson.tickness', ['keelson.thickness']],
    ['thickness', ['side.thickness', 'bottom.thickness', 'keelson.thickness']],
    ['hul', ['hull.length']],
    ['frame3.sheer.halfbreadht', ['frame3.sheer.halfBreadth']],
    ['frame3.sheer', ['frame3.sheer.height', 'frame3.sheer.halfBreadth']],
    ['sheer.height', ['frame3.sheer.height']],
    ['rudder.area', []],
    ['', []],
  ];
  test.each(cases)('%s', (name, near) => {
    expect(nearestNames(name, known)).toStrictEqual(near);
  });
  test('are as many as asked for', () => {
    expect(nearestNames('thickness', known, 1)).toStrictEqual(['side.thickness']);
  });
  test('a name that is there is nearest to itself', () => {
    for (const name of known) expect(nearestNames(name, known)[0]).toBe(name);
  });
});

describe('names and words', () => {
  test.each([
    ['boardThickness', 'board thickness'],
    ['frame3', 'frame 3'],
    ['side.thickness', 'side thickness'],
    ['frame3.sheer.halfBreadth', 'frame 3 sheer half breadth'],
    ['sternTransom', 'stern transom'],
    ['gM', 'g m'],
    ['n', 'n'],
  ])('%s in words is %s', (name, words) => {
    expect(wordsOf(name)).toBe(words);
  });
  test.each([
    ['frame 3', 'frame3'],
    ['stern transom', 'sternTransom'],
    ['Stern  Transom!', 'sternTransom'],
    ['côté élevé', 'coteEleve'],
    ['---', ''],
    ['', ''],
  ])('"%s" as a name is %s', (words, name) => {
    expect(nameOf(words)).toBe(name);
  });
  test('a name made of words gives the words back', () => {
    for (const words of ['frame 3', 'stern transom', 'board thickness'])
      expect(wordsOf(nameOf(words))).toBe(words);
  });
});
