/** Which formulas stand on a sheet, and with which lines: those that its notebooks set up, and the builder's own beside them. */
import type { FormulaPlace, NotebookPage } from '../text/page-text';
import type { BookState, Entries } from '../state/state';
import type { FormulaText } from './formula-quantities';

/** The formulas that stand in no notebook: for a sum that comes up at the bench. */
export const MINE = 'mine';

/** Longer texts are not kept: they would fill what a browser has room for. */
export const LONGEST_KEPT = 20_000;

/** What a block's lines are written under, in place of those that its notebook gives it. */
export const linesOf = (name: string): string => `${name}.lines`;

export interface FormulasPlaced {
  readonly texts: readonly FormulaText[];
  /** Why a block can't stand where a notebook places it. */
  readonly remarks: ReadonlyMap<FormulaPlace, string>;
}

/**
 * @param pages the notebooks that read from one sheet; of two that give a name, the first has it
 * @param entries what is written on it, or of it only the lines of formulas
 * @param isTaken whether a word is the name of a cell or of a part of the boat on the sheet
 */
export function placeFormulas(
  pages: readonly Pick<NotebookPage, 'title' | 'formulas'>[],
  entries: Entries,
  isTaken: (word: string) => boolean,
): FormulasPlaced {
  const remarks = new Map<FormulaPlace, string>();
  const placed = new Map<string, { readonly place: FormulaPlace; readonly title: string }>();
  for (const { title, formulas = [] } of pages)
    for (const place of formulas) {
      const { name, text } = place;
      const before = placed.get(name);
      if (isTaken(name))
        remarks.set(place, `"${name}" is a part of this boat or a cell; give the formula another name.`);
      else if (before && before.place.text !== text)
        remarks.set(
          place,
          `"${name}" already stands in the notebook “${before.title}”; give this formula another name.`,
        );
      else if (!before) placed.set(name, { place, title });
    }
  const written = (name: string): string | undefined => entries[linesOf(name)];
  const mine = written(MINE);
  return {
    texts: [
      // What the builder writes has room, whatever a notebook brings along.
      ...(mine === undefined ? [] : [{ name: MINE, text: mine }]),
      ...[...placed.values()].map(({ place: { name, text } }) => ({ name, text: written(name) ?? text })),
    ],
    remarks,
  };
}

/** Of what is written, the lines of formulas: they change when one of these does. */
export function linesWritten(entries: Entries): string {
  return JSON.stringify(Object.entries(entries).filter(([name]) => name.endsWith('.lines')));
}

/**
 * Writes a block's lines, for both versions: a formula is a rule like the plan's table, and each version puts its own
 * numbers in.
 * @param text null for those that its notebook gives it
 */
export function writeLines(state: BookState, name: string, text: string | null): BookState {
  const key = linesOf(name);
  if ((state.entries[key] ?? null) === text) return state;
  const { [key]: _, ...others } = state.entries;
  return { ...state, entries: text === null ? others : { ...others, [key]: text } };
}
