/**
 * A row of a cell's table as quantities: the same steps for one answer of a choice, or for one thing in a list. What
 * doesn't turn with the row is the cell's own, worked out once for all rows.
 */
import type { BoatLists, Derived, Option, Read } from '../../boat';
import type { InRows, Instance, ListRow, TableSpec } from './define';
import { derivedOf } from './derived';
import { type Fact, labelOf, readsOf, readsSeen } from './fact';
import { isChoice } from './instance';
import { canFollow, fillIn, SELF, wordFor } from './links';
import { asksFor, besideBy, findFact, runStep, type Scope, scopeOf, valueOf } from './steps';

/** A cell's table, with what works it out. */
export const tableOf = <const T extends TableSpec<string, string>>(table: T): T & InRows => ({
  ...table,
  inRow: rowQuantity,
});

function rowQuantity(
  instance: Instance,
  key: string,
  { id, label }: Option,
  lists: BoatLists | null,
): Derived {
  const { cell, name } = instance;
  const { over, rows } = cell.table!; // it has rows
  const given = (read: Read) => (rows ? listedValue(scopeOf(instance, read).ask(rows), id, label) : id);
  const row: Row = { instance, over, id, given, lists };
  const step = cell.steps[key]!; // asked only for steps of the cell
  return {
    ...derivedOf(cell, `${name}.${id}.${key}`, key, lists, (read) => scopeOfRow(row, read)),
    meaning: `${step.meaning}, ${label}`,
    from: (read) =>
      unlessOfRow(
        () => turnsWith(row, key),
        () => valueOf(instance, key, read),
        () => runStep(cell, step, scopeOfRow(row, read)),
      ),
  };
}

/** What the row gives for the input that the table runs over. */
function listedValue(rows: readonly ListRow[], id: string, label: string): number | string {
  const row = rows.find((one) => one.id === id);
  if (!row) throw new Error(`there is no ${label}`);
  return row.value;
}

interface Row {
  readonly instance: Instance;
  readonly id: string;
  /** The input that is run through, and what this row gives for it. */
  readonly over: string;
  readonly given: (read: Read) => number | string;
  readonly lists: BoatLists | null;
}

/** The values and facts of one row. */
function scopeOfRow(row: Row, read: Read): Scope {
  const { instance, id } = row;
  return {
    ...read,
    lookUp: (key) => rowValue(row, key, read),
    ask: (fact) =>
      unlessOfRow(
        () => turnsWith(row, fact),
        () => scopeOf(instance, read).ask(fact),
        () =>
          read.fact(`${instance.name}.${id}.${labelOf(fact)}`, (by) => findFact(fact, scopeOfRow(row, by))),
      ),
    beside: (other) => besideBy(other, read),
  };
}

/**
 * The cell's own where the row makes no difference, so that it is worked out once for all rows. That a fact turns with
 * the row may show only when it is worked out.
 */
function unlessOfRow<T>(isOfRow: () => boolean, own: () => T, ofRow: () => T): T {
  if (!isOfRow()) {
    try {
      const value = own();
      if (!isOfRow()) return value;
    } catch (fault) {
      if (!isOfRow()) throw fault;
    }
  }
  return ofRow();
}

/** Steps and facts of a cell that turn with the choice its table runs through, as far as is known. */
const turning = new WeakMap<
  Row['instance'],
  { readonly seen: number; readonly known: Map<unknown, boolean> }
>();

/** Whether a step, by its key, or a fact turns with the row. */
function turnsWith(row: Row, what: string | Fact<never, unknown>): boolean {
  const { instance } = row;
  let ofCell = turning.get(instance);
  if (ofCell?.seen !== readsSeen()) {
    ofCell = { seen: readsSeen(), known: new Map() };
    turning.set(instance, ofCell);
  }
  const before = ofCell.known.get(what);
  if (before !== undefined) return before;
  const turns = turnsAnew(row, what);
  ofCell.known.set(what, turns);
  return turns;
}

function turnsAnew(row: Row, what: string | Fact<never, unknown>): boolean {
  const { instance, over } = row;
  const { cell } = instance;
  const turns = (other: string | Fact<never, unknown>) => turnsWith(row, other);
  if (typeof what !== 'string') {
    const { keys, facts } = readsOf(what);
    return [...keys].some(turns) || [...facts].some(turns);
  }
  if (what === over) return true;
  const step = cell.steps[what];
  if (!step) {
    const link = linkOf(instance, what);
    return link.includes(`{${SELF}}`) || link.includes(`{${over}}`);
  }
  return asksFor(cell, step).some(turns);
}

const linkOf = ({ cell, presets }: Instance, key: string): string =>
  presets[key] ?? cell.inputs[key]?.from ?? '';

/** A value in one row: the choice is the row's, what is linked by the choice follows it, the rest is the cell's own. */
function rowValue(row: Row, key: string, read: Read): number | string {
  const { instance, over, id, given, lists } = row;
  const { cell, name } = instance;
  if (key === over) return given(read);
  const step = cell.steps[key];
  if (step)
    return unlessOfRow(
      () => turnsWith(row, key),
      () => valueOf(instance, key, read),
      () =>
        step.kind === 'choice' ? read.choice(`${name}.${id}.${key}`) : read.number(`${name}.${id}.${key}`),
    );
  const link = linkOf(instance, key);
  const ownStep = link.includes(`{${SELF}}`);
  if (!(ownStep || link.includes(`{${over}}`)) || !canFollow(cell, link, lists))
    return valueOf(instance, key, read);
  const spec = cell.inputs[key];
  const readAs = (of: string) => (spec && isChoice(spec) ? read.choice(of) : read.number(of));
  const linkAt = (self: string, chosen: string) =>
    fillIn(link, (other) => {
      if (other === SELF) return self;
      return other === over ? chosen : wordFor(instance, other, lists, read);
    });
  const filled = linkAt(`${name}.${id}`, id);
  if (ownStep) {
    // What is typed over a proposal of the cell's own holds in every row to which the same is proposed.
    const stands = valueOf(instance, key, read);
    const proposed = readAs(linkAt(name, String(valueOf(instance, over, read))));
    if (stands !== proposed && proposed === readAs(filled)) return stands;
  }
  return ownStep || read.has(filled) ? readAs(filled) : valueOf(instance, key, read);
}
