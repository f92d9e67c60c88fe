/** Puts the formulas of the sheet on the bench among what is on hand, and keeps them so. */
import { computed, type ReadonlySignal } from '@preact/signals';
import { lists } from '../../boat';
import { withFormulas } from '../../notebook/formulas/with-formulas';
import { type FormulasPlaced, linesWritten, placeFormulas } from '../../notebook/formulas/place-formulas';
import type { Bench } from '../bench';
import { addFormulas } from '../formulas-here';
import { pagesOn } from '../library';

let placed: ReadonlySignal<FormulasPlaced> | null = null;

/** The formulas that stand on the bench, from now on; tracked. */
export function formulasOn(bench: Bench): ReadonlySignal<FormulasPlaced> {
  if (placed) return placed;
  const { book, boatless, instances, sheet, table } = bench;
  // A text, so that it is another only when a line is.
  const written = computed(() => linesWritten(book.state.value.entries));
  const parts = computed(() => {
    const { edges, stations } = boatless.value ? { edges: [], stations: [] } : lists(table.value);
    return new Set([...edges, ...stations].map(({ id }) => id));
  });
  const made = computed(() =>
    placeFormulas(
      pagesOn(boatless.value ? sheet.value.notebook : null),
      Object.fromEntries(JSON.parse(written.value) as [string, string][]), // as it was just written
      (word) => instances.value.has(word) || parts.value.has(word),
    ),
  );
  placed = made;
  addFormulas.value = (catalogue) => withFormulas(catalogue, made.value.texts);
  return made;
}
