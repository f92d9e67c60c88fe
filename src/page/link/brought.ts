/** What a link brings, in words: a line for each kind of thing, with what lies under it. */
import { nothingBuilt, starters } from '../../boat';
import { wordsOf } from '../../measure';
import { type BoatLink, sumOf } from '../../notebook/link/link';
import { type Bench, optionsFor } from '../bench';
import { inShort } from '../in-short';
import { notebooks } from '../library';
import { capital } from '../words';
import { cellTitle } from '../log/stages';

export interface BroughtLine {
  readonly says: string;
  /** Each thing of it by itself; empty where the line says it all. */
  readonly each: readonly string[];
}

export function broughtLines({ boat, isBoatless }: BoatLink, bench: Bench): readonly BroughtLine[] {
  const { entries, second, asBuilt = nothingBuilt, notebooks: own = {} } = boat;
  const { measured, cut } = asBuilt;
  const differs = second && (count(second, 'number', 'numbers') ?? 'nothing yet');
  const lines: readonly [says: string | undefined, each: readonly string[]][] = [
    [isBoatless ? undefined : planOf(boat), []],
    [
      count(entries, 'number written over its preset', 'numbers written over their presets'),
      entriesOf(entries, bench),
    ],
    [differs && `A second version, which differs in ${differs}`, entriesOf(second ?? {}, bench)],
    [count(measured, 'number measured on her', 'numbers measured on her'), entriesOf(measured, bench)],
    [count(cut, 'part cut', 'parts cut'), Object.keys(cut).map((part) => capital(wordsOf(part)))],
    [count(own, 'notebook that comes along', 'notebooks that come along'), Object.keys(own)],
  ];
  return lines.flatMap(([says, each]) => (says === undefined ? [] : [{ says, each }]));
}

function planOf({ table }: BoatLink['boat']): string {
  const starter = starters.some((one) => sumOf(one.table) === sumOf(table));
  return starter
    ? `The plan: ${table.name}, which comes along with Battenbook`
    : `The plan: ${table.name}, a table of offsets with ${table.stations.length} stations and ${table.edges.length} edges`;
}

/** `31 numbers`; undefined where there is none. */
function count(all: object, one: string, many: string): string | undefined {
  const { length } = Object.keys(all);
  return length === 0 ? undefined : `${length} ${length === 1 ? one : many}`;
}

const entriesOf = (entries: Readonly<Record<string, string | null>>, bench: Bench): string[] =>
  Object.entries(entries).map(([name, text]) => {
    const option = optionsFor(bench.book.inHand.peek(), name).find(({ id }) => id === text);
    return `${capital(inShort(bench, name))}: ${option?.label ?? text ?? 'back to the preset'}`;
  });

/** Where it opens, as a sentence; null where that is where the page opens anyway. */
export function opensAt({ notebook, place, boat }: BoatLink, bench: Bench): string | null {
  if (notebook === null) return null;
  const title =
    notebooks.value.find(({ id }) => id === notebook)?.title ??
    (Object.hasOwn(boat.notebooks ?? {}, notebook) ? notebook : null);
  if (title === null) return `It opens a notebook, “${notebook}”, that is not here and does not come along.`;
  const [word = ''] = (place ?? '').replace(/^(?:cell|question)-/, '').split('.');
  const at = bench.instances.value.has(word) ? `, at ${cellTitle(word, bench)}` : '';
  return `It opens ${title}${at}.`;
}
