/** Ranges that are to stand beside their answers, by the names of these. */
import { signal } from '@preact/signals';

export const rangeAsked = signal<ReadonlyMap<string, string>>(new Map());
