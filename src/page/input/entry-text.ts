/** What stands in an entry's field, what goes from it to the graph, and the steps of its keys. */
import { INCH } from '../../measure/si';
import type { Given, Value } from '../../boat';
import { isIssue, type KindId, kindOf, read, shelfOf, type Shown, write, writeExact } from '../../measure';
import type { Graph } from '../../notebook';

/** What a field of the design stands for: the value in force, or beneath what is measured or cut the designed one. */
export function fieldValue(graph: Graph, name: string): Value {
  return graph.entry(name)?.built === undefined ? graph.value(name) : graph.designed(name);
}

/** What the field shows when nobody types: the entry as written, or the value that a link brings. */
export function restText(graph: Graph, quantity: Given, shown: Shown): string {
  const entry = graph.entry(quantity.name);
  if (entry?.written) return entry.text;
  const value = fieldValue(graph, quantity.name);
  if (typeof value === 'number')
    return write(value, quantity.kind, shown, graph.mannerOf(quantity.name)).text;
  // What it is linked to is said beside the field; its name is no number.
  return entry && entry.names.length === 0 ? entry.text : '';
}

/**
 * The entry that a typed text makes: a bare number takes the unit the field shows, an empty field
 * goes back to its link (null), and what can't be read is kept as it is.
 */
export function entryFrom(text: string, quantity: Given, graph: Graph, shown: Shown): string | null {
  if (text.trim() === '') return null;
  const reading = read(text, {
    kind: quantity.kind,
    shown,
    field: quantity.meaning,
    kindOf: (name) => graph.quantity(name)?.kind,
    known: () => graph.names,
  });
  return isIssue(reading) ? text : reading.text;
}

/** The money that a typed price is in; undefined where it names none: `$5` is in dollars. */
export function moneyIn(text: string, kind: KindId): Shown['money'] | undefined {
  const sign = kindOf(kind).dimension[5] === 0 ? undefined : /[$€£]/.exec(text)?.[0];
  return sign as Shown['money'] | undefined;
}

/** The marks that keys and slider go by, SI: `from` counts as zero, as 0 °C does. */
export interface Marks {
  readonly from: number;
  readonly step: number;
  readonly min: number;
  readonly max: number;
}

export function marksOf(quantity: Given, value: number | null, shown: Shown): Marks {
  const { kind, min, max } = quantity;
  return {
    from: entryValue('0', kind, shown) ?? 0,
    step: stepOf(quantity, value, shown),
    min: entryValue(min, kind, shown) ?? -Infinity,
    max: entryValue(max, kind, shown) ?? Infinity,
  };
}

/** The mark nearest to a value, within the limits. */
export const nearestMark = (value: number, marks: Marks): number =>
  clamp(tidy(marks.from + Math.round((value - marks.from) / marks.step) * marks.step), marks);

/** The mark `count` marks on from the value; a value between two marks goes to the next one first. */
export function markFrom(value: number, count: number, marks: Marks): number {
  const at = (value - marks.from) / marks.step;
  const onMark = Math.abs(at - Math.round(at)) < 1e-6;
  const start = onMark ? Math.round(at) : count > 0 ? Math.floor(at) : Math.ceil(at);
  return clamp(tidy(marks.from + (start + count) * marks.step), marks);
}

/**
 * Where the keys go from a value: to the next of the sizes sold, where the thing is sold in sizes, else `count` marks on.
 */
export function keyFrom(value: number, count: number, quantity: Given, shown: Shown): number {
  const marks = marksOf(quantity, value, shown);
  const sizes = shelfOf(quantity.kind)
    ?.sizes?.(shown)
    .filter((size) => size >= marks.min && size <= marks.max);
  if (!sizes) return markFrom(value, count, marks);
  const hair = 1e-6;
  const beyond =
    count > 0
      ? sizes.filter((size) => size > value + hair)
      : sizes.filter((size) => size < value - hair).toReversed();
  return beyond[Math.abs(count) - 1] ?? beyond.at(-1) ?? value;
}

/** First and last mark between the limits, for a slider; null where the quantity has no limits. */
export function sliderEnds({ from, step, min, max }: Marks): { min: number; max: number } | null {
  if (!Number.isFinite(min) || !Number.isFinite(max)) return null;
  return {
    min: tidy(from + Math.ceil((min - from) / step - 1e-6) * step),
    max: tidy(from + Math.floor((max - from) / step + 1e-6) * step),
  };
}

/** The text of an entry for a value that was not typed; a size that is sold is called as in the shop. */
export function entryOf(value: number, kind: KindId, shown: Shown): string {
  const shelf = shelfOf(kind);
  const isSold = shelf?.sizes?.(shown).some((size) => Math.abs(size - value) <= 1e-9 * size);
  const sold = isSold ? shelf?.called(value, shown)?.text : undefined;
  return sold ?? writeExact(tidy(value), kind, shown);
}

/** A mark of the tape for lengths in inches, else the declared step, else one of the number's second figure. */
function stepOf({ kind, step }: Given, value: number | null, shown: Shown): number {
  if (kind === 'length' && shown.length !== 'mm') {
    const far = Math.abs(value ?? 0);
    return far > 3 ? INCH : far > 0.6 ? INCH / 4 : INCH / shown.fraction;
  }
  const zero = entryValue('0', kind, shown) ?? 0;
  const declared = entryValue(step, kind, shown);
  // A step of 1 °C is read as a temperature; what counts is how far it lies from 0 °C.
  if (declared !== undefined) return Math.abs(declared - zero);
  return value === null || value === 0 ? 1 : 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
}

function entryValue(text: string | undefined, kind: KindId, shown: Shown): number | undefined {
  if (text === undefined) return undefined;
  const reading = read(text, { kind, shown, field: kind });
  const value = isIssue(reading) ? reading : reading.evaluate(() => 0);
  return isIssue(value) ? undefined : value;
}

/** Without the rounding of sums of steps, which would show as 19.000000000000004 mm. */
const tidy = (value: number): number => Number(value.toPrecision(12));

const clamp = (value: number, { min, max }: Marks): number => Math.min(max, Math.max(min, value));
