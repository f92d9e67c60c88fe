/**
 * On the wall: the page at a size for a class, its answers covered until somebody asks. What covers is fetched when it
 * is asked for; here is only what the rest of the page needs to know of it.
 */
import type { VNode } from 'preact';
import type { Bench } from '../bench';
import { use } from '../html';

/** A part of a cell, under a plate while the page is on the wall. */
export function cover(
  { wall }: Bench,
  instance: string,
  part: string,
  what: string,
  inside: () => VNode | null,
  label?: string,
): VNode | null {
  return wall.value
    ? use(wall.value.Plate, { key: part, instance, part, what, inside, ...(label ? { label } : {}) })
    : inside();
}
