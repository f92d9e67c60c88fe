/**
 * Tables of the trade: every number with the place it comes from.
 *
 * A table has rows (a wood, a plywood, a screw size) and columns (a property). A number that the
 * source does not give is absent and is never guessed: `look` answers null.
 */
import type { KindId } from '../measure';

/**
 * How a number is known: seen in the text of a published source (or in a transcription of it),
 * remembered from a published source that was not opened, custom of the trade without a source,
 * or reckoned here by the formula that the source line gives.
 */
export type Known = 'published' | 'from memory' | 'common practice' | 'calculated';

/** A number in SI units and where it comes from. */
export interface Cited {
  readonly value: number;
  readonly source: string;
  readonly known: Known;
}

export interface TradeColumn {
  readonly kind: KindId;
  /** Noun phrase that fits before "of" and the row's label: `bending modulus`. */
  readonly meaning: string;
}

export interface TradeRow<Column extends string> {
  /** CamelCase, so that it can stand in a quantity's name: `sitkaSpruce`. */
  readonly id: string;
  readonly label: string;
  readonly cells: Readonly<Partial<Record<Column, Cited>>>;
}

export interface TradeTable<Column extends string> {
  /** First part of the names of its quantities: `timber`. */
  readonly id: string;
  readonly columns: Readonly<Record<Column, TradeColumn>>;
  readonly rows: readonly TradeRow<Column>[];
}

/** The row with this id, or null. */
export function rowOf<Column extends string>(table: TradeTable<Column>, id: string): TradeRow<Column> | null {
  return table.rows.find((row) => row.id === id) ?? null;
}

/** One number of a table, or null where the table has no such row or the source no such number. */
export function look<Column extends string>(
  table: TradeTable<Column>,
  id: string,
  column: Column,
): Cited | null {
  return rowOf(table, id)?.cells[column] ?? null;
}

/** What stands in brackets after a number: the source and, unless it was read there, how it is known. */
export function citation(cited: Pick<Cited, 'source' | 'known'>): string {
  if (cited.known === 'published') return cited.source;
  if (cited.known === 'common practice') return cited.source || 'common practice, no source';
  return `${cited.known}: ${cited.source}`;
}
