/** The link that lies at the head of the notebook: what one brings, or the one that is being made; null where none does. */
import { signal } from '@preact/signals';
import type { BoatLink } from '../notebook/link/link';

export const linkOpen = signal<BoatLink | 'make' | null>(null);
