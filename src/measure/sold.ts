/**
 * What is bought in sizes: drills, screws, lengths of lumber, packs. Such a thing is not written as a tape reads it but as
 * the shop calls it, in the system that the builder buys by.
 *
 * The tables of sizes come with the cells that need them; until one is put up here its kind is written as a length.
 */
import type { KindId } from './kinds';
import type { Shown } from './shown';

export interface SoldSize {
  /** As it is asked for in the shop: `5/64 in`, `No. 43 drill`, `2.3 mm`. */
  readonly text: string;
  /** In words, for the ear. */
  readonly spoken: string;
  /** Its true size, SI. */
  readonly size: number;
}

export interface SizesSold {
  /** The size sold that answers to a value, SI; undefined where none does. */
  readonly called: (value: number, shown: Shown) => SoldSize | undefined;
  /** Sizes to pick from, SI, rising: where the builder says which is bought. */
  readonly sizes?: (shown: Shown) => readonly number[];
}

const shelves = new Map<KindId, SizesSold>();

/** Puts up the sizes in which things of a kind are sold. */
export function putUp(kind: KindId, shelf: SizesSold): void {
  shelves.set(kind, shelf);
}

/** The sizes of a kind; undefined for what is not sold in sizes, or where they are not put up. */
export function shelfOf(kind: KindId): SizesSold | undefined {
  return shelves.get(kind);
}

const numbered = new Map<KindId, (no: number) => number | undefined>();

/**
 * Says what `No. 8` or `#8` means in the fields of a kind.
 *
 * @param sizeOf the size in metres of the thing of that number; undefined where there is none
 */
export function callByNumber(kind: KindId, sizeOf: (no: number) => number | undefined): void {
  numbered.set(kind, sizeOf);
}

/** What a number stands for in the fields of a kind; undefined where such things have no numbers. */
export function numbersOf(kind: KindId): ((no: number) => number | undefined) | undefined {
  return numbered.get(kind);
}
