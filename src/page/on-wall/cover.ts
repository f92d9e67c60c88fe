/**
 * Answers are covered on the wall, until somebody asks, and at a desk where a question waits for a guess. What covers is
 * fetched when it is asked for; here is only what the rest of the page needs to know of it.
 */
import type { VNode } from 'preact';
import type { Bench } from '../bench';
import { use } from '../html';
import type { Cover } from '../plate';

/** What covers a cell; tracked. */
export const coverOf = ({ wall, asked }: Bench, instance: string): Cover | null =>
  wall.value ?? (asked.value?.over(instance) ? asked.value : null);

/** A part of a cell, under a plate while it is covered. */
export function cover(
  bench: Bench,
  instance: string,
  part: string,
  what: string,
  inside: () => VNode | null,
  label?: string,
): VNode | null {
  const by = coverOf(bench, instance);
  return by
    ? use(by.Plate, { key: part, instance, part, what, inside, ...(label ? { label } : {}) })
    : inside();
}
