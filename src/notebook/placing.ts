/** Which cells stand under which names, given the notebooks that set them up; what is amiss is told at the place. */
import { type Cell, type Instance, registry } from '../cells';
import type { CellPlace, NotebookPage } from './text/page-text';

export interface Remark {
  readonly says: string;
  /** Whether the cell can't stand there at all. */
  readonly stops: boolean;
}

export interface Placing {
  readonly instances: ReadonlyMap<string, Instance>;
  readonly remarks: ReadonlyMap<CellPlace, Remark>;
}

/** Cells under names of their own, in all notebooks of a sheet: with more, each change of the table would be felt. */
const MOST_NAMED = 500;

/**
 * @param cells those fetched so far, by their ids, in the registry's order
 * @param pages the notebooks that read from one sheet; of two that give a name, the first has it
 * @param plain cells that stand under their own name wherever they are shown
 * @param isPart whether a word is the name of a part of the boat on the sheet
 */
export function placing(
  cells: ReadonlyMap<string, Cell>,
  pages: readonly NotebookPage[],
  plain: readonly Cell[],
  isPart: (word: string) => boolean,
): Placing {
  const instances = new Map<string, Instance>(
    plain.map((cell) => [cell.id, instanceOf(cell, cell, cell.id, {})]),
  );
  const remarks = new Map<CellPlace, Remark>();
  const named = new Map<string, { readonly place: CellPlace; readonly page: NotebookPage }>();
  for (const page of pages) {
    for (const place of page.places) {
      const { cell: id, instance: name } = place;
      const stop = (says: string) => remarks.set(place, { says, stops: true });
      const before = named.get(name);
      if (!registry.some((shelved) => shelved.id === id)) stop(`there is no calculator cell called "${id}".`);
      else if (isPart(name)) stop(`"${name}" is a part of this boat; give the cell another name.`);
      else if (before && !isSame(before.place, place))
        stop(`"${name}" already stands in the notebook “${before.page.title}”; give this cell another name.`);
      else if (!before && named.size === MOST_NAMED)
        stop(`your notebooks place more than ${MOST_NAMED} cells; put one of them away to have this one.`);
      else named.set(name, before ?? { place, page });
      const cell = cells.get(id);
      if (!cell || remarks.has(place)) continue;
      const unknown = Object.keys(place.presets).filter((key) => !Object.hasOwn(cell.inputs, key));
      if (unknown.length > 0) remarks.set(place, { says: noInputs(cell, unknown), stops: false });
      if (!instances.has(name)) instances.set(name, instanceOf(place, cell, name, place.presets));
    }
  }
  return { instances, remarks };
}

/** One that stands where it stood is the same one, so that a change in a text is felt by no other cell. */
function instanceOf(
  place: CellPlace | Cell,
  cell: Cell,
  name: string,
  presets: Instance['presets'],
): Instance {
  const known = made.get(place) ?? { cell, name, presets };
  made.set(place, known);
  return known;
}
const made = new WeakMap<CellPlace | Cell, Instance>();

const noInputs = ({ id, inputs }: Cell, unknown: readonly string[]): string =>
  `the cell "${id}" has no ${unknown.map((key) => `"${key}"`).join(' and no ')}; what can be set there is ${Object.keys(inputs).join(', ')}.`;

/** Shown twice it may be, set up in two ways it may not. */
const isSame = (a: CellPlace, b: CellPlace): boolean =>
  a.cell === b.cell && JSON.stringify(a.presets) === JSON.stringify(b.presets);
