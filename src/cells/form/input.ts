/** What a cell asks for: numbers and choices. */
import type { Declared, Given, Option } from '../../boat';
import type { Bound, KindId } from '../../measure';
import type { BoatList } from './boat-list';

/** A number the cell asks for. All texts are entries: `18 mm`, `keelson.thickness`. */
export interface InputSpec {
  readonly kind: KindId;
  readonly label: string;
  /**
   * The quantity that fills it by default. `{along}` stands for the cell's own choice `along`,
   * `{self}` for the cell itself: `{self}.usualLength` is a step that proposes the value; `{keel}`, `{sheer}` and
   * `{bottom}` for the boat's lowest and highest edge and her lowest panel, whatever they are called.
   */
  readonly from?: string;
  /** What its owners declare, where it is a number of the boat's or the shop's; set by `fromBoat`. */
  readonly owners?: readonly Declared[];
  /** What to measure where, for this work; its owner's note says the rest. */
  readonly hint?: string;
  /** Other links, by an answer of one of the cell's choices; an empty one leaves the preset. */
  readonly fromBy?: { readonly choice: string; readonly links: Readonly<Record<string, string>> };
  /** What holds when there is no link, or the linked quantity does not exist. */
  readonly preset: string;
  /** The preset of who works in feet and inches, where custom or the shop has a size of its own there: `16 ft`. */
  readonly presetInch?: string;
  readonly min?: string;
  readonly max?: string;
  /** Of a limit: `at most` is never written larger than it is, `at least` never smaller. */
  readonly bound?: Bound;
  /** One useful step for the + and - keys. */
  readonly step?: string;
  /** Where the preset comes from, or what to measure: a short sentence. */
  readonly note?: string;
  /** What of a wood it is, by which boards differ: how far it may be out goes by that. */
  readonly doubted?: Given['doubted'];
  /** Offer a slider from min to max. */
  readonly slider?: boolean;
  /** What is asked in its place under another answer of a choice, and how to get there: a price of one board. */
  readonly otherwise?: Given['otherwise'];
  /**
   * Asked, shown and printed only where this comparison over the cell's inputs and steps is true, because nothing
   * comes of it elsewhere: `curve == "chord"`; or where the boat has a quantity of this name: `bilge.thickness`. What
   * is written in it stays. A choice of one answer is not asked anyhow.
   */
  readonly when?: string;
  /** Speaks of the boat alone: on a sheet without one it keeps its preset, and is not asked. */
  readonly ofBoat?: boolean;
}

/** A choice between named things. */
export interface ChoiceSpec {
  readonly kind: 'choice';
  readonly label: string;
  readonly options: readonly Option[] | BoatList;
  /** Words for an answer before those of a boat's list, with the id `none`. */
  readonly none?: string;
  /** Words for the one answer, with the id `none`, where the boat has nothing of that list. */
  readonly without?: string;
  /** Another choice that fills it by default: `keelson.timber`. */
  readonly from?: string;
  /** As of a number that is asked for. */
  readonly fromBy?: InputSpec['fromBy'];
  readonly owners?: readonly Declared[];
  readonly hint?: string;
  readonly preset: string;
  /** The preset of who works in feet and inches. */
  readonly presetInch?: string;
  readonly note?: string;
  /** As of a number that is asked for. */
  readonly when?: string;
}

export type Inputs = Readonly<Record<string, InputSpec | ChoiceSpec>>;

/** A number to ask for. */
export function input<K extends KindId>(
  kind: K,
  label: string,
  more: Omit<InputSpec, 'kind' | 'label'>,
): InputSpec & { readonly kind: K } {
  return { kind, label, ...more };
}

/** A choice to ask for. */
export function choice<const O extends ChoiceSpec['options']>(
  label: string,
  more: Omit<ChoiceSpec, 'kind' | 'label' | 'options'> & { readonly options: O },
): ChoiceSpec & { readonly options: O } {
  return { kind: 'choice', label, ...more };
}
