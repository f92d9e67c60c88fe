/**
 * A notebook's text as a tree of plain JSON: what the page lays out. There is no HTML anywhere in it.
 *
 * A fault stands in the tree at the place where it was found, with the text that caused it, so
 * one bad line costs nothing but itself.
 */

import type { SweepAsk } from '../../boat';
import type { Stage } from '../../cells';
import type { KindId } from '../../measure';

/** A stretch of text within a block. */
export type Inline =
  | Text
  | Strong
  | Emphasis
  | CodeSpan
  | Link
  | LiveValue
  | InlineWhen
  | BoxToTick
  | LineBreak
  | TextFault;

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
  /** Of a word of the trade that leads to what it means: what that is, in a sentence. No text brings it along. */
  readonly says?: string;
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
export interface InlineWhen {
  readonly type: 'when';
  readonly holds: Condition;
  readonly inside: readonly Inline[];
  readonly otherwise: readonly Inline[];
  readonly line: number;
}
/** A box to tick, at the head of an item of a list. */
export interface BoxToTick {
  readonly type: 'box';
  /** What is ticked off: the item's own words. */
  readonly label: string;
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
  | CellShown
  | FormulaShown
  | TryPlace
  | BoatPlace
  | WhenPlace
  | SketchPlace
  | SweepPlace
  | AskPlace
  | SeedPlace
  | TextFault;

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

/** Where a calculator cell is shown. */
export interface CellShown {
  readonly type: 'cell';
  /** The name of its place. */
  readonly instance: string;
  /** How often it is shown above already; left out where it is not. */
  readonly again?: number;
  readonly line: number;
}

/** Where a formula of the writer's own is shown. */
export interface FormulaShown {
  readonly type: 'formula';
  readonly name: string;
  /** How often it is shown above already; left out where it is not. */
  readonly again?: number;
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

/** Where a small drawing stands that shows what a word means. */
export interface SketchPlace {
  readonly type: 'sketch';
  /** Which one: `chine-log`. */
  readonly of: string;
  readonly line: number;
}

/** A question that is answered in writing before its answer is uncovered. */
export interface AskPlace {
  readonly type: 'ask';
  /** One word, once in a notebook: what was said to it is kept under this. */
  readonly name: string;
  readonly question: readonly Block[];
  readonly answer: AskAnswer;
  /** How far a guess may be off, as the writer typed it: `10 %` of the answer, or `5 mm`. */
  readonly within: string;
  readonly hints: readonly (readonly Block[])[];
  readonly steps: readonly AskStep[];
  /** How many steps are blank to begin with, and at which end more of them go blank. */
  readonly blank: number;
  readonly fades: 'end' | 'start';
  /** Said with the answer; empty where nothing is. */
  readonly see: readonly Block[];
  /** What the sentence of one's own is to say; empty where it is the usual. */
  readonly sentence: readonly Block[];
  readonly line: number;
}
export type Direction = 'rises' | 'falls' | 'stays';
export type AskAnswer =
  /** What a quantity comes to: its name. */
  | { readonly is: 'quantity'; readonly of: string }
  /** A number with its unit, of the first kind that it can be read as. */
  | { readonly is: 'literal'; readonly text: string; readonly kind: KindId }
  /** Whether a quantity rises, falls or stays when entries change, by their full names. */
  | { readonly is: 'moves'; readonly of: string; readonly changes: Readonly<Record<string, string>> }
  | { readonly is: 'direction'; readonly so: Direction }
  /** What the writer would say; empty where it is left to the reader. */
  | { readonly is: 'words'; readonly blocks: readonly Block[] };
/** Of a worked example: what is done, and the name or the number of what it comes to. */
export interface AskStep {
  readonly words: readonly Inline[];
  readonly answer: Extract<AskAnswer, { is: 'quantity' | 'literal' }>;
}

/** Where a learner gets numbers of his or her own: what may change, and what must hold of the numbers drawn. */
export interface SeedPlace {
  readonly type: 'seed';
  readonly may: readonly SeedChange[];
  readonly keep: Condition;
  readonly line: number;
}
/** Entries as the writer typed them: from one number to another by steps, or one of several. */
export type SeedChange =
  | { readonly of: string; readonly first: string; readonly last: string; readonly by: string }
  | { readonly of: string; readonly among: readonly string[] };

/** Where a number is drawn against another that it hangs on. */
export interface SweepPlace {
  readonly type: 'sweep';
  readonly ask: SweepAsk;
  readonly line: number;
}

/** What could not be read, kept as it was typed. */
export interface TextFault {
  readonly type: 'fault';
  readonly line: number;
  /** What is wrong and what would be right, in a sentence. */
  readonly says: string;
  readonly text: string;
}

/** The text at the head of a notebook. */
export interface FrontMatter {
  readonly title: string;
  /** What it is about, in a sentence; empty where that is not said. */
  readonly summary: string;
  /** The stage of the build it belongs to, as the contents list names it; null where it belongs to none. */
  readonly stage: Stage | null;
  /** Place among the notebooks, smallest first. */
  readonly order: number;
  /** The starter that it tells of, `none` where it knows no boat; null where it follows the builder's own. */
  readonly boat: string | null;
  /** Shown as a list of questions, one of which opens alone; left out where it is read from top to bottom. */
  readonly form?: 'questions';
}

/** A calculator cell that a notebook sets up. */
export interface CellPlace {
  /** Id of the cell: `scarf`. Whether there is such a cell is for the page to say. */
  readonly cell: string;
  /** First word of its quantities' names: the cell's id, or the name given after `as`. */
  readonly instance: string;
  /** Entries that hold in this instance until the builder writes others, by the input's key. */
  readonly presets: Readonly<Record<string, string>>;
  readonly line: number;
}

/** A formula that a notebook sets up. */
export interface FormulaPlace {
  /** First word of its results' names: `keelDay`. */
  readonly name: string;
  /** Its lines, until the builder writes others. */
  readonly text: string;
  readonly line: number;
}

/** A heading of the second level, for the list of contents. */
export interface HeadingPlace {
  readonly id: string;
  readonly text: string;
}

export interface NotebookPage extends FrontMatter {
  /** From the file's name: `the-build`. */
  readonly id: string;
  readonly blocks: readonly Block[];
  /** Each cell once however often it is shown, in the order of their first place. */
  readonly places: readonly CellPlace[];
  /** Likewise its formulas; left out where it has none. */
  readonly formulas?: readonly FormulaPlace[];
  readonly headings: readonly HeadingPlace[];
  /** All that could not be read, by line. */
  readonly faults: readonly TextFault[];
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
