/** Whether the sheet that asks what goes into a booklet lies open at the head of the notebook. */
import { signal } from '@preact/signals';

export const bookletOpen = signal(false);
