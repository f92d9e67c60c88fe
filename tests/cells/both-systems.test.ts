/**
 * A figure in a fixed text stands in it in both systems: `60 to 75 mm (2 1/2 to 3 in)`. Texts are shown as they are,
 * and who works in feet and inches has no millimetres on the rule.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { cells } from '../../src/cells/all';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { inRoot } from '../tools/root.mjs';
import { alone } from './figures-alone';
import { allOf } from '../notebook/all-of';

/** Where a figure may stand alone, and why. */
const excused: readonly (readonly [text: RegExp, why: string])[] = [
  [/√\(2 g h\)/, 'g is gravity'],
  [/13 d - 30 mm/, 'a formula of the European code, true in its own unit only'],
  [/10 D \+ 0\.5 to 1\/4 in/, 'a formula of the American code, true in its own unit only'],
  [/0\.060 in \+ 0\.013 in for each gauge/, 'the rule of a standard, in its own unit'],
  [/3,360, 4,320 or 5,280 psi/, 'constants of an older code, in its own unit'],
  [/1\.12 x specific gravity .* x 1000 kg\/m³/, 'what a cubic metre of water weighs, as the formula has it'],
  [/6 in of plate on 1\/4 in/, 'rows of a printed table'],
  [/ring nails of 2 to 2\.7 mm .*\(14 to 12 gauge/, 'wire goes by gauge where nails are sold by the inch'],
  [/two drops \(0\.1 mL\)/, 'drops are the same everywhere'],
  [/5 °C \(9 °F\) warmer/, 'a difference of temperatures, not a temperature'],
  [/1 m² or 1 m$|a square metre, or a metre of fillet/, 'a pace; the note at its field says it by feet too'],
  [/3 °C, in America 5 °F/, 'a difference of temperatures, each system’s own'],
  [/sold by 0\.3 m or by two feet/, 'each system’s own lengths at the yard'],
];

/** Keys under which a declaration holds what is read as it stands. */
const read = new Set(
  'label note says how limit meaning title question caption turns from source text'.split(' '),
);
/** Links and formulas stand under the same key as the words for where a tape is laid. */
const isLink = (place: string): boolean => place.endsWith('.from') && !place.includes('.answers.');

/** The result in words, all its sentences and clauses. */
const inWords = /^\w+\.inWords/;

/** Every text of a declaration that is shown as it is, with its place. */
function fixedIn(value: unknown, place: string, shown = false): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return shown && !isLink(place) ? [[place, value]] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    fixedIn(
      inner,
      `${place}.${key}`,
      read.has(key) || (inWords.test(`${place}.${key}`) && key !== 'when') || place.endsWith('.cautions'),
    ),
  );
}

const { given, derived } = allOf(wholeCatalogue(demoBoat));
const texts = [
  ...cells.flatMap((cell) => fixedIn(cell, cell.id)),
  ...[...given, ...derived].flatMap((quantity) => fixedIn(quantity, quantity.name)),
];

/** Refusals, as the files have them: a value that is put in is written in the units chosen. */
const refusals = ['cells', 'boat', 'trade'].flatMap((folder) =>
  readdirSync(inRoot(`src/${folder}`), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) =>
      [
        ...readFileSync(inRoot(`src/${folder}/${file}`), 'utf8').matchAll(
          /\b(?:issue|Error)\(\s*(['"`])(.+?)\1,?\s*\)/g,
        ),
      ].map(([, , text = '']) => [`${folder}/${file}`, text.replaceAll(/\$\{[^}]*\}/g, '{}')] as const),
    ),
);

describe('figures in fixed texts', () => {
  test.each([
    ['common practice: 200 to 300 N at arm’s reach', ['200 to 300 N']],
    ['1 km where it is straight', ['1 km']],
    ['half a millimetre between layers, a metre at most', ['1/2 mm', '1 m']],
    ['a difference of 1/8 in is accepted', ['1/8 in']],
    ['most take 35 to 48 mm (1 3/8 in)', ['35 to 48 mm']],
    ['25 mm (1/2 in)', ['25 mm', '1/2 in']],
    ['cures at 20 °C (78 °F)', ['20 °C', '78 °F']],
    ['20 °C (68 °F), down to -50 °C (-58 °F)', []],
    ['Leave {gap}, 1 in 8; a metre (3 ft 3 in) at most; 1 in {oneIn} breaks', []],
    ['200 to 300 N (45 to 65 lbf), 10 000 mm²', ['10 000 mm²']],
  ])('what stands alone in "%s"', (text, found) => {
    expect(alone(text)).toStrictEqual(found);
  });

  test('stand in both systems', () => {
    expect(texts.length).toBeGreaterThan(3000);
    const amiss = texts
      .filter(([, text]) => !excused.some(([pattern]) => pattern.test(text)))
      .flatMap(([place, text]) => alone(text).map((one) => `${place}: ${one}, in "${text}"`));
    expect(amiss).toStrictEqual([]);
  });

  test('and so do those of refusals', () => {
    expect(refusals.length).toBeGreaterThan(50);
    expect(refusals.filter(([, text]) => alone(text).length > 0)).toStrictEqual([]);
  });

  test.each(excused)('%s is excused: %s', (pattern) => {
    expect(texts.some(([, text]) => pattern.test(text) && alone(text).length > 0)).toBe(true);
  });
});
