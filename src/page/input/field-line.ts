/**
 * The one line of a field: its label, the field, a mark for where its number comes from, whose words stand under it on
 * focus and hover and are read with the field, and the key to all else that is to be said of it.
 */
import type { VNode } from 'preact';
import { html } from '../html';
import { small } from '../in-short';

export interface FieldLineProps {
  readonly id: string;
  readonly label: string;
  readonly field: VNode;
  /** Of a choice: letters of what is chosen. */
  readonly letters?: number;
  readonly mark: string;
  /** What the mark stands for. */
  readonly words: string;
  /** Whether what the key opens is open; without it there is no key. */
  readonly open?: boolean;
  readonly turn?: () => void;
}

export const wordsId = (id: string) => `${id}-from`;

export function FieldLine({ id, label, field, letters, mark, words, open = false, turn }: FieldLineProps) {
  return html`<div class="line" style=${`--label:${label.length};--choice:${letters}`}>
    <label for=${id}>${label}</label>
    ${field}
    ${mark ? html`<span class="mark" aria-hidden="true">${mark}</span>` : null}
    ${
      turn
        ? html`<button type="button" tabindex="-1" data-row-key class="more-key" aria-label=${`More about ${small(label)}`} aria-expanded=${open} onClick=${turn}>…</button>`
        : null
    }
    ${words ? html`<span class="from" id=${wordsId(id)}>${words}</span>` : null}
  </div>`;
}

/** What is read of a field after its name: what is wrong with it, and where its number comes from. */
export function describedBy(id: string, says: string | null, words: string): string | undefined {
  return (
    [says === null ? '' : `${id}-says`, words ? wordsId(id) : ''].filter((one) => one).join(' ') || undefined
  );
}
