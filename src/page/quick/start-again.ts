/** What was typed in a cell, and a cell as it was before anything was. */
import type { Book, BookState } from '../../notebook';

/** Full names of the inputs in which something is written, in either version. */
export function typedIn({ entries, second }: BookState, cell: string): string[] {
  const names = new Set([...Object.keys(entries), ...Object.keys(second ?? {})]);
  return [...names].filter((name) => name.startsWith(`${cell}.`));
}

/** Clears a cell in both versions, by one step that can be undone. A version that differed in nothing else goes. */
export function startAgain(book: Book, cell: string): void {
  const state = book.state.peek();
  const typed = new Set(typedIn(state, cell));
  const without = <T>(entries: Readonly<Record<string, T>>) =>
    Object.fromEntries(Object.entries(entries).filter(([name]) => !typed.has(name)));
  const second = state.second && without(state.second);
  const isOne = second === null || Object.keys(second).length === 0;
  book.settle();
  book.open({
    ...state,
    entries: without(state.entries),
    second: isOne ? null : second,
    inHand: isOne ? 'first' : state.inHand,
  });
}
