/** Whether the page is being printed: what is closed on the screen, and goes on paper, is made then. */
import { signal } from '@preact/signals';

export const printing = signal(false);
addEventListener('beforeprint', () => (printing.value = true));
addEventListener('afterprint', () => (printing.value = false));
