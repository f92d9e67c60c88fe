/** The notebook piece by piece, each with its keys; the one that is being written, as a field. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { NotebookPage } from '../../notebook';
import { piecesOf } from '../../notebook/text/pieces';
import { wordsAt } from '../../notebook/writing/edits';
import { headLines } from '../../notebook/writing/head';
import { useBench } from '../bench';
import { html, use } from '../html';
import { wordLinks } from '../word-links';
import { handsOn, inHand } from './in-hand';
import { calledBy, shownPieces } from './piece';
import { actsOn } from './piece-acts';
import { PieceEditor } from './piece-editor';
import { addKey, PieceKeys } from './piece-keys';
import { textOf } from './write';

export function ByPiece({ page, tell }: { page: NotebookPage; tell: (says: string) => void }) {
  const bench = useBench();
  const host = useRef<HTMLElement>(null);
  const { id } = page;
  const text = textOf(bench, id) ?? '';
  const pieces = piecesOf(page);
  const wordsOf = (piece: (typeof pieces)[number]) => wordsAt(text, piece);
  const shown = shownPieces(pieces, wordLinks.value(page).blocks, id, wordsOf);
  const top = headLines(text);
  const acts = actsOn({ bench, page, pieces, tell });
  const writing = inHand.value?.id === id ? inHand.value : null;
  const wanted = handsOn.value;
  useLayoutEffect(() => {
    if (!wanted) return;
    handsOn.value = null;
    const key = host.current?.querySelector<HTMLElement>(
      `[data-at="${wanted.at}"] > .piece-keys [data-key="${wanted.key}"]`,
    );
    key?.focus({ preventScroll: true });
    key?.closest('[data-at]')?.scrollIntoView({ block: 'nearest' });
  }, [wanted]);

  const isIn = ({ first, last }: { first: number; last: number }) =>
    writing !== null && writing.last >= writing.first && first <= writing.last && last >= writing.first;
  // Before what it is made into, or where it is to stand.
  const place = writing ? shown.findIndex((piece) => isIn(piece) || piece.first >= writing.first) : -1;
  const at = place < 0 ? shown.length : place;
  const cellAbove = shown.slice(0, at).findLast(({ blocks }) => blocks[0]?.type === 'cell')?.blocks[0];
  const editor =
    writing &&
    use(PieceEditor, {
      key: `in hand ${writing.opened}`,
      page,
      begins: writing,
      takesIn: shown.some((piece) => isIn(piece) && piece.last > writing.last),
      above: cellAbove?.type === 'cell' ? cellAbove.instance : null,
      onDone: () => {
        const isThere = writing.last >= writing.first;
        handsOn.value = isThere ? { at, key: 'change' } : { at: at - 1, key: 'add' };
        inHand.value = null;
      },
    });
  const each = shown.map((piece, i) => {
    const keys = isIn(piece)
      ? null
      : use(PieceKeys, { at: i, count: shown.length, called: calledBy(wordsOf(piece)), acts, top });
    return html`<div key=${piece.key} class=${isIn(piece) ? 'piece in-hand' : 'piece'} data-at=${i}>${piece.shown}${keys}</div>`;
  });
  const above = html`<div key="above" class="piece" data-at="-1"><div class="piece-keys">${addKey(() => acts.add(-1, top), 'Add at the top')}</div></div>`;
  const whole = [above, ...each.slice(0, at), ...(editor ? [editor] : []), ...each.slice(at)];
  return html`<article class="prose by-piece" ref=${host}>${whole}</article>`;
}
