/**
 * What a boat has to choose from, by its table: edges, panels, frames, stations.
 */
import { wordsOf } from '../../measure';
import { panelNames } from '../table/names';
import type { Named } from '../table/named';
import { offsetsOf } from '../table/offsets';
import type { Option } from './quantity';
import { type Ends, plannedEnds } from '../hull/ends';
import type { Role } from '../hull/station';
import type { Table } from '../table/table';

export interface BoatLists {
  readonly edges: readonly Option[];
  /** Edges that a long timber follows: keelson, chine logs, sheer clamps. */
  readonly longEdges: readonly Option[];
  readonly chines: readonly Option[];
  readonly panels: readonly Option[];
  readonly frames: readonly Option[];
  readonly stations: readonly Option[];
}

/** The names in a table and what stands at each station. */
export interface Layout {
  readonly edges: readonly Named[];
  readonly chines: readonly Named[];
  readonly panels: readonly Named[];
  readonly stations: readonly (Named & { readonly role: Role })[];
}

/**
 * Names that can't be told apart are listed once, so that every quantity has its own.
 * @param ends what she ends in by her numbers as they stand; by the plan's, where none are given
 */
export function layoutOf(table: Table, ends: Ends = plannedEnds(table)): Layout {
  const { edges, stations: all } = offsetsOf(table);
  const roleAt = (i: number): Role => (i === 0 ? ends.aft : i === all.length - 1 ? ends.fore : 'frame');
  const stations = all.map((station, i) => ({ ...station, role: roleAt(i) }));
  return {
    edges: unrepeated(edges),
    chines: unrepeated(edges.slice(1, -1)),
    panels: panelNames(edges.length).map((name) => ({ name, label: wordsOf(name) })),
    stations: unrepeated(stations),
  };
}

export function lists(table: Table): BoatLists {
  const { edges, chines, panels, stations } = layoutOf(table);
  return {
    edges: options(edges),
    longEdges: options(edges),
    chines: options(chines),
    panels: options(panels),
    frames: options(stations.filter(({ role }) => role === 'frame')),
    stations: options(stations),
  };
}

function options(named: readonly Named[]): readonly Option[] {
  return named.map(({ name, label }) => ({ id: name, label }));
}

function unrepeated<T extends Named>(named: readonly T[]): readonly T[] {
  return named.filter(({ name }, i) => named.findIndex((other) => other.name === name) === i);
}
