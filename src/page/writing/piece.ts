/** One piece of the notebook as it is shown. */
import type { VNode } from 'preact';
import type { Block } from '../../notebook';
import type { TextPiece } from '../../notebook/text/pieces';
import { blockViews } from '../blocks/kinds';

/** A piece, with its blocks as they are shown: words of the trade in them lead to what they mean. */
export interface PieceShown extends TextPiece {
  readonly shown: readonly VNode[];
  /** The same as long as it says the same; two that do are told apart by their order. */
  readonly key: string;
}

/** @param all blocks of the whole page; those that belong to no piece stand before them */
export function shownPieces(
  pieces: readonly TextPiece[],
  all: readonly Block[],
  notebook: string,
  wordsOf: (piece: TextPiece) => string,
): readonly PieceShown[] {
  const count = pieces.reduce((sum, { blocks }) => sum + blocks.length, 0);
  const seen = new Map<string, number>();
  let at = all.length - count;
  return pieces.map((piece) => {
    const blocks = all.slice(at, (at += piece.blocks.length));
    const [first] = blocks;
    // A cell stays the same while it is moved and set up, with what is open in it.
    const same = first?.type === 'cell' ? `cell ${first.instance}` : wordsOf(piece);
    const again = seen.get(same) ?? 0;
    seen.set(same, again + 1);
    return { ...piece, shown: blockViews(blocks, notebook), key: `${same} ${again}` };
  });
}

/** The first words of a piece, for the names of its keys. */
export function calledBy(words: string): string {
  const [first = ''] = words.split('\n');
  const plain = first.replace(/^[\s#>`~|+*-]+|^\d+[.)]\s+/, '').trim();
  return plain.length > MOST ? `${plain.slice(0, MOST)}…` : plain || 'line across';
}
const MOST = 40;
