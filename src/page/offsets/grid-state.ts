/**
 * What the grid of offsets keeps in mind besides the boat itself: the notation, the columns shown, the box in
 * hand, which stations are opened edge by edge, and what was typed or pasted and could not be taken.
 *
 * Everything that boxes look at is a signal of its own, so that a key press wakes the boxes it changes.
 */
import { computed, type ReadonlySignal, signal, type Signal } from '@preact/signals';
import { type Column, columns, type Fault, offsetName, offsetsOf, type Table } from '../../boat';
import { carriedName, type WordChanges } from '../../boat/table/carry';
import { type Notation, usualNotation } from '../../boat/table/offset-notation';
import type { GridColumn, NewStation } from '../../boat/table/pasted-landing';
import type { PastedWay } from '../../boat/table/pasted-ways';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';
import { keptNotation } from './kept-notation';

/** Which columns stand in the grid: all of them, one kind of number, or one edge's by its name. */
export type ColumnsShown = 'all' | Column | `edge ${string}`;

/** A text that stays in its box unread, because the notebook would read it otherwise than the notation in hand. */
export interface RefusedText {
  readonly text: string;
  readonly says: string;
}

/** A paste that could not be taken, with the stations it would take to. */
export interface PasteLeft {
  readonly faults: readonly string[];
  readonly grow?: readonly NewStation[];
  readonly again: () => void;
}

/** A pasted block without headings, until the builder has said what it is. */
export interface PasteAsked {
  readonly text: string;
  readonly row: number;
  readonly column: number;
  readonly ways: readonly PastedWay[];
}

export interface GridState {
  readonly notation: ReadonlySignal<Notation>;
  readonly shown: Signal<ColumnsShown>;
  readonly columns: ReadonlySignal<readonly GridColumn[]>;
  /** Name of the offset whose box has the focus, or had it last. */
  readonly here: Signal<string | null>;
  /** The one box at which Tab stops: the one in hand if it is shown, else the first. */
  readonly stop: ReadonlySignal<string | null>;
  readonly opened: Signal<ReadonlySet<string>>;
  readonly refused: Signal<ReadonlyMap<string, RefusedText>>;
  readonly paste: Signal<PasteLeft | null>;
  readonly asked: Signal<PasteAsked | null>;
  /** What was done, for the ear and the eye. */
  readonly told: Signal<string>;
  /** Whether all edges of a station stand equally far forward, so that one box serves them; tracked. */
  readonly isPlane: (station: string) => boolean;
  /** What is wrong with one box, as a sentence; empty where nothing is, null where its number is missing. Tracked. */
  readonly faultOf: (name: string) => string | null;
}

export const columnWords: Readonly<Record<Column, string>> = {
  x: 'forward',
  halfBreadth: 'half-breadth',
  height: 'height',
};

/** Narrower than this, px, one edge at a time is shown to begin with. */
const NARROW = 600;

export function createGridState({ book, table }: Bench): GridState {
  const offsets = computed(() => offsetsOf(table.value));
  const shown = signal<ColumnsShown>(firstShown(table.peek()));
  const opened = signal<ReadonlySet<string>>(new Set());
  const refused = signal<ReadonlyMap<string, RefusedText>>(new Map());
  const graph = book.inHand;

  const hasKeelBreadth = computed(() => {
    const { edges, stations } = offsets.value;
    const [keel] = edges;
    return (
      keel !== undefined &&
      stations.some(({ name }) => graph.value.designed(offsetName(name, keel.name, 'halfBreadth')) !== 0)
    );
  });
  const all = computed((): readonly GridColumn[] =>
    offsets.value.edges.flatMap((edge, e) =>
      columns
        // The keel lies on the centreline and has no breadth to give.
        .filter((column) => e > 0 || column !== 'halfBreadth' || hasKeelBreadth.value)
        .map((column) => ({ edge, column })),
    ),
  );
  const faults = computed(() => faultsByBox(graph.value));

  const planes = new Map<string, ReadonlySignal<boolean>>();
  const makePlane = (station: string) =>
    computed(() => {
      const { edges, stations } = offsets.value;
      const isEnd = [stations[0]?.name, stations.at(-1)?.name].includes(station);
      const places = edges.map(({ name }) => placeOf(graph.value, offsetName(station, name, 'x')));
      return !isEnd && !opened.value.has(station) && places.every((place) => place === places[0]);
    });

  const here = signal<string | null>(null);
  const shownColumns = computed(() => {
    const kept = all.value.filter((column) => isShown(shown.value, column));
    return kept.length > 0 ? kept : all.value;
  });
  const isPlane = (station: string) => {
    const plane = planes.get(station) ?? makePlane(station);
    planes.set(station, plane);
    return plane.value;
  };
  const stop = computed(() => {
    const lead = shownColumns.value.find(({ column }) => column === 'x');
    const boxes = offsets.value.stations.flatMap(({ name }) =>
      shownColumns.value
        .filter((one) => one.column !== 'x' || one === lead || !isPlane(name))
        .map(({ edge, column }) => offsetName(name, edge.name, column)),
    );
    return here.value !== null && boxes.includes(here.value) ? here.value : (boxes[0] ?? null);
  });

  return {
    notation: computed(() => keptNotation(table.value.name) ?? usualNotation(table.value)),
    shown,
    columns: shownColumns,
    here,
    stop,
    opened,
    refused,
    paste: signal(null),
    asked: signal(null),
    told: signal(''),
    isPlane,
    faultOf: (name) => {
      const left = refused.value.get(name);
      if (left) return left.says;
      const value = graph.value.designed(name);
      if (isIssue(value)) return graph.value.entry(name)?.written ? value.issue : null;
      return faults.value.get(name)?.says ?? '';
    },
  };
}

/** Keeps to the same boxes after stations or edges have taken other names. */
export function follow({ here, opened, refused, shown }: GridState, words: WordChanges): void {
  const now = (name: string) => carriedName(name, words);
  here.value = here.peek() === null ? null : now(here.peek()!);
  const stations = [...opened.peek()].map((station) => now(`${station}.all`)?.split('.')[0]);
  opened.value = new Set(stations.filter((station) => station !== undefined));
  const kept = [...refused.peek()].flatMap(([name, left]): [string, RefusedText][] => {
    const carried = now(name);
    return carried === null ? [] : [[carried, left]];
  });
  if (refused.peek().size > 0) refused.value = new Map(kept);
  const [, edge] = /^edge (.+)$/.exec(shown.peek()) ?? [];
  if (edge !== undefined && Object.hasOwn(words, edge))
    shown.value = words[edge] === null ? 'all' : `edge ${words[edge]}`;
}

export function isShown(shown: ColumnsShown, { edge, column }: GridColumn): boolean {
  return shown === 'all' || shown === column || shown === `edge ${edge.name}`;
}

/** The column whose boxes hold how far forward all edges of a frame stand; −1 where none is shown. Tracked. */
export const leadOf = ({ columns: shown }: GridState): number =>
  shown.value.findIndex(({ column }) => column === 'x');

function firstShown(table: Table): ColumnsShown {
  const { edges } = offsetsOf(table);
  const [first] = edges;
  if (innerWidth < NARROW && first) return `edge ${first.name}`;
  return edges.length > 3 ? 'halfBreadth' : 'all';
}

/** The number, or the text that is none, so that what can't be read is compared by what it says. */
function placeOf(graph: Graph, name: string): number | string {
  const value = graph.designed(name);
  return typeof value === 'number' ? value : (graph.entry(name)?.text ?? '');
}

/** The first fault of each box. */
function faultsByBox(graph: Graph): ReadonlyMap<string, Fault> {
  const found = new Map<string, Fault>();
  for (const fault of faultsIn(graph)) {
    const name = boxOf(fault);
    if (name !== null && !found.has(name)) found.set(name, fault);
  }
  return found;
}

export function faultsIn(graph: Graph): readonly Fault[] {
  const hull = graph.hull();
  return isIssue(hull) ? [] : hull.faults;
}

export function boxOf({ station, edge, column }: Fault): string | null {
  return station === null || edge === null || column === null ? null : offsetName(station, edge, column);
}
