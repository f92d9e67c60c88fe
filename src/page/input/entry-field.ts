/**
 * The field of an entry. The text typed is kept letter by letter while the field has the focus;
 * what it says goes to the graph at once. A text that can't be read stays, with the reason under it.
 */
import type { TargetedEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { isIssue, write } from '../../measure';
import { useBench } from '../bench';
import { html, use } from '../html';
import type { FieldProps } from './choice-field';
import { entryFrom, entryOf, fieldValue, keyFrom, moneyIn, restText } from './entry-text';
import { holdInPlace } from './hold-in-place';
import { keypadFor, LetterKeys } from './keypad';
import { goToNext } from './next-field';
import { TO_ROW_KEYS } from './row-keys';
import { Slider } from './slider';
import { StepKey } from './step-key';
import { takeAll, useTakeAll } from './take-all';

/** Marks that a Page key goes at once. */
const PAGE = 10;

export function EntryField({ id, quantity, says, slider }: FieldProps & { readonly slider: boolean }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const { name, kind, meaning } = quantity;
  const field = useRef<HTMLInputElement>(null);
  const taking = useTakeAll(field);
  const [draft, setDraft] = useState<string | null>(null);
  const [letters, setLetters] = useState(false);
  /** The count of steps before typing began, by which Escape knows whether there is something to take back. */
  const before = useRef<number | null>(null);
  const value = fieldValue(graph, name);
  const number = typeof value === 'number' ? value : null;
  const text = draft ?? restText(graph, quantity, shown.value);
  const said = number === null ? '' : write(number, kind, shown.value).text;

  const change = (entry: string | null, run: string, at: Element | null) => {
    const act = () => book.write({ [name]: entry }, `${run} ${name}`);
    if (at) holdInPlace(at, act);
    else act();
  };
  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const typed = event.currentTarget.value;
    before.current ??= book.step.peek();
    setDraft(typed);
    // All prices are in the money that the builder types.
    const money = moneyIn(typed, kind);
    if (money !== undefined && money !== shown.peek().money) shown.value = { ...shown.peek(), money };
    change(entryFrom(typed, quantity, book.inHand.peek(), shown.peek()), 'type', event.currentTarget);
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
  const step = (count: number, at: Element | null) => {
    const now = fieldValue(book.inHand.peek(), name);
    if (isIssue(now) || typeof now === 'string') return;
    before.current = null;
    setDraft(null);
    change(entryOf(keyFrom(now, count, quantity, shown.peek()), kind, shown.peek()), 'step', at);
  };
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: 1,
    ArrowDown: -1,
    PageUp: PAGE,
    PageDown: -PAGE,
  };
  const key = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Enter') {
      leave();
      // What can't be read is mended first; where no field comes after, what was typed stands selected.
      if (says === null && field.current && goToNext(field.current)) return;
    }
    if (event.key === 'Escape') takeBack();
    const count = steps[event.key];
    if (count !== undefined) {
      event.preventDefault();
      step(count, field.current);
    } else if (event.key !== 'Enter' && event.key !== 'Escape') return;
    takeAll(field);
  };
  const stepKey = (sign: '−' | '+') =>
    use(StepKey, {
      sign,
      label: `${sign === '+' ? 'more' : 'less'}: ${meaning}`,
      disabled: number === null,
      act: (at) => step(sign === '+' ? 1 : -1, at),
    });
  return html`<div class="entry">
    <div class="entry-line">
      ${stepKey('−')}
      <input
        id=${id}
        ref=${field}
        type="text"
        inputmode=${letters ? 'text' : keypadFor(quantity, text, shown.value)}
        autocomplete="off"
        autocapitalize="off"
        spellcheck=${false}
        value=${text}
        aria-invalid=${says === null ? undefined : 'true'}
        aria-describedby=${says === null ? undefined : `${id}-says`}
        aria-keyshortcuts=${TO_ROW_KEYS}
        ...${taking}
        onInput=${type}
        onBlur=${() => {
          taking.onBlur();
          leave();
        }}
        onKeyDown=${key}
      />
      ${stepKey('+')}
    </div>
    ${use(LetterKeys, { letters, set: setLetters, field, pad: keypadFor(quantity, text, shown.value) })}
    ${said && unspaced(said) !== unspaced(text) ? html`<p class="means">= ${said}</p>` : null}
    ${slider ? use(Slider, { quantity, set: slide }) : null}
  </div>`;

  function slide(next: number) {
    before.current = null;
    setDraft(null);
    change(entryOf(next, kind, shown.peek()), 'slide', null);
  }
}

const unspaced = (text: string) => text.replaceAll(/\s+/g, '');
