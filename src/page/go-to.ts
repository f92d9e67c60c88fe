/** The way to a quantity: to its place on the page if it has one, else to its place in the boat's sheet. */
import type { Signal } from '@preact/signals';
import { wayTo } from './hash-way';
import { notebookWith } from './library';

export function goToQuantity(name: string, boatOpen: Signal<boolean>): void {
  const show = (element: Element | null): boolean => {
    if (!element) return false;
    for (let at: Element | null = element; at; at = at.parentElement)
      if (at instanceof HTMLDetailsElement) at.open = true;
    element.scrollIntoView({
      block: 'center',
      behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth',
    });
    const target = element.querySelector<HTMLElement>('input, select, button') ?? (element as HTMLElement);
    target.focus({ preventScroll: true });
    return true;
  };
  const [part] = name.split('.');
  const look = () =>
    show(document.querySelector(`[data-quantity="${CSS.escape(name)}"]`)) ||
    show(document.getElementById(`cell-${part}`));
  if (name !== 'boat' && look()) return;
  const elsewhere = notebookWith(part ?? '');
  if (elsewhere) {
    location.hash = wayTo(elsewhere.id, `cell-${part}`);
    return;
  }
  boatOpen.value = true;
  // The sheet is drawn in the next turn; only then is there something to go to.
  setTimeout(() => {
    if (name !== 'boat' && look()) return;
    show(document.getElementById(`part-${part}`)) || show(document.getElementById('boat-sheet-title'));
  }, 30);
}
