/** Whether the log of the boat in hand is open, as a page of its own at the head of the notebook. */
import { signal } from '@preact/signals';

export const logOpen = signal(false);
