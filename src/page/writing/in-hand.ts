/** The lines that are being written, and the key that the focus goes to when they have been moved. */
import { signal } from '@preact/signals';
import type { LineSpan } from '../../notebook/writing/edits';

export interface PieceInHand extends LineSpan {
  /** Of the notebook. */
  readonly id: string;
  /** What its field begins with, and which of its letters are chosen. */
  readonly words: string;
  readonly from: number;
  readonly to: number;
  /** Counts the pieces taken in hand: each is written in a field of its own. */
  readonly opened: number;
}

export const inHand = signal<PieceInHand | null>(null);

let opened = 0;
export function takeInHand(piece: Omit<PieceInHand, 'opened'>): void {
  opened += 1;
  inHand.value = { ...piece, opened };
}

/** The key that takes the focus once it is drawn: of a piece, counted from 0; of -1 it is the one above them all. */
export const handsOn = signal<{ readonly at: number; readonly key: string } | null>(null);
