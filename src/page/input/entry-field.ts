/** The field of an entry, with its keys. A text that can't be read stays, with the reason under it. */
import type { TargetedEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { useBench } from '../bench';
import { html, use } from '../html';
import type { FieldProps } from './choice-field';
import { useDraft } from './draft';
import { keypadFor, LetterKeys } from './keypad';
import { goToNext } from './next-field';
import { stepEntry } from './step-entry';
import { takeAll, useTakeAll } from './take-all';

/** Marks that a key goes at once. */
const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

export function EntryField({ id, quantity, says, describedBy, shortcut }: FieldProps) {
  const bench = useBench();
  const { shown } = bench;
  const field = useRef<HTMLInputElement>(null);
  const taking = useTakeAll(field);
  const { text, type, drop, leave, takeBack } = useDraft(quantity);
  const [letters, setLetters] = useState(false);
  const pad = keypadFor(quantity, text, shown.value);

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
      drop();
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
      onInput=${(event: TargetedEvent<HTMLInputElement>) => type(event.currentTarget.value, event.currentTarget)}
      onBlur=${() => {
        taking.onBlur();
        leave();
      }}
      onKeyDown=${key}
    />
    ${use(LetterKeys, { letters, set: setLetters, field, pad })}
  </div>`;
}
