/** A notebook of the builder's own to write in: an empty one, or a copy of one that comes along. */
import type { OwnNotebooks } from '../../boat';
import { type NotebookHead, writeNotebook } from '../../notebook';
import { idOf } from '../../notebook/text/slug';
import { begun } from '../../notebook/writing/head';
import { wayTo } from '../address';
import type { Bench } from '../bench';
import { notebooks } from '../library';
import { amendBoat } from '../notebooks/amend';
import { keptWith } from '../notebooks/kept-with';
import { noRoom } from '../notebooks/room';
import { inHand, takeInHand } from './in-hand';
import { startWriting } from './start';

const texts = import.meta.glob<string>('#notebooks/*.md', { query: '?raw', import: 'default' });

/** Begins a notebook with its title, and with its first paragraph in hand. */
export function beginNotebook(bench: Bench, typed: string): void {
  const title = typed.trim() || 'My notebook';
  const listed = new Set(notebooks.peek().map(({ id }) => id));
  const id = addNotebook(bench, idOf(title), begun(title), (one) => !listed.has(one));
  if (id === null) return;
  startWriting(id);
  takeInHand({ id, first: 4, last: 3, words: '', from: 0, to: 0 });
  handOnFocus(id);
}

/**
 * A notebook newly opened takes the focus to its title, however long it takes to open; here it belongs to the first
 * words, unless the builder goes elsewhere meanwhile.
 */
function handOnFocus(id: string): void {
  const over = new AbortController();
  const { signal } = over;
  const hand = ({ target }: FocusEvent) => {
    if (!(target instanceof Element) || target.id !== 'notebook-title') return;
    over.abort();
    if (inHand.peek()?.id === id) document.querySelector<HTMLElement>('.piece-editor textarea')?.focus();
  };
  addEventListener('focusin', hand, { signal });
  addEventListener('pointerdown', () => over.abort(), { signal });
}

/** Copies a notebook that comes along: the copy stands in its place, and is written in. */
export async function makeOwn(bench: Bench, { id: from, title }: NotebookHead): Promise<void> {
  const load = Object.entries(texts).find(([path]) => path.endsWith(`/${from}.md`))?.[1];
  const text = await load?.().catch(() => undefined);
  if (text === undefined) {
    bench.notice.value = {
      says: `The text of “${title}” did not arrive. Load the page again when you are online.`,
    };
    return;
  }
  const id = addNotebook(bench, from, text, () => true);
  if (id === null) return;
  const stays =
    id === from
      ? 'The one that comes along is kept: put yours away to have it back.'
      : 'It stands beside the others.';
  bench.notice.value = {
    says: `“${title}” is yours to write in. It ${keptWith(bench.shelf, calledBoat(bench))}. ${stays}`,
  };
  startWriting(id);
}

const calledBoat = ({ sheet, book }: Bench): string =>
  sheet.peek().kind === 'boat' ? book.state.peek().name : 'your boat';

/** @returns its id: the one wished for, or the next that is free; null where there is no room */
function addNotebook(
  bench: Bench,
  wished: string,
  text: string,
  isFree: (id: string) => boolean,
): string | null {
  const own = bench.ownNotebooks.peek() ?? {};
  const id = freeId(wished, own, isFree);
  const full = noRoom({ ...own, [id]: { text, away: false } });
  if (full !== null) {
    bench.notice.value = { says: `No notebook was begun: ${full}.` };
    return null;
  }
  amendBoat(bench, (state) => writeNotebook(state, id, text));
  location.hash = wayTo(id);
  return id;
}

/** No other notebook of hers is written over, one that is put away least of all. */
function freeId(wished: string, own: OwnNotebooks, isFree: (id: string) => boolean): string {
  for (let n = 1; ; n += 1) {
    const id = n === 1 ? wished : `${wished}-${n}`;
    if (!Object.hasOwn(own, id) && isFree(id)) return id;
  }
}
