/** Whether a field of a cell moves anything: what has no effect in the case in hand is not to be asked. */
import type { BoatLists } from '../../src/boat';
import { attempt } from '../../src/boat';
import {
  answerInWords,
  answersOf,
  type Cell,
  type InputSpec,
  type Instance,
  isChoice,
  type OnHand,
  optionsOf,
  type Say,
  valuesOf,
  warningsOf,
} from '../../src/cells';
import { isIssue, plainShown, read, write, writeExact, writeInPicture } from '../../src/measure';
import type { Graph } from '../../src/notebook/graph/graph';
import { onHandAlone } from './alone';

const say: Say = (value, kind, options) => write(value, kind, plainShown, options);
const sayInPicture: OnHand['say'] = (value, kind, options) =>
  writeInPicture(value, kind, plainShown, options);

type Tell = (instance: Instance, graph: Graph) => unknown;

const answers: Tell = (instance, graph) =>
  answersOf(instance, (by) => graph.workOut(by)).map(({ of }) => [of, graph.value(`${instance.name}.${of}`)]);
const words: Tell = (instance, graph) => [
  graph.workOut((by) => answerInWords(instance, by, say)),
  warningsOf(instance, (by) => graph.workOut(by), say).map(({ says }) => says),
];
/** In the row in hand. */
const row: Tell = ({ cell, name }, graph) =>
  (cell.table?.columns ?? []).map(({ of }) => graph.value(`${name}.${of}`));
const pictures: Tell = (instance, graph) => {
  const { cell } = instance;
  const values = graph.workOut((by) => valuesOf(instance, by));
  if (isIssue(values)) return values;
  const hull = graph.hull();
  const on = onHandAlone(cell, values, isIssue(hull) ? null : hull, sayInPicture);
  return attempt(() =>
    JSON.stringify([cell.draw?.(values, on), cell.chart?.(values, on), cell.offers?.(values, on)]),
  );
};
const working: Tell = ({ cell, name }, graph) =>
  Object.keys(cell.steps).map((key) => graph.value(`${name}.${key}`));

/** What is read at once, the quickest to ask first. */
export const TOLD: readonly Tell[] = [answers, words, row];
/** The same, the pictures and the working. */
export const ALL: readonly Tell[] = [...TOLD, working, pictures];

/** Other entries for a field, near what stands in it and far, within its limits. */
export function entriesFor(
  spec: Cell['inputs'][string],
  now: number | string,
  lists: BoatLists | null,
): readonly string[] {
  if (isChoice(spec)) return optionsOf(spec, lists).flatMap(({ id }) => (id === now ? [] : [id]));
  const at = Number(now);
  const min = limit(spec, spec.min) ?? 0;
  const max = limit(spec, spec.max) ?? Math.max(10 * Math.abs(at), 10);
  const tried = [
    at * 1.25,
    at * 1.004,
    at * 0.6,
    at * 3,
    at * 0.2,
    min,
    max,
    min + (max - min) / 3,
    at + 1,
    at - 1,
  ]
    .map((value) => (spec.kind === 'count' ? Math.round(value) : value))
    .filter((value) => value >= min && value <= max && value !== at);
  return [...new Set(tried)].map((value) => writeExact(value, spec.kind, plainShown));
}

function limit(spec: InputSpec, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = read(text, { kind: spec.kind, shown: plainShown, field: spec.label });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  return isIssue(value) ? undefined : value;
}

/** What is told as the cell stands, each part worked out once. */
export function toldBy(instance: Instance, graph: Graph): (tell: Tell) => string | undefined {
  const known = new Map<Tell, string | undefined>();
  return (tell) => {
    if (!known.has(tell)) known.set(tell, JSON.stringify(tell(instance, graph)));
    return known.get(tell);
  };
}

/**
 * Whether one of these entries moves one of these tellings; where there are entries for several fields, the first of
 * each stand together, then the second.
 * @param entries by the keys of the fields
 * @param before what is told as it stands
 */
export function moves(
  instance: Instance,
  entries: Readonly<Record<string, readonly string[]>>,
  { graph, before }: { graph: Graph; before: ReturnType<typeof toldBy> },
  of: readonly Tell[],
): boolean {
  const rounds = Math.max(0, ...Object.values(entries).map((texts) => texts.length));
  const others = Array.from({ length: rounds }, (_, at) => {
    const texts = Object.entries(entries).flatMap(([key, all]) => {
      const text = all[at];
      return text === undefined ? [] : [[`${instance.name}.${key}`, text] as const];
    });
    const tried = graph.with(() => Object.fromEntries(texts));
    // What is not taken moves nothing.
    const taken = texts.filter(([name]) => !isIssue(tried.value(name)));
    if (taken.length === 0) return [];
    return taken.length === texts.length ? tried : graph.with(() => Object.fromEntries(taken));
  }).flat();
  // What is quick to ask is asked of every entry before a picture is drawn of one.
  return of.some((tell) => others.some((other) => JSON.stringify(tell(instance, other)) !== before(tell)));
}
