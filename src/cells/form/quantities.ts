/**
 * A cell's declaration turned into quantities, under the name of one instance of it.
 *
 * The same cell may stand in a notebook several times: `scarf`, `keelsonScarf`. Each instance
 * offers `<instance>.<input>` (given) and `<instance>.<step>` (derived). A cell with a table
 * also offers `<instance>.<row>.<step>`: the same steps for each answer of one choice, or for each thing in a list.
 * Each is made when it is first asked for by its name.
 */
import type { BoatLists, Derived, Given, Option, Owner, Read } from '../../boat';
import { once } from '../../boat/once';
import { inchTwin, wordsOf } from '../../measure';
import { type Cell, type ChoiceSpec, type InputSpec, isHullStep, isTold, type ListRow } from './define';
import { type Fact, labelOf, readsOf, readsSeen } from './fact';
import { bySystem, type Instance, isChoice } from './instance';
import { mannerOf } from './manner';
import { asksFor, findFact, runStep, type Scope, scopeOf, valueOf } from './steps';

/** In a link, the instance itself: `{self}.usualLength` is a step of the same cell. */
const SELF = 'self';

/**
 * The boat's own names of her lowest edge and panel, the chine under her sides and her highest edge, whatever they are
 * called; as most boats call them where there is no boat.
 */
const atPlace = (lists: BoatLists | null): Readonly<Record<string, string | undefined>> =>
  lists
    ? {
        bottom: lists.panels[0]?.id,
        keel: lists.edges[0]?.id,
        chine: lists.chines.at(-1)?.id,
        sheer: lists.edges.at(-1)?.id,
      }
    : { bottom: 'bottom', keel: 'keel', chine: 'chine', sheer: 'sheer' };

/** What stands for a word of a link: the answer of the cell's own choice, else the edge in that place. */
function wordFor({ cell, name }: Instance, key: string, lists: BoatLists | null, read: Read): string {
  return (key in cell.inputs ? undefined : atPlace(lists)[key]) ?? read.choice(`${name}.${key}`);
}

/** Puts the cell's choices into a link such as `{along}.length`. */
export function fillIn(template: string, chosen: (key: string) => string): string {
  return template.replace(/\{(\w+)\}/g, (_, key: string) => chosen(key));
}

/** @param lists what the boat in hand has to choose from; null on a sheet without a boat */
export function cellQuantities(instance: Instance, lists: BoatLists | null): Owner {
  const { cell, name } = instance;
  const rows = once(() => rowOptions(cell, lists));
  const made = new Map<string, Given | Derived | undefined>();

  /** @param rest what follows the instance's name */
  function make(rest: string): Given | Derived | undefined {
    const dot = rest.lastIndexOf('.');
    const key = rest.slice(dot + 1);
    const step = own(cell.steps, key);
    if (dot >= 0) {
      const row = rest.slice(0, dot);
      const option = cell.table?.rows ? listed(row) : rows().find(({ id }) => id === row);
      return option && step && rowQuantity(instance, key, option, lists);
    }
    if (step) return derivedOf(cell, `${name}.${key}`, key, lists, (read) => scopeOf(instance, read));
    const input = own(cell.inputs, key);
    return input && givenOf(instance, key, input, lists);
  }

  return {
    words: [name],
    find: (full) => {
      if (made.has(full)) return made.get(full);
      const found = full.startsWith(`${name}.`) ? make(full.slice(name.length + 1)) : undefined;
      made.set(full, found);
      return found;
    },
    names: () => {
      const steps = Object.keys(cell.steps);
      const inRows = rows().flatMap(({ id }) => steps.map((key) => `${id}.${key}`));
      return [...Object.keys(cell.inputs), ...steps, ...inRows].map((rest) => `${name}.${rest}`);
    },
  };
}

const own = <T>(of: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(of, key) ? of[key] : undefined;

/** The options a choice offers on this boat; without a boat, a choice among her parts keeps its preset and is none. */
export function optionsOf(spec: ChoiceSpec, lists: BoatLists | null): readonly Option[] {
  if (!lists) {
    const own = typeof spec.options === 'string' ? [] : spec.options.filter(({ ofBoat }) => ofBoat !== true);
    return own.length > 0 ? own : [{ id: spec.preset, label: wordsOf(spec.preset) }];
  }
  if (typeof spec.options !== 'string') return spec.options;
  const ofBoat = lists[spec.options];
  const none = spec.none ?? (ofBoat.length === 0 ? spec.without : undefined);
  return none === undefined ? ofBoat : [{ id: 'none', label: none }, ...ofBoat];
}

function givenOf(
  instance: Instance,
  key: string,
  spec: InputSpec | ChoiceSpec,
  lists: BoatLists | null,
): Given {
  const [own, ownInch] = bySystem(instance.presets[key]);
  const link = own === undefined ? spec.from : undefined;
  const base = {
    name: `${instance.name}.${key}`,
    kind: spec.kind,
    meaning: spec.label.charAt(0).toLowerCase() + spec.label.slice(1),
    ...(spec.note === undefined ? {} : { source: spec.note }),
    ...written(instance.cell, key),
  };
  const preset = own ?? (isChoice(spec) ? firstKnown(spec, lists) : spec.preset);
  const twin = own === undefined ? (spec.presetInch ?? twinOf(spec)) : ownInch;
  const presetNow = (read: Read) => (twin !== undefined && read.inches() ? twin : preset);
  const asDeclared = (name: string) => spec.owners?.find((owner) => owner.name === name);
  /** Of a part that the boat lacks, as it is declared. */
  const without = (name: string, read: Read) => {
    const owner = asDeclared(name);
    const inch = read.inches() ? owner?.presetInch : undefined;
    return inch ?? owner?.withoutBoat ?? owner?.preset ?? presetNow(read);
  };
  const linked =
    (link !== undefined && linkPreset(instance, link, without, lists, spec.fromBy)) ||
    (twin === undefined ? {} : { presetFrom: presetNow });
  if (isChoice(spec)) return { ...base, preset, ...linked, options: optionsOf(spec, lists) };
  const { min, max, step } = spec;
  return {
    ...base,
    preset,
    ...linked,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(step === undefined ? {} : { step }),
    ...(spec.otherwise && { otherwise: spec.otherwise }),
  };
}

/** What custom says in millimetres it says in inches too. */
const twinOf = ({ kind, preset }: InputSpec | ChoiceSpec): string | undefined =>
  kind === 'length' || kind === 'drill' ? inchTwin(preset) : undefined;

/** How it is written, where that is not as all numbers are. */
function written(cell: Cell, key: string): Pick<Given, 'manner'> {
  const manner = mannerOf(cell, key);
  return manner ? { manner } : {};
}

/** A boat may lack the part a preset names, or call it otherwise: what lies in its place serves, else the first. */
function firstKnown(spec: ChoiceSpec, lists: BoatLists | null): string {
  const options = optionsOf(spec, lists);
  const named = [spec.preset, atPlace(lists)[spec.preset]];
  const known = named.find((name) => options.some(({ id }) => id === name));
  return known ?? options[0]?.id ?? spec.preset;
}

/** A link falls back to the preset where there is nothing of its name: which is asked when it is read. */
function linkPreset(
  instance: Instance,
  link: string,
  without: (name: string, read: Read) => string,
  lists: BoatLists | null,
  by?: InputSpec['fromBy'],
): { presetFrom: (read: Read) => string } | null {
  if (!canFollow(instance.cell, link, lists)) return null;
  return {
    presetFrom: (read: Read) => {
      const other = by?.links[read.choice(`${instance.name}.${by.choice}`)];
      const filled = fillIn(other ?? link, (key) =>
        key === SELF ? instance.name : wordFor(instance, key, lists, read),
      );
      return read.has(filled) ? filled : without(filled, read);
    },
  };
}

/** False for a link by a choice that this boat gives nothing to choose from. */
function canFollow(cell: Cell, link: string, lists: BoatLists | null): boolean {
  return [...link.matchAll(/\{(\w+)\}/g)].every(([, key = '']) => {
    const by = cell.inputs[key];
    return !by || !isChoice(by) || optionsOf(by, lists).length > 0;
  });
}

function derivedOf(
  cell: Cell,
  name: string,
  key: string,
  lists: BoatLists | null,
  scopeBy: (read: Read) => Scope,
): Derived {
  const spec = cell.steps[key]!; // asked only for steps of the cell
  return {
    name,
    kind: spec.kind,
    meaning: spec.meaning,
    source: spec.source,
    ...written(cell, key),
    ...((isHullStep(spec) || isTold(spec)) && spec.options && lists ? { options: lists[spec.options] } : {}),
    from: (read) => runStep(cell, spec, scopeBy(read)),
  };
}

/** A row of a list, which may have it or not at the moment: a word and its number. */
const listed = (id: string): Option | undefined =>
  /^([a-z]+\d+|first|last)$/i.test(id) ? { id, label: wordsOf(id) } : undefined;

/** The answers that the cell's table has rows for. */
function rowOptions({ id, table, inputs }: Cell, lists: BoatLists | null): readonly Option[] {
  if (!table || table.rows) return [];
  const over = inputs[table.over];
  if (!over || !isChoice(over))
    throw new Error(`${id}: the table runs over "${table.over}", which is not a choice of this cell`);
  return optionsOf(over, lists);
}

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
