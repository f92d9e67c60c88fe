/**
 * The form of a calculator cell: one declaration that says all there is to say about it.
 *
 * A cell asks a question, takes inputs, works in steps and gives answers. Inputs are entries
 * that a link to the hull or to another cell fills until the builder types over it. Steps are
 * formulas as text: what is shown is what runs. Everything here is data or a pure function of
 * the cell's own values, so a cell is tested without a page.
 */
import type { BoatLists, Derived, Found, Given, Hull, Layout, Option } from '../../boat';
import type { Drawing } from '../../drawing';
import type { Chart } from './chart';
import type { Offer } from './offer';
import type { ChoiceSpec, Inputs } from './input';
import type { Steps } from './step';
import type { TableSpec } from './table';
import type { Ask, Fact, ToldStep } from './fact';
import type { Issue, KindId, WriteOptions } from '../../measure';

export * from './input';
export * from './step';
export type * from './chart';
export type * from './offer';
export type * from './table';

/** The stage of the build a cell belongs to; also its folder and its place in the contents list. */
export type Stage = 'shape' | 'frames' | 'timber' | 'skin' | 'finish' | 'afloat' | 'handling' | 'buying';

/** What a formula cannot say: a kernel function called from a step, with the kinds it takes and gives. */
export interface CellFunction {
  readonly takes: readonly KindId[];
  readonly gives: KindId;
  /** How it is found, as the working tells it: `least sum of packs that covers the need`. */
  readonly how: string;
  readonly run: (...values: number[]) => number;
}

/** The cell's values as its drawing and its facts see them: all finite, choices as ids. */
export type ValuesOf<I extends Inputs, S extends Steps = {}> = {
  readonly [K in keyof I]: I[K] extends ChoiceSpec ? IdOf<I[K]['options']> : number;
} & { readonly [K in keyof S]: S[K] extends { readonly kind: 'choice' } ? string : number };

/** The ids of a choice's own options; of the boat's, any. */
type IdOf<O> = O extends readonly { readonly id: infer Id extends string }[] ? Id : string;

/** What a drawing or a chart may use besides the cell's values. */
export interface OnHand<V = Values> {
  /** Writes a value in the units the builder has chosen: `14 5/8 in strong`; a limit by `{ bound: 'most' }`. */
  readonly say: (value: number, kind: KindId, options?: WriteOptions) => string;
  /** The hull as it stands, or null where it cannot be drawn. */
  readonly hull: Hull | null;
  /** The best answer of the cell's search so far. */
  readonly found: Found;
  /** A fact of the cell's values. */
  readonly ask: Ask;
  /**
   * The cell's values with some inputs changed, to ids or numbers in SI: what a chart sweeps. All that hangs on these
   * inputs follows, in other cells too; a number is held to no limit of the input's.
   */
  readonly with: (changes: { readonly [K in keyof V]?: number | string }) => V | Issue;
}

/** A large figure at the head of the cell. */
export interface Answer<K extends string> {
  readonly of: K;
  /** What it is, in three or four words: `taper`. */
  readonly label: string;
  /** Datum, face and side, so that a tape can be laid: `along the board, from the feather edge`. */
  readonly from: string;
  /** Said only where this comparison over the cell's values is true: no motor hangs on a bow. */
  readonly when?: string;
  /** How far off is still good work, as an entry; common practice unless the cell says more. */
  readonly tolerance?: string;
}

/** Speaks up when its formula is true. */
export interface Warning {
  /** A comparison over the cell's values: `share > 0.5`. */
  readonly when: string;
  /** As of the result; `{share}` puts in a value as written in the chosen units. */
  readonly says: Words;
  /** Which limit, and whose. */
  readonly limit: string;
  /** 'stop': it will break or not fit. 'mind': look again. */
  readonly weight: 'stop' | 'mind';
}

/** A search for a better answer than the steps come to by themselves; it runs beside the page when the builder asks. */
export interface SearchSpec<V> {
  /** Which searcher of `src/search` takes it. */
  readonly by: string;
  /** What is sought, for the key: `the cheapest way to cut`. */
  readonly seeks: string;
  /** All that bears on the answer, as text: the same problem finds the same answer again. */
  readonly problem: (values: V, on: OnHand<V>) => string;
}

/** A text, or several said one after another: sentences, or clauses of one. */
export type Words = string | WordsWhen | readonly Words[];

/** Words with a condition of their own. */
export interface WordsWhen {
  /** A comparison over the cell's values: `bevel > 0°`. */
  readonly when: string;
  /** Said where it is true. */
  readonly says: Words;
  /** Said in their place where it isn't; with a condition again, the next of several cases. */
  readonly otherwise?: Words;
}

export interface PatternsSpec<V> {
  /** What they are called where they are saved: `The frame at full size`. */
  readonly are: string;
  readonly draw: (values: V, on: OnHand<V>) => readonly Drawing[];
}

/** A page of a shop card that speaks of one thing alone, so that it can be laid beside the work: a sheet to cut. */
export interface Leaf {
  /** `sheet 3 of 9` */
  readonly title: string;
  readonly drawing: Drawing;
  /** Rows of the cell's table, by id, that belong to it. */
  readonly rows: readonly string[];
}

export interface Source {
  readonly text: string;
  readonly known: 'published' | 'common practice' | 'from memory' | 'geometry';
}

export interface CellSpec<I extends Inputs, S extends Steps> {
  readonly id: string;
  readonly stage: Stage;
  readonly title: string;
  /** Asked as a builder would. */
  readonly question: string;
  readonly inputs: I;
  /**
   * Fields that stand together under a name of the trade, and open with it: `'The wood': ['species', 'modulus']`. A
   * field in no group is one of the deciding ones, in view: five at most, in the order of the inputs.
   */
  readonly groups?: Readonly<Record<string, readonly Extract<keyof I, string>[]>>;
  /** Where the groups are more than a screen holds: the name under which all of them stand, and open. */
  readonly folded?: string;
  /** Fields that come first among those in view, in this order, where there is no boat to say the rest. */
  readonly alone?: readonly Extract<keyof I, string>[];
  readonly steps: S;
  readonly functions?: Readonly<Record<string, CellFunction>>;
  /** One to three. */
  readonly answers: readonly Answer<Extract<keyof I | keyof S, string>>[];
  /**
   * The result in words: `Taper the last {taper} of each board.` What turns on a value is a clause or a sentence of
   * its own, and the rest is written once: `['Saw', { when: 'pieces == 1', says: 'one member', otherwise: 'two
   * members' }, '{cutLength} long.']`; short ones are put into their sentence by `words`. A space comes between them but before a stop, a capital where a sentence
   * begins. `{boards?board:boards}` puts in the first word where there is one of them; `a` before a number becomes
   * `an` where it is so spoken.
   */
  readonly inWords: Words;
  /** Its columns are steps: an input has one value, and would say it again in every row. */
  readonly table?: TableSpec<Extract<keyof I, string>, Extract<keyof S, string>> & InRows;
  readonly warnings: readonly Warning[];
  /**
   * What can hurt, and whose sheet or rule outranks this cell. First what would hurt a person most: it stands in view,
   * the others a press away, and all of them go on paper.
   */
  readonly cautions: readonly string[];
  readonly sources: readonly Source[];
  /**
   * The parts of the boat that it speaks of: edges, panels, long parts, frames; `{along}` stands for a choice. They
   * light up. By the first a card is headed and, if it is a frame or a panel, marked as cut.
   */
  readonly about: readonly string[];
  /** The key of an angle by which the hull in the round lies over, to port. */
  readonly lies?: string;
  /** The picture takes the whole width of the column, above the inputs: a lines plan. */
  readonly wide?: boolean;
  /** The picture is a list of rows, and may take their height. */
  readonly tall?: boolean;
  readonly draw?: (values: ValuesOf<I, S>, on: OnHand<ValuesOf<I, S>>) => Drawing;
  readonly chart?: (values: ValuesOf<I, S>, on: OnHand<ValuesOf<I, S>>) => Chart;
  /** Changes worth looking at as a second version. */
  readonly offers?: (values: ValuesOf<I, S>, on: OnHand<ValuesOf<I, S>>) => readonly Offer[];
  /** Pages that its shop card has after the first, one thing on each; the rows of its table stand there. */
  readonly leaves?: (values: ValuesOf<I, S>, on: OnHand<ValuesOf<I, S>>) => readonly Leaf[];
  /** Drawings to be printed or saved at full size, each a piece to cut. */
  readonly patterns?: PatternsSpec<ValuesOf<I, S>>;
  readonly search?: SearchSpec<ValuesOf<I, S>>;
  /** Quantities of the boat that come with this cell, because what works them out is too much for the first page. */
  readonly brings?: (layout: Layout) => readonly (Derived | Given)[];
  /** A view of the page's own, for what neither a drawing nor a chart can do: a grid to type in, a hull to turn. */
  readonly view?: string;
}

/** A cell's values by key, when it isn't known which cell it is: choices as ids, numbers in SI. */
export type Values = Readonly<Record<string, number | string>>;

/** A cell as the rest of the notebook sees it, whatever its inputs. */
export interface Cell extends Omit<
  CellSpec<Inputs, Steps>,
  'draw' | 'chart' | 'offers' | 'leaves' | 'patterns' | 'search'
> {
  readonly draw?: (values: Values, on: OnHand) => Drawing;
  readonly chart?: (values: Values, on: OnHand) => Chart;
  readonly offers?: (values: Values, on: OnHand) => readonly Offer[];
  readonly leaves?: (values: Values, on: OnHand) => readonly Leaf[];
  readonly patterns?: PatternsSpec<Values>;
  readonly search?: SearchSpec<Values>;
}

/** One placing of a cell: which cell, under which name, with which presets of its own. */
export interface Instance {
  readonly cell: Cell;
  readonly name: string;
  /** Entries that replace the cell's own links and presets, by input; after a bar that of who works in inches. */
  readonly presets: Readonly<Record<string, string>>;
}

/** How the steps run in a row of the table; `tableOf` brings it, so that it comes with the first cell that has one. */
export interface InRows {
  readonly inRow: (instance: Instance, key: string, row: Option, lists: BoatLists | null) => Derived;
}

/**
 * Declares a cell. Keys of inputs and steps become typed values in `draw` and `chart`,
 * and quantities `<id>.<key>` in the notebook.
 */
export function defineCell<const I extends Inputs, const S extends Steps>(
  spec: CellSpec<I, S> & { readonly steps: FactsFit<I, S> },
): Cell {
  // Inside, draw and chart get exactly the values the declaration names; outside, only the graph calls them.
  return spec as unknown as Cell;
}

/** Facts told by a cell read no values but its own. */
type FactsFit<I extends Inputs, S extends Steps> = {
  readonly [K in keyof S]: S[K] extends ToldStep<infer V>
    ? ValuesOf<I, S> extends V
      ? unknown
      : { readonly fact: Fact<ValuesOf<I, S>, unknown> }
    : unknown;
};
