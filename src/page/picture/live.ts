/**
 * Which pictures and tables follow the numbers: those near the window, and all of them while the page is
 * being printed. The others catch up when the page is at rest: they keep their place, and whoever
 * reads the page without a window finds no old number.
 */
import { effect, untracked } from '@preact/signals';
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Bench } from '../bench';
import { printing } from '../printing';

/** After the last edit, ms, before what is far catches up. */
const PAUSE = 200;

/** How far beyond the window a picture or a table counts as near. */
const MARGIN = '300px';

const watchers = new Map<Element, (near: boolean) => void>();
const observer = new IntersectionObserver(
  (entries) => {
    for (const entry of entries) watchers.get(entry.target)?.(entry.isIntersecting);
  },
  { rootMargin: MARGIN },
);

/** What an idle moment must still have left for another drawing, ms. */
const LEAST = 4;

/** Drawings of what is far, as many in one idle moment as there is time for: each frame of its own costs the page more than they do. */
const waiting: (() => void)[] = [];
let asked = false;
function atRest(job: () => void): void {
  waiting.push(job);
  if (!asked) wait();
}

function wait(): void {
  asked = true;
  requestIdleCallback((idle) => void work(idle), { timeout: 2000 });
}

async function work(idle: IdleDeadline): Promise<void> {
  try {
    do {
      waiting.shift()?.();
      // What the job has asked to be drawn anew is drawn in the next turn, and counts too.
      await Promise.resolve();
    } while (waiting.length > 0 && idle.timeRemaining() > LEAST);
  } finally {
    asked = false;
    if (waiting.length > 0) wait();
  }
}

/**
 * Makes what stands in a place anew: at each change while it is near, and when it is far once at rest.
 * What is far reads no quantity, so that no edit wakes it at once; it keeps what it showed until its turn.
 * @param host the place, which stands whether there is something in it or not
 * @param atOnce whether it is made when the page first draws it, wherever it stands
 */
export function useLive(
  host: { current: Element | null },
  { book, shown }: Bench,
  make: () => VNode | null,
  { atOnce }: { readonly atOnce: boolean } = { atOnce: false },
): VNode | null {
  const [near, setNear] = useState(false);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    watchers.set(element, setNear);
    observer.observe(element);
    let timer = 0;
    const dispose = effect(() => {
      void book.state.value;
      void shown.value;
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
  const kept = useRef<{ node: VNode | null; turn: number }>({ node: null, turn: atOnce ? -1 : 0 });
  if (near || printing.value) kept.current = { node: make(), turn };
  else if (turn > kept.current.turn) kept.current = { node: untracked(make), turn };
  return kept.current.node;
}
