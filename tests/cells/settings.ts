/** Entries as a builder types them, as the values that a cell's steps run on. */
import { type Cell, isChoice } from '../../src/cells';
import { isIssue, plainShown, read } from '../../src/measure';

/** @throws where an entry can't be read: entries are then not what the cell accepts */
export function entriesAsValues(
  cell: Cell,
  entries: Readonly<Record<string, string>>,
): Readonly<Record<string, number | string>> {
  return Object.fromEntries(
    Object.entries(entries).map(([key, text]): [string, number | string] => {
      const spec = cell.inputs[key]!; // entries are of the cell's inputs
      if (isChoice(spec)) return [key, text];
      const reading = read(text, { kind: spec.kind, shown: plainShown, field: key });
      const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
      if (isIssue(value)) throw new Error(value.issue);
      return [key, value];
    }),
  );
}
