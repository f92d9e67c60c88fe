/** One word a thing: what a builder reads of one thing in two cells bears one name. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { cells } from '../../src/cells/all';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { inRoot } from '../tools/root.mjs';
import { allOf } from '../notebook/all-of';

/** Keys under which a cell's declaration holds what the machine reads. */
const forMachines = new Set(
  'id stage kind formula from fromBy owners when preset min max step of uses over only known weight about by choice view'.split(
    ' ',
  ),
);

/** Every text of a declaration that is shown, with its place. */
function shownIn(value: unknown, place: string): readonly (readonly [place: string, text: string])[] {
  // A value put into a sentence goes by the name it has in the formulas.
  if (typeof value === 'string') return [[place, value.replaceAll(/\{[^}]*\}/g, '…')]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    forMachines.has(key) && !Array.isArray(value) ? [] : shownIn(inner, `${place}.${key}`),
  );
}

/** A notebook's prose, without its cells and its live numbers. */
const notebookTexts = readdirSync(inRoot('notebooks'))
  .filter((file) => file.endsWith('.md'))
  .map((file) => ({
    file,
    prose: readFileSync(inRoot(`notebooks/${file}`), 'utf8').replaceAll(/```[\s\S]*?```|`[^`]*`/g, ''),
  }));

const texts = [
  ...cells.flatMap((cell) =>
    Object.entries(cell).flatMap(([key, value]) =>
      // An input may be called as a word of the form is.
      key === 'inputs' || key === 'steps'
        ? Object.entries(value as object).flatMap(([name, spec]) => shownIn(spec, `${cell.id}.${name}`))
        : key === 'groups'
          ? Object.keys(value as object).map((name) => [`${cell.id}.groups`, name] as const)
          : forMachines.has(key)
            ? []
            : shownIn(value, `${cell.id}.${key}`),
    ),
  ),
  ...allOf(wholeCatalogue(demoBoat)).given.map(({ name, meaning }) => [name, meaning] as const),
  // The glossary tells a word by other words: that is what it is for.
  ...notebookTexts.filter(({ file }) => file !== 'words.md').map(({ file, prose }) => [file, prose] as const),
];

/** The word that is settled, and how else the same thing has been called. */
const settled: readonly (readonly [word: string, others: RegExp])[] = [
  ['caul', /\b(batten|strip|stick|block)s?( of wood)?( laid)? under the clamps/i],
  ['frame thickness', /\bsiding\b|frame’s siding|thickness fore and aft/i],
  ['depth of the members', /\bmoulded\b|depth of the (frame side|bottom member|member)\b/i],
  ['member', /\b(futtock|frame timber|side of the frame piece)s?\b/i],
  ['chine log', /\bchine (stringer|batten)s?\b/i],
  ['sheer clamp', /\b(gunwale|sheer (log|stringer|batten))s?\b/i],
];

describe('words', () => {
  test.each(settled)('%s, and nothing else for it', (word, others) => {
    // A caul is told what it is where it is first met, and the word stands beside it.
    const amiss = texts.filter(([, text]) =>
      others.test(text.replace(/\ba caul, a strip of wood laid under the clamps/gi, '')),
    );
    expect(amiss).toStrictEqual([]);
    expect(texts.some(([, text]) => text.toLowerCase().includes(word))).toBe(true);
  });

  test('a size of one part bears one label, wherever its part is named', () => {
    const part =
      /\b(keelson|chine log|sheer clamp|rub rail|frame|member|side|bottom|stem|transom|gusset|thwart)s?\b/i;
    const labels = new Map<string, Set<string>>();
    for (const { inputs } of cells) {
      for (const { from, label } of Object.values(inputs)) {
        if (from === undefined || from.includes('{') || !part.test(label)) continue;
        labels.set(from, (labels.get(from) ?? new Set()).add(label));
      }
    }
    expect(labels.size).toBeGreaterThan(10);
    expect([...labels].filter(([, of]) => of.size > 1).map(([from, of]) => [from, ...of])).toStrictEqual([]);
  });
});
