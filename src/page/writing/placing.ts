/** The finder as it offers what can be placed in a text: blocks, cells, numbers and small drawings. */
import type { Cell, Instance } from '../../cells';
import { wordsOf as spelledOut } from '../../measure';
import type { NotebookPage } from '../../notebook';
import { cellText } from '../../notebook/writing/cell-text';
import { begunAs, type Near, placeable } from '../../notebook/writing/placeable';
import type { Bench } from '../bench';
import type { FinderFor } from '../finder/finder';
import { onSheet } from '../finder/on-sheet';
import { openAsking } from '../finder/open';
import { type Index, indexOf, type Listed } from '../finder/search';
import { tradeWords } from '../finder/trade-words';
import { sketches } from '../glossary/sketches';
import { allOnShelf } from '../library';
import { freeName } from './names';
import { textOf } from './write';

/** What is put there. */
export interface Put {
  readonly text: string;
  /** The letters that are chosen then, to be typed over. */
  readonly from: number;
  readonly to: number;
  /** Within a sentence; else it stands by itself. */
  readonly inline: boolean;
}

interface Placed extends Listed {
  readonly put: (bench: Bench) => Put;
}

/**
 * @param inSentence whether the place is within a text, where a number stands by itself; else it gets a sentence
 * @param above the last cell above the place, whose names serve as examples
 */
export function askToPlace(
  bench: Bench,
  page: NotebookPage,
  { inSentence, above }: { readonly inSentence: boolean; readonly above: string | null },
  take: (put: Put) => void,
): void {
  let made: { readonly of: readonly unknown[]; readonly index: Index<Placed> } | null = null;
  const asking: FinderFor<Placed> = {
    called: 'Place',
    field: 'What to place: a cell, a number, a heading',
    atFirst: 'What can be placed',
    example: 'scarf, taper, heading …',
    index: () => {
      const of = [allOnShelf().cells, bench.book.catalogue.value, bench.instances.value];
      if (made?.of.every((one, at) => one === of[at])) return made.index;
      const things = placedIn(bench, page, inSentence, above);
      made = { of, index: indexOf(things, tradeWords) };
      return made.index;
    },
    first: ({ things }) => things.filter(({ kind }) => kind === 'text' || kind === 'cell'),
    last: (typed) => (inSentence ? [] : [asTyped(typed)]),
    take: (thing) => take(thing.put(bench)),
  };
  openAsking(bench, asking);
}

const whole = (text: string): Put => ({ text, from: text.length, to: text.length, inline: false });

const asTyped = (typed: string): Placed => ({
  kind: 'text',
  title: `“${typed.trim()}”`,
  where: 'As a paragraph of its own',
  notebook: null,
  same: 'as typed',
  put: () => whole(typed.trim()),
});

function placedIn(
  bench: Bench,
  page: NotebookPage,
  inSentence: boolean,
  above: string | null,
): readonly Placed[] {
  const { book, boatless, instances } = bench;
  const texts = placeable.map((one): Placed => {
    const put = () => ({ ...begunAs(one, nearTo(above, page, bench)), inline: false });
    return {
      kind: 'text',
      title: one.title,
      where: one.says,
      also: one.says,
      notebook: null,
      same: one.title,
      put,
    };
  });
  const cells = [...allOnShelf().cells.values()].map((cell) => ofCell(cell, page));
  const here = new Set(page.places.map(({ instance }) => instance));
  const inCells = [...instances.value].flatMap(([name, instance]) =>
    numbersOf(name, instance, here.has(name) ? page.id : null, inSentence),
  );
  const onBoat = boatless.value ? [] : onSheet(book.catalogue.value, instances.value);
  const hers = onBoat.map(({ name, label }): Placed => {
    const [part = ''] = name.split('.');
    const where = `${part === 'shop' ? 'The shop' : `The boat’s ${spelledOut(part)}`} · ${name}`;
    return { ...number(name, label, inSentence), also: spelledOut(part), where, notebook: null };
  });
  return [...texts, ...cells, ...inCells, ...hers, ...Object.keys(sketches).map(ofSketch)];
}

/** The plain cell where the notebook has none yet; else one with a name of its own. */
function ofCell({ id, title, question }: Cell, page: NotebookPage): Placed {
  const isThere = page.places.some(({ instance }) => instance === id);
  return {
    kind: 'cell',
    title,
    more: question,
    where: isThere ? `${title} · one more, with numbers of its own` : title,
    notebook: null,
    same: `cell ${id}`,
    put: (bench) =>
      whole(cellText(id, isThere ? freeName(id, textOf(bench, page.id) ?? '', bench) : undefined)),
  };
}

function numbersOf(name: string, { cell }: Instance, notebook: string | null, inSentence: boolean): Placed[] {
  const labels = [
    ...cell.answers.map(({ of, label }) => [of, label] as const),
    ...Object.entries(cell.inputs).map(([key, { label }]) => [key, label] as const),
  ];
  return labels.map(([key, label]) => ({
    ...number(`${name}.${key}`, label, inSentence),
    also: cell.title,
    where: `${cell.title} · ${name}.${key}`,
    notebook,
  }));
}

function number(name: string, label: string, inSentence: boolean): Omit<Placed, 'where' | 'notebook'> {
  const live = `\`= ${name}\``;
  const put = () => (inSentence ? { ...whole(live), inline: true } : whole(`${label}: ${live}.`));
  return { kind: 'number', title: label, same: name, put };
}

const ofSketch = (name: string): Placed => ({
  kind: 'drawing',
  title: name.replaceAll('-', ' '),
  where: 'A small drawing of what the word means',
  notebook: null,
  same: `drawing ${name}`,
  put: () => whole(`\`\`\`sketch ${name}\n\`\`\``),
});

/** Names for examples: of the cell above, where it asks for a number and gives one. */
function nearTo(above: string | null, page: NotebookPage, bench: Bench): Near {
  const free = (name: string) => freeName(name, textOf(bench, page.id) ?? '', bench);
  const of = above === null ? undefined : bench.instances.peek().get(above);
  const key = of && Object.entries(of.cell.inputs).find(([, spec]) => spec.kind !== 'choice')?.[0];
  const answer = of?.cell.answers[0]?.of;
  if (key === undefined || answer === undefined)
    return { entry: 'scarf.slope', typed: '12', answer: 'scarf.taper', free };
  const entry = `${above}.${key}`;
  const typed = bench.book.inHand.peek().entry(entry)?.text ?? '1';
  return { entry, typed, answer: `${above}.${answer}`, free };
}
