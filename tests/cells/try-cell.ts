/** Runs one cell as the notebook would, from typed entries and, if given, a boat. */
import { demoBoat, type Table, type Value } from '../../src/boat';
import {
  answerInWords,
  type Applies,
  type Cell,
  type Chart,
  onHand,
  plainInstance,
  type Say,
  warningsOf,
} from '../../src/cells';
import type { Drawing } from '../../src/drawing';
import { isIssue, plainShown, type Shown, write, writeInPicture } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/catalogue';
import { standing } from '../../src/notebook/standing';

export interface Tried {
  /** All values by key; numbers are SI. Keys of table rows are `<option>.<step>`. */
  readonly all: Readonly<Record<string, Value>>;
  /** The number under a key; throws where it is an issue, with its sentence. */
  number(key: string): number;
  readonly issues: Readonly<Record<string, string>>;
  readonly warnings: readonly Applies[];
  /** The answer in a sentence, or what it waits for. */
  readonly words: string;
  readonly drawing: Drawing | undefined;
  readonly chart: Chart | undefined;
}

/**
 * @param entries by the cell's own keys (`thickness`) or by full name (`keelson.thickness`)
 * @param table the boat; without one the cell stands on the ferry dory, and every input can be typed over
 */
export function tryCell(
  cell: Cell,
  entries: Readonly<Record<string, string>> = {},
  table: Table = demoBoat,
  shown: Shown = plainShown,
): Tried {
  const instance = plainInstance(cell);
  const written = Object.fromEntries(
    Object.entries(entries).map(([key, text]) => [key.includes('.') ? key : `${cell.id}.${key}`, text]),
  );
  const { graph } = standing(
    () => table,
    (of, ends) => catalogueOf(of, [instance], ends),
    { entries: () => written, shown },
  )().value;
  for (const name of Object.keys(written))
    if (!graph.has(name)) throw new Error(`no quantity ${name} to write`);
  const own = graph.names.filter((name) => name.startsWith(`${cell.id}.`));
  const all: Record<string, Value> = {};
  const issues: Record<string, string> = {};
  for (const name of own) {
    const key = name.slice(cell.id.length + 1);
    const value = graph.value(name);
    all[key] = value;
    if (isIssue(value)) issues[key] = value.issue;
  }
  const say: Say = (value, kind, options) => write(value, kind, shown, options);
  const hull = graph.hull();
  const words = graph.work((read) => answerInWords(instance, read, say));
  const ready = Object.keys(issues).length === 0;
  const values = all as Readonly<Record<string, never>>;
  const on = onHand(cell, values, isIssue(hull) ? null : hull, (value, kind, options) =>
    writeInPicture(value, kind, shown, options),
  );
  return {
    all,
    number: (key) => {
      const value = all[key];
      if (typeof value !== 'number')
        throw new Error(`${cell.id}.${key}: ${isIssue(value) ? value.issue : String(value)}`);
      return value;
    },
    issues,
    warnings: warningsOf(instance, graph.work, say),
    words: isIssue(words) ? words.issue : words,
    drawing: ready ? cell.draw?.(values, on) : undefined,
    chart: ready ? cell.chart?.(values, on) : undefined,
  };
}
