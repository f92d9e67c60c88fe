/**
 * What a block without headings may be. Its numbers don't say, so the ways in which it fits the table are offered,
 * the likeliest first, and the builder chooses.
 */
import type { Column } from './offsets';
import type { GridColumn, Landing } from './pasted-landing';

export interface PastedWay {
  /** `Half-breadths of chine and sheer, a row for each station`. */
  readonly says: string;
  /** Whether the block has its stations from left to right. */
  readonly across: boolean;
  /** The station at which it begins. */
  readonly row: number;
  readonly columns: readonly GridColumn[];
}

const words: Readonly<Record<Column, readonly [one: string, all: string]>> = {
  x: ['forward', 'distances forward'],
  halfBreadth: ['half-breadth', 'half-breadths'],
  height: ['height', 'heights'],
};

/**
 * @param height rows of numbers in the block
 * @param width columns of numbers
 * @param named whether each row says its station
 */
export function waysOf(
  height: number,
  width: number,
  named: boolean,
  landing: Landing,
): readonly PastedWay[] {
  const { stations, columns, row, column } = landing;
  const rows = (n: number) => (n === stations.length ? 0 : row);
  const isRoom = (n: number, at: number) => named || n <= stations.length - at;
  const inHand = columns.slice(column, column + width);
  const fromBox: readonly PastedWay[] =
    inHand.length === width
      ? [{ says: fromTheBox(inHand, landing, named), across: false, row, columns: inHand }]
      : [];
  const down = ofOneKind(width, landing).map((wide): PastedWay => ({
    says: `${sayKind(wide)}, a row for each station`,
    across: false,
    row: rows(height),
    columns: wide,
  }));
  const one = columns.slice(column, column + 1);
  const sets = named ? [] : [...ofOneKind(height, landing), ...(height === 1 ? [one] : [])];
  const across = sets.map((deep): PastedWay => ({
    says: `${sayKind(deep)}, a column for each station`,
    across: true,
    row: rows(width),
    columns: deep,
  }));
  // The first box is in hand before one is chosen; a block as tall as the table is then likelier of one kind.
  const isChosen = row > 0 || column > 0 || height !== stations.length;
  const beginning = isChosen ? [...fromBox, ...down] : [...down, ...fromBox];
  const all = [...beginning, ...across.filter((way) => isRoom(width, way.row))];
  // What asks for more stations than there are is the last to be thought of.
  const fits = (way: PastedWay) => isRoom(way.across ? width : height, way.row);
  return unrepeated([...all.filter(fits), ...all.filter((way) => !fits(way))]);
}

/** One kind of number of all edges, or of all but the keel, where there are as many columns. */
function ofOneKind(count: number, { edges }: Landing): readonly (readonly GridColumn[])[] {
  return [edges, edges.slice(1)].flatMap((some) =>
    some.length === count && count > 1
      ? (['halfBreadth', 'height', 'x'] as const).map((column) => some.map((edge) => ({ edge, column })))
      : [],
  );
}

function sayKind(columns: readonly GridColumn[]): string {
  const [first] = columns;
  if (!first) return '';
  if (columns.length === 1) return `${capital(words[first.column][1])} of the ${first.edge.label}`;
  const labels = columns.map(({ edge }) => edge.label);
  return `${capital(words[first.column][1])} of ${labels.slice(0, -1).join(', ')} and ${labels.at(-1)}`;
}

function fromTheBox(columns: readonly GridColumn[], { stations, row }: Landing, named: boolean): string {
  const each = columns.map(({ edge, column }) => `${edge.label} ${words[column][0]}`);
  const begins = named ? '' : `, from ${stations[row]?.label ?? ''} on`;
  return `${capital(each.length > 4 ? `${each.slice(0, 2).join(', ')} … ${each.at(-1)}` : each.join(', '))}${begins}`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Ways that put every number in the same place are one. */
function unrepeated(ways: readonly PastedWay[]): readonly PastedWay[] {
  const key = ({ across, row, columns }: PastedWay) =>
    [across, row, ...columns.map(({ edge, column }) => `${edge.name} ${column}`)].join();
  return ways.filter((way, i) => ways.findIndex((other) => key(other) === key(way)) === i);
}
