/** Finds the heading under which the cell in hand stands, for the contents list. */
import { effect } from '@preact/signals';
import type { Bench } from '../bench';
import { openText } from '../library';
import { here } from './contents';

export function watchHere(bench: Bench): void {
  effect(() => {
    const inHand = bench.inHand.value;
    void openText();
    here.value = inHand === null ? null : headingOver(document.getElementById(`cell-${inHand}`));
  });
}

/** The last of the open notebook's headings before a cell. */
function headingOver(cell: Element | null): string | null {
  if (!cell) return null;
  const headings = [...document.querySelectorAll<HTMLElement>('.prose h2[id]:not(.cell h2)')];
  const isBefore = (heading: Element) =>
    (heading.compareDocumentPosition(cell) & Node.DOCUMENT_POSITION_FOLLOWING) > 0;
  return headings.findLast(isBefore)?.id ?? null;
}
