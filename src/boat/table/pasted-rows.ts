/** Which station each row of a pasted block is of: by its name, or by its place. */
import { nameOf } from '../../measure';
import type { Named } from './named';
import { type Counted, stationCalled } from './pasted-layout';
import { type Landing, type NewStation, short } from './pasted-landing';
import { MOST_STATIONS } from './table';

export type Rows =
  | { readonly at: readonly (Named | undefined)[] }
  | { readonly faults: readonly string[]; readonly grow?: readonly NewStation[] };

/** @param row the station at which they begin */
export function rowsFrom(
  row: number,
  body: readonly (readonly string[])[],
  { stations, newName }: Landing,
): Rows {
  const height = body.findLastIndex((cells) => cells.some((cell) => cell !== '')) + 1;
  const there = stations.length - row;
  if (height <= there) return { at: stations.slice(row) };
  const more = height - there;
  const faults = [
    `the block has ${height} rows, but ${row === 0 ? 'the table has' : `from ${stations[row]!.label} on there ${there === 1 ? 'is' : 'are'}`} ${there === 1 ? '1 station' : `${there} stations`}`,
  ];
  return growing(
    faults,
    stations,
    Array.from({ length: more }, (_, i) => ({ at: stations.length + i, name: newName(i) })),
  );
}

export function rowsByName(
  body: readonly (readonly string[])[],
  heads: number,
  { stations }: Landing,
  told: Counted,
): Rows {
  const at: (Named | undefined)[] = [];
  const faults: string[] = [];
  const missing: { name: string; after: number }[] = [];
  const seen = new Set<string>();
  let last = -1;
  body.forEach((row, r) => {
    const cell = row[0] ?? '';
    const isEmpty = row.every((one) => one === '');
    const index = stationCalled(stations, cell);
    at.push(stations[index]);
    if (isEmpty) return;
    const key = stations[index]?.name ?? nameOf(cell).toLowerCase();
    if (cell === '') faults.push(`${told.row(heads + r)}: the name of the station is missing`);
    else if (seen.has(key))
      faults.push(`${told.row(heads + r)}: the station "${short(cell)}" stands there twice`);
    else if (index < 0) {
      missing.push({ name: cell, after: last });
    } else last = index;
    seen.add(key);
  });
  if (faults.length > 0) return { faults };
  if (missing.length === 0) return { at };
  // Each goes in after the station that stands before it in the block.
  const grow = missing.map(({ name, after }, i) => ({
    at: after + 1 + missing.slice(0, i).filter((earlier) => earlier.after <= after).length,
    name,
  }));
  return growing(
    missing.map(({ name }) => `the table has no station "${short(name)}"`),
    stations,
    grow,
  );
}

function growing(faults: readonly string[], stations: readonly Named[], grow: readonly NewStation[]): Rows {
  return stations.length + grow.length > MOST_STATIONS
    ? { faults: [...faults, `a table takes at most ${MOST_STATIONS} stations`] }
    : { faults, grow };
}
