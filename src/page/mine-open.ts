/** Whether the formulas that stand in no notebook are open, at the head of the page. */
import { signal } from '@preact/signals';

export const mineOpen = signal(false);
