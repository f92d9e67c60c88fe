/**
 * The keypad a phone brings up. Digits do for most entries, but a formula, a fraction or a minus
 * needs letters and signs: one key beside the field changes between the two.
 */
import type { Given } from '../../boat';
import type { Shown } from '../../measure';
import { html } from '../html';

export type Keypad = 'numeric' | 'decimal' | 'text';

export function keypadFor({ kind, min }: Given, text: string, shown: Shown): Keypad {
  const isPlain = /^[\d\s.,]*\s*[\p{L}°%/²³²]*$/u.test(text);
  const mayBeNegative = min === undefined || /^\s*-/.test(min);
  const inFractions = kind === 'length' && shown.length !== 'mm';
  if (!isPlain || mayBeNegative || inFractions || kind === 'slope') return 'text';
  return kind === 'count' ? 'numeric' : 'decimal';
}

interface LetterKeysProps {
  readonly letters: boolean;
  readonly set: (letters: boolean) => void;
  readonly field: { readonly current: HTMLInputElement | null };
  readonly pad: Keypad;
}

/** Shown on touch screens only, while the field has the focus. */
export function LetterKeys({ letters, set, field, pad }: LetterKeysProps) {
  if (pad === 'text') return null;
  const turn = () => {
    set(!letters);
    const at = field.current;
    if (!at) return;
    // The keypad changes only when the field is entered anew; the caret stays where it was.
    const [from, to] = [at.selectionStart, at.selectionEnd];
    at.blur();
    requestAnimationFrame(() => {
      at.focus();
      at.setSelectionRange(from, to);
    });
  };
  return html`<button type="button" class="letter-keys" tabindex="-1" aria-label=${letters ? 'Number keys' : 'Letter keys'} onPointerDown=${(event: Event) => event.preventDefault()} onClick=${turn}>
    ${letters ? '123' : 'abc'}
  </button>`;
}
