/**
 * The bench as a part of the page sees it that may lie far from the window: there it follows no edit at once, but
 * catches up in its turn when the page is at rest. So an edit moves what is in view first, and whoever reads the page
 * without a window, or on paper, finds no old number.
 */
import { computed, type Signal, signal } from '@preact/signals';
import { useLayoutEffect, useMemo } from 'preact/hooks';
import { onceEach } from '../boat/once';
import type { Graph } from '../notebook';
import type { Bench } from './bench';
import { watchNear, watchRead } from './near';
import { printing } from './printing';

/** Of all parts: each goes up when it is the part's turn to catch up. */
export const turns = new Set<Signal<number>>();

/**
 * @param host where the part stands; near until it is known to be far
 * @param name the cell that it is, if it is one: it follows while it is in hand, wherever it stands
 */
export function useSeen(host: { current: Element | null }, bench: Bench, name?: string): Bench {
  const isNear = useMemo(() => signal(true), []);
  const turn = useMemo(() => signal(0), []);
  useLayoutEffect(() => {
    turns.add(turn);
    return () => void turns.delete(turn);
  }, [turn]);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const leave = watchNear(element, (near) => (isNear.value = near));
    if (name === undefined) return leave;
    // The cell that one reads is the one in hand, unless the focus is in another.
    const leaveRead = watchRead(element, (isRead) => {
      if (isRead && !document.activeElement?.closest('.cell')) bench.inHand.value = name;
    });
    return () => {
      leave();
      leaveRead();
    };
  }, [host, isNear, bench, name]);
  return useMemo(() => {
    const follows = computed(() => isNear.value || printing.value || bench.inHand.value === name);
    const seen = onceEach((graph: Graph) => graph.seenAt(follows, turn));
    const { first, second, inHand } = bench.book;
    return {
      ...bench,
      rested: turn,
      book: {
        ...bench.book,
        first: computed(() => seen(first.value)),
        second: computed(() => second.value && seen(second.value)),
        inHand: computed(() => seen(inHand.value)),
      },
      other: computed(() => {
        const other = bench.other.value;
        return other && { ...other, graph: seen(other.graph) };
      }),
    };
  }, [bench, name, isNear, turn]);
}
