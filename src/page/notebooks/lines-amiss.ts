/** The lines of a notebook on which something can't be used: as it is written, or on the boat in hand. */
import { isIssue } from '../../measure';
import type { Condition, NotebookPage } from '../../notebook';
import { holds } from '../../notebook/text/holds';
import type { Bench } from '../bench';
import { isAllThere } from '../library';

/** In their order, each once. */
export function linesAmiss(page: NotebookPage, { book, remarks }: Bench): readonly number[] {
  const graph = book.first.value;
  const placed = page.places.filter((place) => remarks.value.has(place));
  // What is not there yet may still come.
  const named = isAllThere()
    ? saidIn(page.blocks).filter((one) => {
        if (one.type === 'value') return !graph.has(one.of);
        if (one.type === 'when') return isIssue(holds(one.holds, graph));
        return Object.keys(one.changes).some((name) => !graph.entry(name));
      })
    : [];
  const lines = [...page.faults, ...placed, ...named].map(({ line }) => line);
  return [...new Set(lines)].sort((a, b) => a - b);
}

type Said = { readonly line: number } & (
  | { readonly type: 'value'; readonly of: string }
  | { readonly type: 'when'; readonly holds: Condition }
  | { readonly type: 'try'; readonly changes: object }
);

/** All that leans on quantities by their names, however deep it stands. */
function saidIn(node: unknown): Said[] {
  if (typeof node !== 'object' || node === null) return [];
  const type: unknown = 'type' in node ? node.type : undefined;
  const own = type === 'value' || type === 'when' || type === 'try' ? [node as Said] : [];
  return [...own, ...Object.values(node).flatMap(saidIn)];
}
