/** Which sheet lies on the bench: the builder's boat, the boat a notebook tells of, or none at all. */
import type { Table } from '../../boat';
import { type BookState, freshState, type Kept, noBoat, type NotebookHead } from '../../notebook';

export interface BenchSheet {
  /** `lesson` is a boat that a notebook brings along; `loose` is a notebook's sheet without a boat. */
  readonly kind: 'boat' | 'lesson' | 'loose';
  /** Where it is kept. */
  readonly key: string;
  /** The notebook it belongs to; null for a boat of the builder's own. */
  readonly notebook: string | null;
  /** The starter that the notebook brings along; null for any other sheet. */
  readonly boat: string | null;
}

/**
 * @param own key of the builder's boat in hand
 * @param chosen the boat to read a notebook with, by the notebook's id: a starter, or with null the builder's own
 * @param isOwn whether the notebook is the builder's own, kept with the boat
 */
export function sheetFor(
  head: Pick<NotebookHead, 'id' | 'boat'> | undefined,
  own: string,
  chosen: ReadonlyMap<string, string | null>,
  isOwn = false,
): BenchSheet {
  // Two boats may have notebooks of one name that are not the same.
  const of = isOwn ? ` of ${own}` : '';
  if (head?.boat === 'none')
    return { kind: 'loose', key: `battenbook loose ${head.id}${of}`, notebook: head.id, boat: null };
  const boat = head && (chosen.has(head.id) ? chosen.get(head.id) : head.boat);
  if (!boat) return { kind: 'boat', key: own, notebook: null, boat: null };
  return { kind: 'lesson', key: `battenbook lesson ${head.id} ${boat}${of}`, notebook: head.id, boat };
}

/**
 * What lies on a sheet on which nothing is kept yet.
 * @param boat the one that the notebook brings along, else the one that the page opens on
 * @param before the builder's boat
 */
export function freshSheet(
  { kind }: BenchSheet,
  head: NotebookHead | undefined,
  boat: Table,
  before: () => BookState | null,
): Kept {
  const state = kind === 'loose' ? looseState(head, before()) : freshState(boat);
  return { state, earlier: [], later: [] };
}

/**
 * A sheet without a boat begins with what its cells were given of old, when their numbers were kept with the boat.
 */
function looseState(head: NotebookHead | undefined, boat: BookState | null): BookState {
  const own = new Set(Object.keys(head?.cells ?? {}));
  const isOwn = ([name]: readonly [string, unknown]) => own.has(name.split('.')[0]!); // split gives at least one
  const { entries = {}, second = null } = boat ?? {};
  const tried = Object.entries(second ?? {}).filter(isOwn);
  return {
    ...freshState(noBoat, Object.fromEntries(Object.entries(entries).filter(isOwn))),
    ...(tried.length > 0 && { second: Object.fromEntries(tried) }),
  };
}
