/**
 * A notebook's text as a tree of plain JSON: what the page lays out, made when the
 * page is built. There is no HTML anywhere in it.
 *
 * A fault stands in the tree at the place where it was found, with the text that caused it, so
 * one bad line costs nothing but itself.
 */

import type { Stage } from '../cells';

/** A stretch of text within a block. */
export type Inline =
  | Text
  | Strong
  | Emphasis
  | CodeSpan
  | Link
  | LiveValue
  | WordsWhen
  | Box
  | LineBreak
  | Fault;

export interface Text {
  readonly type: 'text';
  readonly text: string;
}
export interface Strong {
  readonly type: 'strong';
  readonly inside: readonly Inline[];
}
export interface Emphasis {
  readonly type: 'emphasis';
  readonly inside: readonly Inline[];
}
export interface CodeSpan {
  readonly type: 'code';
  readonly text: string;
}
/** Leads to a web page, to a file beside the notebook or to a heading (`#what-goes-wrong`); to nothing else. */
export interface Link {
  readonly type: 'link';
  readonly to: string;
  readonly inside: readonly Inline[];
}
/** The value a quantity has at the moment, written in the units chosen. */
export interface LiveValue {
  readonly type: 'value';
  /** Name of the quantity: `scarf.taper`. */
  readonly of: string;
  readonly line: number;
}
/** Words that are said where all comparisons hold, and others where they don't. */
export interface WordsWhen {
  readonly type: 'when';
  readonly holds: Condition;
  readonly inside: readonly Inline[];
  readonly otherwise: readonly Inline[];
  readonly line: number;
}
/** A box to tick, at the head of an item of a list. */
export interface Box {
  readonly type: 'box';
  /** What is ticked off: the item's own words. */
  readonly says: string;
  /** As the notebook comes. */
  readonly ticked: boolean;
}
export interface LineBreak {
  readonly type: 'break';
}

/** All must hold. */
export type Condition = readonly Comparison[];
export interface Comparison {
  /** Name of a quantity: `chineLog.thickness`. */
  readonly of: string;
  readonly is: '<' | '>' | '<=' | '>=' | '=' | '!=' | 'there' | 'not there';
  /** An entry of the same kind, as a field takes it, or an answer's short name; empty for what is only there or not. */
  readonly than: string;
}

export type Block =
  | Heading
  | Paragraph
  | List
  | Quote
  | PlainTable
  | CodeBlock
  | Rule
  | CellPlace
  | TryPlace
  | BoatPlace
  | WhenPlace
  | Fault;

export interface Heading {
  readonly type: 'heading';
  readonly level: number;
  /** Unique on the page and the same as long as the words are: `what-goes-wrong`. */
  readonly id: string;
  readonly inside: readonly Inline[];
}
export interface Paragraph {
  readonly type: 'paragraph';
  readonly inside: readonly Inline[];
}
export interface List {
  readonly type: 'list';
  /** The first number of a numbered list; null for bullets. */
  readonly from: number | null;
  readonly items: readonly (readonly Block[])[];
}
export interface Quote {
  readonly type: 'quote';
  readonly blocks: readonly Block[];
}
export interface PlainTable {
  readonly type: 'table';
  readonly align: readonly ('left' | 'center' | 'right' | null)[];
  readonly head: readonly (readonly Inline[])[];
  readonly rows: readonly (readonly (readonly Inline[])[])[];
}
export interface CodeBlock {
  readonly type: 'code';
  readonly text: string;
}
export interface Rule {
  readonly type: 'rule';
}

/** Where a calculator cell stands. */
export interface CellPlace {
  readonly type: 'cell';
  /** Id of the cell: `scarf`. Whether there is such a cell is for the page to say. */
  readonly cell: string;
  /** First word of its quantities' names: the cell's id, or the name given after `as`. */
  readonly instance: string;
  /** Entries that hold in this instance until the builder writes others, by the input's key. */
  readonly presets: Readonly<Record<string, string>>;
  readonly line: number;
}

/** A second version ready to look at: a line with a button that starts it. */
export interface TryPlace {
  readonly type: 'try';
  /** What the second version is, as the button says it: `Two boards of half the thickness`. */
  readonly title: string;
  /** Entries by the quantity's full name. */
  readonly changes: Readonly<Record<string, string>>;
  readonly line: number;
}

/** Text that is said only where all comparisons hold. There is no cell and no heading in it: these stay where they are. */
export interface WhenPlace {
  readonly type: 'when';
  readonly holds: Condition;
  readonly blocks: readonly Block[];
  readonly line: number;
}

/** Where a notebook begins to tell of a certain boat: a key that brings her on a sheet of her own. */
export interface BoatPlace {
  readonly type: 'boat';
  /** Id of the starter. */
  readonly boat: string;
  readonly line: number;
}

/** What could not be read, kept as it was typed. */
export interface Fault {
  readonly type: 'fault';
  readonly line: number;
  /** What is wrong and what would be right, in a sentence. */
  readonly says: string;
  readonly text: string;
}

/** The text at the head of a notebook. */
export interface FrontMatter {
  readonly title: string;
  /** One sentence for the list of notebooks; empty where there is none. */
  readonly summary: string;
  /** The stage of the build it belongs to, as the contents list names it; null where it belongs to none. */
  readonly stage: Stage | null;
  /** Place among the notebooks, smallest first. */
  readonly order: number;
  /** The starter that it tells of, `none` where it knows no boat; null where it follows the builder's own. */
  readonly boat: string | null;
}

export interface NotebookPage extends FrontMatter {
  /** From the file's name: `the-build`. */
  readonly id: string;
  readonly blocks: readonly Block[];
}

/** The cells to be made, each instance once however often the page shows it, in the order of their first place. */
export function instancesOf(page: NotebookPage): CellPlace[] {
  const first = new Map<string, CellPlace>();
  for (const place of blocksOf(page.blocks, 'cell')) {
    if (!first.has(place.instance)) first.set(place.instance, place);
  }
  return [...first.values()];
}

/** Headings of the second level, for the list of contents. */
export function headingsOf({ blocks }: NotebookPage): { readonly id: string; readonly text: string }[] {
  return blocks.flatMap((block) =>
    block.type === 'heading' && block.level === 2 ? [{ id: block.id, text: wordsOf(block.inside) }] : [],
  );
}

/** Everything in the notebook that could not be read, in order. */
export function faultsOf(page: NotebookPage): Fault[] {
  return [
    ...blocksOf(page.blocks, 'fault'),
    ...inlinesOf(page.blocks).filter((inline) => inline.type === 'fault'),
  ].sort((a, b) => a.line - b.line);
}

/** The blocks of a kind, in order, those within quotes and lists too. */
export function blocksOf<T extends Block['type']>(
  blocks: readonly Block[],
  type: T,
): Extract<Block, { type: T }>[] {
  return everyBlock(blocks).filter((block): block is Extract<Block, { type: T }> => block.type === type);
}

function everyBlock(blocks: readonly Block[]): Block[] {
  return blocks.flatMap((block) => {
    if (block.type === 'quote' || block.type === 'when') return [block, ...everyBlock(block.blocks)];
    if (block.type === 'list') return [block, ...block.items.flatMap(everyBlock)];
    return [block];
  });
}

/** All stretches of text, in order, those within others too. */
export function inlinesOf(blocks: readonly Block[]): Inline[] {
  return everyBlock(blocks).flatMap((block) => {
    if (block.type === 'heading' || block.type === 'paragraph') return everyInline(block.inside);
    if (block.type === 'table') return [block.head, ...block.rows].flat().flatMap(everyInline);
    return [];
  });
}

function everyInline(inlines: readonly Inline[]): Inline[] {
  return inlines.flatMap((inline) => [
    inline,
    ...('inside' in inline ? everyInline(inline.inside) : []),
    ...('otherwise' in inline ? everyInline(inline.otherwise) : []),
  ]);
}

/** The words of a stretch of text without their marks. */
export function wordsOf(inlines: readonly Inline[]): string {
  return inlines.map(wordsOfOne).join('');
}

function wordsOfOne(inline: Inline): string {
  if ('inside' in inline) return wordsOf(inline.inside);
  if (inline.type === 'value') return inline.of;
  if (inline.type === 'box') return '';
  return inline.type === 'break' ? ' ' : inline.text;
}
