/**
 * A cell's declaration turned into quantities, under the name of one instance of it.
 *
 * The same cell may stand in a notebook several times: `scarf`, `keelsonScarf`. Each instance
 * offers `<instance>.<input>` (given) and `<instance>.<step>` (derived). A cell with a table
 * also offers `<instance>.<row>.<step>`: the same steps for each answer of one choice, or for each thing in a list.
 * Each is made when it is first asked for by its name.
 */
import type { BoatLists, Derived, Given, Option, Owner, Read } from '../../boat';
import { once, onceFor } from '../../boat/once';
import { inchTwin, wordsOf } from '../../measure';
import type { Cell, ChoiceSpec, InputSpec } from './define';
import { derivedOf, written } from './derived';
import { bySystem, type Instance, isChoice } from './instance';
import { atPlace, linkPreset, optionsOf } from './links';
import { scopeOf } from './steps';

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
      return option && step && cell.table?.inRow(instance, key, option, lists);
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

const own = <T>(of: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(of, key) ? of[key] : undefined;

function givenOf(
  instance: Instance,
  key: string,
  spec: InputSpec | ChoiceSpec,
  lists: BoatLists | null,
): Given {
  const [own, ownInch] = bySystem(instance.presets[key]);
  const link = own === undefined ? spec.from : undefined;
  const preset = own ?? (isChoice(spec) ? firstKnown(spec, lists) : spec.preset);
  const twin = own === undefined ? twinOf(spec) : ownInch;
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
  return {
    ...saidOf(spec),
    name: `${instance.name}.${key}`,
    preset,
    ...linked,
    ...written(instance.cell, key),
    ...(isChoice(spec) && { options: optionsOf(spec, lists, own) }),
  };
}

/** What is said of a field whatever it is called by, on whatever boat: gathered once, for every boat asks. */
const saidOf = onceFor((spec: InputSpec | ChoiceSpec) => {
  const { kind, label, note } = spec;
  const meaning = label.charAt(0).toLowerCase() + label.slice(1);
  const said = { kind, meaning, ...(note !== undefined && { source: note }) };
  if (isChoice(spec)) return said;
  const { min, max, step, otherwise, doubted } = spec;
  return {
    ...said,
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
    ...(step !== undefined && { step }),
    ...(otherwise && { otherwise }),
    ...(doubted && { doubted }),
  };
});

/** The preset in feet and inches: what custom says in millimetres it says in inches too. */
const twinOf = ({ kind, preset, presetInch }: InputSpec | ChoiceSpec): string | undefined =>
  presetInch ?? (kind === 'length' || kind === 'drill' ? inchTwin(preset) : undefined);

/** A boat may lack the part a preset names, or call it otherwise: what lies in its place serves, else the first. */
function firstKnown(spec: ChoiceSpec, lists: BoatLists | null): string {
  const options = optionsOf(spec, lists);
  const named = [spec.preset, atPlace(lists)[spec.preset]];
  const known = named.find((name) => options.some(({ id }) => id === name));
  return known ?? options[0]?.id ?? spec.preset;
}
