/** The builder's own formulas among what is on hand: what adds them is fetched where there are any. */
import { signal } from '@preact/signals';
import type { Catalogue } from '../notebook';

/** Null until it is known whether there are any. */
export const addFormulas = signal<((catalogue: Catalogue) => Catalogue) | null>(null);
