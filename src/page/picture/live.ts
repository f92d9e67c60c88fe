/**
 * Which pictures follow the numbers: those near the window, and all of them while the page is
 * being printed. The others catch up when the page is at rest: they keep their place, and whoever
 * reads the page without a window finds no old number.
 */
import { effect, signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';

/** After the last edit, ms, before what is far catches up. */
const PAUSE = 200;

/** How far beyond the window a picture counts as near. */
const MARGIN = '300px';

const printing = signal(false);
addEventListener('beforeprint', () => (printing.value = true));
addEventListener('afterprint', () => (printing.value = false));

const watchers = new Map<Element, (near: boolean) => void>();
const observer = new IntersectionObserver(
  (entries) => {
    for (const entry of entries) watchers.get(entry.target)?.(entry.isIntersecting);
  },
  { rootMargin: MARGIN },
);

/** Drawings of what is far, one picture an idle moment. */
const waiting: (() => void)[] = [];
function atRest(job: () => void): void {
  waiting.push(job);
  if (waiting.length > 1) return;
  const next = () => {
    waiting[0]?.();
    waiting.shift();
    if (waiting.length > 0) requestIdleCallback(next, { timeout: 2000 });
  };
  requestIdleCallback(next, { timeout: 2000 });
}

export interface Live {
  /** Whether to draw at each change. */
  readonly following: boolean;
  /** Counts up when a picture that does not follow is to be drawn once. */
  readonly turn: number;
}

/** @param changes reads what an edit changes, tracked */
export function useLive(host: { current: Element | null }, changes: () => void): Live {
  const [near, setNear] = useState(false);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    watchers.set(element, setNear);
    observer.observe(element);
    let timer = 0;
    const dispose = effect(() => {
      changes();
      clearTimeout(timer);
      timer = window.setTimeout(() => atRest(() => setTurn((last) => last + 1)), PAUSE);
    });
    return () => {
      dispose();
      clearTimeout(timer);
      watchers.delete(element);
      observer.unobserve(element);
    };
  }, [host]);
  return { following: near || printing.value, turn };
}
