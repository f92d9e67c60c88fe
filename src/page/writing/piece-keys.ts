/** The slim keys below a piece: what can be done with it where it stands. */
import { html } from '../html';
import type { actsOn } from './piece-acts';

export interface PieceKeysProps {
  readonly at: number;
  readonly count: number;
  /** The first words of the piece, by which its keys are told from others. */
  readonly called: string;
  readonly acts: ReturnType<typeof actsOn>;
  /** Last line of what stands above the first piece. */
  readonly top: number;
}

export function PieceKeys({ at, count, called, acts, top }: PieceKeysProps) {
  const key = (name: 'change' | 'up' | 'down' | 'double' | 'remove', words: string, isOff = false) =>
    html`<button type="button" class="quiet" data-key=${name} aria-label=${`${words}: ${called}`} aria-disabled=${isOff ? 'true' : undefined} onClick=${() => acts[name](at)}>${words}</button>`;
  return html`<div class="piece-keys">
    ${key('change', 'Change')} ${key('up', 'Up', at === 0)} ${key('down', 'Down', at === count - 1)}
    ${key('double', 'Double')} ${key('remove', 'Remove')} ${addKey(() => acts.add(at, top), `Add below: ${called}`)}
  </div>`;
}

/** @param label begins with what stands on the key */
export const addKey = (add: () => void, label: string) =>
  html`<button type="button" class="quiet" data-key="add" aria-label=${label} aria-haspopup="dialog" onClick=${add}>Add</button>`;
