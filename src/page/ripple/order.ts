/** What is told first of all that moved: answers of the notebook in hand, the hull's main numbers, then the rest. */
import type { Moved } from '../../notebook';
import { type Bench, sayValue } from '../bench';
import { notebookWith, openHead } from '../library';
import type { ToldRipple } from './snapshot';

/** Of a hull, an edge and a panel: the numbers a builder knows a boat by. */
const MAIN: Readonly<Record<string, readonly string[]>> = {
  hull: ['length', 'beam', 'depth', 'volume', 'skinArea', 'structureMass'],
  line: ['length', 'leastRadius', 'area'],
};

/** Counted in the sentence over the table and listed under it, box by box. */
const TOLD_AT_THE_TABLE: ReadonlySet<string> = new Set(['offsets.missing', 'offsets.faults']);

/** The ripple in the order it is told, without moves too small to be read. */
export function inOrder(ripple: ToldRipple, bench: Bench): ToldRipple {
  const shown = bench.shown.peek();
  const text = ({ quantity }: Moved, value: Moved['before']) => sayValue(value, quantity.kind, shown);
  const seen = ripple.moved.filter(
    (moved) =>
      text(moved, moved.before) !== text(moved, moved.after) && !TOLD_AT_THE_TABLE.has(moved.quantity.name),
  );
  const ranked = seen.map((moved) => ({ moved, rank: rankOf(moved.quantity.name, bench) }));
  // A stable sort: within a rank the largest move stays first.
  return { ...ripple, moved: ranked.toSorted((a, b) => a.rank - b.rank).map(({ moved }) => moved) };
}

function rankOf(name: string, bench: Bench): number {
  const [part = '', key = ''] = name.split('.');
  const instance = bench.instances.peek().get(part);
  if (!instance) return (MAIN[part === 'hull' ? 'hull' : 'line'] ?? []).includes(key) ? 1 : 3;
  const isAnswer = instance.cell.answers.some((answer) => answer.of === key);
  if (!isAnswer) return 4;
  return notebookWith(part) === openHead() ? 0 : 2;
}
