/** What there is to be found: the cells where they stand, their fields and answers, the boat's own sheet, and the texts. */
import type { Cell } from '../../cells';
import { wordsOf as spelledOut } from '../../measure';
import { type Block, type NotebookPage, wordsOf } from '../../notebook';
import { sentenceOf, WORDS, wordsIn } from '../../notebook/text/glossary';
import type { FormulaBlock } from '../../notebook/formulas/formula-quantities';
import { MINE } from '../../notebook/formulas/place-formulas';
import { capital } from '../words';
import type { OnSheet } from './on-sheet';
import type { Listed } from './search';

/** A thing to be found, and the way to it. */
export interface Thing extends Listed {
  /** A place on a notebook's page, or with no notebook a number of the boat's own sheet. */
  readonly place: string;
}

/**
 * @param pages the notebooks, in the order of their list
 * @param cells those that are there, by id
 * @param sheet none where the open notebook knows no boat
 */
export function thingsIn(
  pages: readonly NotebookPage[],
  cells: ReadonlyMap<string, Cell>,
  sheet: readonly OnSheet[],
  formulas: ReadonlyMap<string, FormulaBlock> = new Map(),
): readonly Thing[] {
  const owned = new Set(sheet.map(({ name }) => name));
  const log = sheet.length > 0 ? [LOG] : [];
  const own = [MINE_THING, ...[...formulas.values()].flatMap((block) => ofFormula(block, pages))];
  return [...sheet.map(ofSheet), ...log, ...own, ...pages.flatMap((page) => ofPage(page, cells, owned))];
}

/** The log of the boat in hand. */
const LOG: Thing = {
  kind: 'heading',
  title: 'Log of the build',
  notebook: null,
  same: 'log',
  where: 'What was done when, hours and money',
  place: 'log',
};

/** The formulas that stand in no notebook. */
const MINE_THING: Thing = {
  kind: 'heading',
  title: 'A formula of your own',
  notebook: null,
  same: MINE,
  where: 'Sums over any number of the boat and the cells',
  place: MINE,
};

/** Its lines, by what they are; those that can't be used are found in the text alone. */
function ofFormula({ name, lines }: FormulaBlock, pages: readonly NotebookPage[]): Thing[] {
  const home = pages.find(({ formulas }) => formulas?.some((place) => place.name === name));
  const where = home ? `${spelledOut(name)} · ${home.title}` : MINE_THING.title;
  return lines.flatMap(({ full, label }): Thing[] =>
    full === ''
      ? []
      : [
          {
            kind: 'answer',
            title: capital(label),
            also: `${spelledOut(full)} formula`,
            notebook: home?.id ?? null,
            same: full,
            where,
            place: full,
          },
        ],
  );
}

function ofSheet({ name, label, given }: OnSheet): Thing {
  const [part = ''] = name.split('.');
  return {
    kind: given ? 'field' : 'answer',
    title: label,
    also: spelledOut(part),
    notebook: null,
    same: name,
    where: `The boat’s own sheet · ${part === 'shop' ? 'the shop' : spelledOut(part)}`,
    place: name,
  };
}

function ofPage(page: NotebookPage, cells: ReadonlyMap<string, Cell>, owned: ReadonlySet<string>): Thing[] {
  const { id, title, summary } = page;
  const whole: Thing = {
    kind: 'notebook',
    title,
    notebook: id,
    same: id,
    where: summary,
    place: 'notebook-title',
  };
  if (id === WORDS) return [whole, ...wordsIn(page).map(ofWord)];
  let under: string | null = null;
  const seen = new Set<string>();
  const inText = page.blocks.flatMap((block, at): readonly Thing[] => {
    if (block.type === 'heading') {
      if (block.level === 2) under = wordsOf(block.inside);
      return ofHeading(block, page);
    }
    if (block.type !== 'cell' || seen.has(block.instance)) return [];
    seen.add(block.instance);
    const cell = cells.get(page.places.find(({ instance }) => instance === block.instance)?.cell ?? '');
    if (!cell) return [];
    const before = page.blocks[at - 1];
    const asked = before?.type === 'paragraph' ? sentenceOf(wordsOf(before.inside)) : cell.question;
    return ofCell(cell, { instance: block.instance, page, under, asked }, owned);
  });
  return [whole, ...inText];
}

const ofWord = ({ word, place, says }: ReturnType<typeof wordsIn>[number]): Thing => ({
  kind: 'word',
  title: word,
  notebook: WORDS,
  same: `word ${word}`,
  where: sentenceOf(says),
  place,
});

function ofHeading({ level, id, inside }: Extract<Block, { type: 'heading' }>, page: NotebookPage): Thing[] {
  if (level > 3) return [];
  const title = wordsOf(inside);
  return [
    { kind: 'heading', title, notebook: page.id, same: `${page.id} ${id}`, where: page.title, place: id },
  ];
}

/** Where a cell stands. */
interface Placed {
  readonly instance: string;
  readonly page: NotebookPage;
  /** The heading above it. */
  readonly under: string | null;
  /** The sentence before it. */
  readonly asked: string;
}

/** @param owned names of the numbers that the boat's own sheet has: they are found there */
function ofCell(cell: Cell, place: Placed, owned: ReadonlySet<string>): Thing[] {
  const { instance, under } = place;
  const { id: notebook, title, boat, form } = place.page;
  const isQuick = boat === 'none';
  const isPlain = instance === cell.id;
  const common = { also: cell.title, notebook };
  const question: Thing = {
    kind: isQuick ? 'quick answer' : 'question',
    title: cell.title,
    // A quick answer is asked for by the words before it.
    more: isQuick ? place.asked : cell.question,
    notebook,
    // The same cell under a name of its own asks of something else.
    same: isPlain ? `cell ${cell.id}` : `cell ${instance}`,
    where: [title, under].filter((one) => one !== null).join(' · '),
    // In a list of questions each has an address of its own.
    place: form === 'questions' ? instance : `cell-${instance}`,
  };
  const where = `${cell.title} · ${title}`;
  const fields = Object.entries(cell.inputs).flatMap(([key, spec]): Thing[] => {
    // What is asked of one part after another, or for a work of its own, is no part's own.
    const [owner, ...others] = spec.owners ?? [];
    const isOwners = others.length === 0 && owner?.label === spec.label;
    if (isOwners && owned.has(owner.name)) return [];
    const same = isOwners ? owner.name : `${cell.id}.${key}`;
    return [{ ...common, kind: 'field', title: spec.label, same, where, place: `${instance}.${key}` }];
  });
  const answers = cell.answers.map(({ of, label, from }): Thing => ({
    ...common,
    kind: 'answer',
    title: label,
    more: from,
    same: `${cell.id}.${of}`,
    where,
    place: `${instance}.${of}`,
  }));
  return [question, ...fields, ...answers];
}
