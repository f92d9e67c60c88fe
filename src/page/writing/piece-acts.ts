/** What the keys of a piece do to the notebook's text. */
import type { NotebookPage } from '../../notebook';
import type { TextPiece } from '../../notebook/text/pieces';
import { cellText } from '../../notebook/writing/cell-text';
import { type Edited, replaced, type LineSpan, swapped, wordsAt } from '../../notebook/writing/edits';
import type { Bench } from '../bench';
import { handsOn, takeInHand } from './in-hand';
import { freeName } from './names';
import { askToPlace, type Put } from './placing';
import { textOf, writeText } from './write';

/** Where nothing stands yet: before this line. */
const before = (line: number): LineSpan => ({ first: line, last: line - 1 });

export interface ActsOn {
  readonly bench: Bench;
  readonly page: NotebookPage;
  readonly pieces: readonly TextPiece[];
  /** Says what was done, or why it was not. */
  readonly tell: (says: string) => void;
}

export function actsOn({ bench, page, pieces, tell }: ActsOn) {
  const { id } = page;
  const text = () => textOf(bench, id) ?? '';
  /** @param at the piece whose key takes the focus then */
  const write = (done: Edited, at: number | null, key: string, says: string) => {
    const why = writeText(bench, id, done.text);
    if (why === null && at !== null) handsOn.value = { at, key };
    tell(why ?? says);
    return why === null;
  };
  const move = (at: number, way: 'up' | 'down') => {
    const to = way === 'up' ? at - 1 : at + 1;
    const upper = pieces[Math.min(at, to)];
    const lower = pieces[Math.max(at, to)];
    if (upper && lower) write(swapped(text(), upper, lower), to, way, `Moved ${way}.`);
  };
  const change = ({ first, last }: LineSpan, from: number, to: number) => {
    const span = { first, last };
    takeInHand({ ...span, id, words: wordsAt(text(), span), from, to });
  };
  const put = (at: number, line: number, { text: words, from, to }: Put) => {
    if (words === '') {
      takeInHand({ ...before(line), id, words, from: 0, to: 0 });
      return;
    }
    const done = replaced(text(), before(line), words);
    const isChosen = from < to;
    if (write(done, isChosen ? null : at, 'change', 'Placed.') && isChosen) change(done, from, to);
  };
  return {
    change: (at: number) => {
      const piece = pieces[at];
      const end = piece ? wordsAt(text(), piece).length : 0;
      if (piece) change({ first: piece.first, last: piece.last }, end, end);
    },
    up: (at: number) => move(at, 'up'),
    down: (at: number) => move(at, 'down'),
    double: (at: number) => {
      const piece = pieces[at];
      if (!piece) return;
      const words = doubleOf(piece, page, text(), bench);
      write(replaced(text(), before(piece.last + 1), words), at + 1, 'change', 'Doubled.');
    },
    remove: (at: number) => {
      const piece = pieces[at];
      if (!piece) return;
      const next = Math.min(at, pieces.length - 2);
      write(replaced(text(), piece, ''), next, next < 0 ? 'add' : 'change', 'Removed. Undo brings it back.');
    },
    /** @param at of the piece above; -1 for the top */
    add: (at: number, top: number) => {
      const above = pieces.slice(0, at + 1).findLast(({ blocks }) => blocks[0]?.type === 'cell')?.blocks[0];
      const near = above?.type === 'cell' ? above.instance : null;
      const line = (pieces[at]?.last ?? top) + 1;
      askToPlace(bench, page, { inSentence: false, above: near }, (what) => put(at + 1, line, what));
    },
  };
}

/** What has a name needs another beside itself; a cell begins with the numbers that stand in the first. */
function doubleOf(piece: TextPiece, page: NotebookPage, text: string, bench: Bench): string {
  const words = wordsAt(text, piece);
  const [block] = piece.blocks;
  if (block?.type === 'ask' || block?.type === 'formula')
    return words.replace(block.name, freeName(block.name, text, bench));
  const place =
    block?.type === 'cell' ? page.places.find(({ instance }) => instance === block.instance) : undefined;
  if (!place) return words;
  const graph = bench.book.inHand.peek();
  const inputs = Object.keys(bench.instances.peek().get(place.instance)?.cell.inputs ?? {});
  const typed = inputs.flatMap((key): [string, string][] => {
    const entry = graph.entry(`${place.instance}.${key}`);
    return entry?.written ? [[key, entry.text]] : [];
  });
  const entries = { ...place.presets, ...Object.fromEntries(typed) };
  return cellText(place.cell, freeName(place.instance, text, bench), entries);
}
