/**
 * A sentence that names a limit writes it on its own side: `at most {thickest}` is rounded down, `at least {pitch}` up.
 * And a number told beside its limit is written so finely that the two differ.
 */
import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import {
  type Cell,
  isChoice,
  kindOfKey,
  mannerOf,
  partsOf,
  plainInstance,
  warningsOf,
} from '../../src/cells';
import { cells } from '../../src/cells/all';
import { plainShown, type Shown, write } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { bench } from '../notebook/small-graph';
import { inRoot } from '../tools/root.mjs';
import { acceptedEntries } from './proofs';
import { allOf } from '../notebook/all-of';

const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };

/** Words round a number that make a limit of it, and on which side. */
const sayings: readonly (readonly [saying: RegExp, bound: 'most' | 'least' | 'either'])[] = [
  [/\bat most \{(\w+)\}/gi, 'most'],
  [/\bno (?:more|longer|thicker|wider|farther|deeper|hotter) than \{(\w+)\}/g, 'most'],
  [/\bup to \{(\w+)\} at (?:most|once)/g, 'most'],
  [/\{(\w+)\} at most\b/g, 'most'],
  [/\bover the \{(\w+)\} allowed/g, 'most'],
  [/\bmore than (?:the |this glue bridges, )?\{(\w+)\}/g, 'most'],
  [/\bat least \{(\w+)\}/gi, 'least'],
  [/\{(\w+)\} at least\b/g, 'least'],
  [/\b(?:less|shorter|thinner|nearer) than (?:the )?\{(\w+)\}/g, 'least'],
  [/\bunder \{(\w+)\}/g, 'least'],
  [/\{(\w+)\} (?:is|are) (?:wanted|asked|needed)/g, 'least'],
  [/\btake \{(\w+)\} or more\b/gi, 'least'],
  // Of a limit it is rounded up, of what is kept everywhere down.
  [/\{(\w+)\} or more\b/g, 'either'],
  [/\{(\w+)\} or less\b/g, 'most'],
];

/** Typed by the builder and told as typed: no limit, though words for one stand before it. */
const asTyped = new Set(['fillet.waste', 'resin.waste', 'laminate.spread']);

/** Sentences of the cell that make a limit of a number which does not say on which side it is rounded. */
function unbounded(cell: Cell): string[] {
  const sentences = [cell.inWords, ...cell.warnings.map(({ says }) => says)].flatMap((words) =>
    partsOf(words).map(({ text }) => text),
  );
  return sentences.flatMap((says) =>
    sayings.flatMap(([saying, bound]) =>
      [...says.matchAll(saying)].flatMap(([words, key = '']) => {
        // Whole things are not rounded.
        const exact = ['count', 'choice'].includes(kindOfKey(cell, key)) || asTyped.has(`${cell.id}.${key}`);
        const has = mannerOf(cell, key)?.bound;
        return exact || has === bound || (has && bound === 'either') ? [] : [`${cell.id}: ${words}`];
      }),
    ),
  );
}

test('every limit in a sentence says on which side it is rounded', () => {
  expect(cells.flatMap(unbounded)).toStrictEqual([]);
});

test('so does every number asked for as one', () => {
  const asked = cells.flatMap((cell) =>
    Object.entries(cell.inputs).flatMap(([key, spec]) => {
      if (isChoice(spec) || spec.kind === 'count') return [];
      const side = /\bat most$|\ballowed$/i.exec(spec.label)
        ? 'most'
        : /\bat least\b/.exec(spec.label)
          ? 'least'
          : null;
      return side === null || spec.bound === side ? [] : [`${cell.id}.${key}: ${spec.label}`];
    }),
  );
  expect(asked).toStrictEqual([]);
});

test('so does every limit that a picture’s sentence is made of', () => {
  const files = readdirSync(inRoot('src/cells'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  const amiss = files.flatMap((file) =>
    readFileSync(inRoot(`src/cells/${file}`), 'utf8')
      .split('\n')
      .flatMap((line) =>
        [...line.matchAll(/\b(?:at (?:most|least)|no more than|no less than) \$\{[^}]*\}/gi)]
          .filter(([words]) => /say|length|angle/i.test(words) && !words.includes('bound'))
          .map(([words]) => `${file}: ${words}`),
      ),
  );
  expect(amiss).toStrictEqual([]);
});

/** Pairs of numbers that a warning compares and tells: `{share}` over `{allowed}`. */
function comparedIn({ when, says }: Cell['warnings'][number]): (readonly [string, string])[] {
  return [...when.matchAll(/(\w+) (?:<|>) (\w+)(?= |$)/g)]
    .map(([, a = '', b = '']) => [a, b] as const)
    .filter(([a, b]) => [a, b].every((key) => partsOf(says).some(({ text }) => text.includes(`{${key}}`))));
}

/** Different enough for a difference to be written at all: a part in ten thousand. */
const isApart = (a = 0, b = 0): boolean => Math.abs(a - b) > 1e-4 * Math.max(Math.abs(a), Math.abs(b)) + 1e-7;

const compared = cells.filter((cell) => cell.warnings.some((warning) => comparedIn(warning).length > 0));
test.each(compared.map((cell) => [cell.id, cell] as const))(
  '%s: in millimetres and in inches, what is past its limit is written otherwise than the limit',
  (_id, cell) => {
    const instance = plainInstance(cell);
    const { given, derived, hull } = allOf(catalogueOf(demoBoat, [instance]));
    const made = bench(given, derived, hull);
    const alike: string[] = [];
    for (const entries of fc.sample(acceptedEntries(cell), { seed: 5, numRuns: 60 })) {
      for (const [key, text] of Object.entries(entries)) made.write(`${cell.id}.${key}`, text);
      for (const shown of [plainShown, feet]) {
        const told: Record<string, string> = {};
        const applies = warningsOf(instance, made.graph.workOut, (value, kind, options) => {
          const written = write(value, kind, shown, options);
          told[`${kind} ${value}`] = written.text;
          return written;
        });
        for (const { warning } of applies) {
          for (const [a, b] of comparedIn(warning)) {
            const values = [a, b].map((key) => Number(made.graph.value(`${cell.id}.${key}`)));
            const [of, to] = [a, b].map((key, i) => told[`${kindOfKey(cell, key)} ${values[i]}`]);
            // Of two comparisons joined by "or" one may be of equals, or of next to nothing on both sides.
            if (of === to && isApart(values[0], values[1])) alike.push(`${warning.when}: ${of}`);
          }
        }
      }
    }
    expect(alike).toStrictEqual([]);
  },
);

test('a share a hair over the share allowed is not written as the share allowed', () => {
  const bend = cells.find(({ id }) => id === 'bend')!;
  const instance = plainInstance(bend);
  const { given, derived, hull } = allOf(catalogueOf(demoBoat, [instance]));
  const made = bench(given, derived, hull);
  for (const [key, text] of Object.entries({ thickness: '18 mm', radius: '2 m', allowed: '50 %' }))
    made.write(`bend.${key}`, text);
  const share = made.graph.value('bend.share');
  if (typeof share !== 'number') throw new Error('the bend has no share');
  // The share goes as one over the radius, so this radius brings it a hair over a half.
  made.write('bend.radius', `${2 * (share / 0.5002)} m`);
  const [first] = warningsOf(instance, made.graph.workOut, (value, kind, options) =>
    write(value, kind, plainShown, options),
  );
  expect(first?.says).toContain('takes 50.02 % of what breaks this wood, over the 50 % allowed');
});

test('a warning is told in the units chosen when it is read, with the numbers as they were', () => {
  const bend = cells.find(({ id }) => id === 'bend')!;
  const instance = plainInstance(bend);
  const { given, derived, hull } = allOf(catalogueOf(demoBoat, [instance]));
  const made = bench(given, derived, hull);
  for (const [key, text] of Object.entries({ thickness: '30 mm', radius: '1 m' }))
    made.write(`bend.${key}`, text);
  const applies = warningsOf(instance, made.graph.workOut, (value, kind, options) =>
    write(value, kind, plainShown, options),
  ).find(({ says }) => says.includes('thick,'))!;
  expect(applies.says).toMatch(/[Aa]t most [\d.]+ mm thick/);
  made.write('bend.radius', '9 m');
  const told = applies.tell((value, kind, options) => write(value, kind, feet, options));
  expect(told).toMatch(/[Aa]t most [\d/ ]+ in thick/);
  expect(told).not.toContain('mm');
});
