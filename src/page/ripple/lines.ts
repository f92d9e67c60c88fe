/** The ripple line by line: what each is about, where it stands, and how much it moved against what matters. */
import { answersOf } from '../../cells';
import type { Moved, Ripple } from '../../notebook';
import { type Bench, sayValue } from '../bench';
import { notebookWith, openHead } from '../library';
import { cellsInView } from './in-view';
import { inOrder, type LineKind, type Nearness } from '../told/order';
import type { Limit, ToldLine, ToldRipple } from '../told/told';

/** Of a hull, an edge and a panel: the numbers a builder knows a boat by. */
const MAIN: Readonly<Record<string, readonly string[]>> = {
  hull: ['length', 'beam', 'depth', 'volume', 'skinArea', 'structureMass'],
  line: ['length', 'leastRadius', 'area'],
};

/** Counted in the sentence over the table and listed under it, box by box. */
const TOLD_AT_THE_TABLE: ReadonlySet<string> = new Set(['offsets.missing', 'offsets.faults']);

/** Puts the ripple into the order it is told in, without moves too small to be read. */
export function toldRipple(ripple: Ripple<Limit>, bench: Bench): ToldRipple {
  const inView = cellsInView();
  const isOpen = ({ cell }: Limit) => !bench.asked.peek()?.over(cell);
  const [nowWarned, nowClear] = [ripple.nowWarned.filter(isOpen), ripple.nowClear.filter(isOpen)];
  const numbers = ripple.moved.filter((moved) => canBeRead(moved, bench));
  const placeOf = (part: string) => placeIn(part, bench, inView);
  const limits = (list: readonly Limit[], kindOf: (limit: Limit) => LineKind) =>
    list.map((limit): ToldLine => ({ ...placeOf(limit.cell), kind: kindOf(limit), size: 0, limit }));
  const lines: ToldLine[] = [
    ...limits(nowWarned, ({ weight }) => weight),
    ...limits(nowClear, () => 'clear'),
    ...numbers.map((moved): ToldLine => {
      const [part = ''] = moved.quantity.name.split('.');
      return { ...placeOf(part), kind: kindOf(moved, bench), size: sizeOf(moved), moved };
    }),
  ];
  return { ...inOrder(lines), hull: ripple.hull, moved: numbers.length, passed: nowWarned.length };
}

function canBeRead({ quantity, before, after }: Moved, bench: Bench): boolean {
  const text = (value: Moved['before']) => sayValue(value, quantity.kind, bench.shown.peek());
  // What a question waits for is not given away by what moves.
  if (bench.asked.peek()?.hides(quantity.name)) return false;
  return text(before) !== text(after) && !TOLD_AT_THE_TABLE.has(quantity.name);
}

function placeIn(
  part: string,
  bench: Bench,
  inView: ReadonlySet<string>,
): { readonly place: Nearness; readonly notebook: string } {
  if (!bench.instances.peek().has(part)) return { place: 'boat', notebook: '' };
  const home = notebookWith(part);
  const place = part === bench.inHand.peek() ? 'in hand' : inView.has(part) ? 'in view' : 'open';
  return { place: home && home === openHead() ? place : 'elsewhere', notebook: home?.id ?? '' };
}

function kindOf({ quantity: { name } }: Moved, bench: Bench): LineKind {
  const [part = '', key = ''] = name.split('.');
  const instance = bench.instances.peek().get(part);
  if (!instance)
    return (MAIN[part === 'hull' ? 'hull' : 'line'] ?? []).includes(key) ? 'main number' : 'other';
  const graph = bench.book.inHand.peek();
  const at = answersOf(instance, (by) => graph.workOut(by)).findIndex((answer) => answer.of === key);
  return at < 0 ? 'other' : at === 0 ? 'first answer' : 'answer';
}

/**
 * In steps of what is still good work where the answer says how far off that is, else in parts of a hundred of the
 * number itself: a bevel that goes from 0.1 to 0.2 degrees has doubled, and yet it has hardly moved.
 */
function sizeOf({ quantity, before, after, size }: Moved): number {
  const within = quantity.manner?.within;
  return within !== undefined && typeof before === 'number' && typeof after === 'number'
    ? Math.abs(after - before) / within
    : 100 * size;
}
