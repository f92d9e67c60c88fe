/**
 * The field of an entry. The text typed is kept letter by letter while the field has the focus;
 * what it says goes to the graph at once. A text that can't be read stays, with the reason under it.
 */
import type { TargetedEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { useBench } from '../bench';
import { html, use } from '../html';
import type { FieldProps } from './choice-field';
import { entryFrom, moneyIn, restText } from './entry-text';
import { holdInPlace } from './hold-in-place';
import { keypadFor, LetterKeys } from './keypad';
import { goToNext } from './next-field';
import { stepEntry } from './step-entry';
import { takeAll, useTakeAll } from './take-all';

/** Marks that a key goes at once. */
const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

export function EntryField({ id, quantity, says, describedBy, shortcut }: FieldProps) {
  const bench = useBench();
  const { book, shown } = bench;
  const { name, kind } = quantity;
  const field = useRef<HTMLInputElement>(null);
  const taking = useTakeAll(field);
  const [draft, setDraft] = useState<string | null>(null);
  const [letters, setLetters] = useState(false);
  /** The count of steps before typing began, by which Escape knows whether there is something to take back. */
  const before = useRef<number | null>(null);
  const text = draft ?? restText(book.inHand.value, quantity, shown.value);
  const pad = keypadFor(quantity, text, shown.value);

  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const typed = event.currentTarget.value;
    before.current ??= book.step.peek();
    setDraft(typed);
    // All prices are in the money that the builder types.
    const money = moneyIn(typed, kind);
    if (money !== undefined && money !== shown.peek().money) shown.value = { ...shown.peek(), money };
    const entry = entryFrom(typed, quantity, book.inHand.peek(), shown.peek());
    holdInPlace(event.currentTarget, () => book.write({ [name]: entry }, `type ${name}`));
  };
  const leave = () => {
    before.current = null;
    setDraft(null);
    book.settle();
  };
  const takeBack = () => {
    if (before.current !== null && before.current !== book.step.peek()) book.undo();
    leave();
  };
  const key = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Enter') {
      leave();
      // What can't be read is mended first; where no field comes after, what was typed stands selected.
      if (says === null && field.current && goToNext(field.current)) return;
    }
    if (event.key === 'Escape') takeBack();
    const count = STEPS[event.key];
    if (count !== undefined) {
      event.preventDefault();
      before.current = null;
      setDraft(null);
      stepEntry(bench, quantity, count, field.current);
    } else if (event.key !== 'Enter' && event.key !== 'Escape') return;
    takeAll(field);
  };
  return html`<div class="entry-line" style=${{ '--letters': text.length }}>
    <input
      id=${id}
      ref=${field}
      type="text"
      inputmode=${letters ? 'text' : pad}
      autocomplete="off"
      autocapitalize="off"
      spellcheck=${false}
      value=${text}
      aria-invalid=${says === null ? undefined : 'true'}
      aria-describedby=${describedBy}
      aria-keyshortcuts=${shortcut}
      ...${taking}
      onInput=${type}
      onBlur=${() => {
        taking.onBlur();
        leave();
      }}
      onKeyDown=${key}
    />
    ${use(LetterKeys, { letters, set: setLetters, field, pad })}
  </div>`;
}
