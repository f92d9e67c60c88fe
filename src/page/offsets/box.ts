/**
 * One box of the grid. It is the same entry as on the sheet of its station: what is typed goes to the graph
 * letter by letter, an empty box goes back to the plan's number, and what can't be read stays and says why.
 */
import { useComputed } from '@preact/signals';
import type { TargetedClipboardEvent, TargetedEvent } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Given } from '../../boat';
import { halfWritten, readOffset, writeOffset } from '../../boat/table/offset-notation';
import { isIssue, plainShown } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { keypadFor } from '../input/keypad';
import { type GridState } from './grid-state';
import { boxAt, boxFrom, nextBox, strideOf } from './moving';

export interface BoxProps {
  readonly state: GridState;
  /** The offset it shows, and with it those of other edges that stand equally far forward. */
  readonly name: string;
  readonly names: readonly string[];
  readonly label: string;
  readonly row: number;
  readonly column: number;
  /** Takes a block of cells pasted into the box; false where the text is for this box alone. */
  readonly paste: (text: string) => boolean;
}

export function Box({ state, name, names, label, row, column, paste }: BoxProps) {
  const { book } = useBench();
  const graph = book.inHand.value;
  const notation = state.notation.value;
  const input = useRef<HTMLInputElement>(null);
  const [draft, setDraft] = useState<string | null>(null);
  const [inLetters, setInLetters] = useState(false);
  const [focused, setFocused] = useState(false);
  /** The count of steps before typing began, by which Escape knows whether there is something to take back. */
  const before = useRef<number | null>(null);
  const isStop = useComputed(() => state.stop.value === name);
  const fault = useComputed(() => state.faultOf(name));

  const quantity = graph.quantity(name) as Given | undefined;
  const entry = graph.entry(name);
  const value = graph.designed(name);
  const written = typeof value === 'number' ? writeOffset(value, notation) : null;
  const isFormula = entry?.written === true && entry.names.length > 0;
  const rest =
    state.refused.value.get(name)?.text ??
    (written && !(focused && isFormula) ? written.text : (entry?.text ?? ''));
  const says = fault.value;
  // The text of a formula takes the place of its number, and what was taken back that of the letters typed.
  useLayoutEffect(() => {
    if (focused && draft === null && !inLetters) input.current?.select();
  }, [focused, draft === null, isFormula]);

  const refuse = (text: string | null, why = '') => {
    const next = new Map(state.refused.peek());
    for (const one of names) {
      if (text === null) next.delete(one);
      else next.set(one, { text, says: why });
    }
    if (text !== null || next.size < state.refused.peek().size) state.refused.value = next;
  };
  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const text = event.currentTarget.value;
    before.current ??= book.step.peek();
    setDraft(text);
    setInLetters(true);
    const half = halfWritten(text, notation);
    if (half) {
      // Taken for a difference it would be a number, and a wrong one: the last good number stays.
      book.write(Object.fromEntries(names.map((one) => [one, entryBefore.current[one] ?? null])), run);
      refuse(text, half.issue);
      return;
    }
    refuse(null);
    const kept = text.trim() === '' ? null : keptText(text);
    book.write(Object.fromEntries(names.map((one) => [one, kept])), run);
  };
  const run = `type ${name}`;
  const entryBefore = useRef<Record<string, string | null>>({});
  const keptText = (text: string): string => {
    const now = book.inHand.peek();
    const reading = readOffset(text, {
      notation,
      field: (now.quantity(name) as Given | undefined)?.meaning ?? label,
      kindOf: (one) => now.quantity(one)?.kind,
      known: () => now.names,
    });
    return isIssue(reading) ? text : reading.text;
  };
  const leave = () => {
    before.current = null;
    setDraft(null);
    setInLetters(false);
    book.settle();
  };
  const enter = () => {
    state.here.value = name;
    setFocused(true);
    const now = book.inHand.peek();
    entryBefore.current = Object.fromEntries(
      names.map((one) => {
        const stands = now.entry(one);
        return [one, stands?.written ? stands.text : null];
      }),
    );
    input.current?.select();
  };
  const takeBack = () => {
    if (before.current !== null && before.current !== book.step.peek()) book.undo();
    refuse(null);
    leave();
  };
  const key = (event: KeyboardEvent) => {
    const table = input.current?.closest('table');
    if (!table) return;
    if (event.key === 'F2') {
      setInLetters(!inLetters);
      input.current?.setSelectionRange(rest.length, rest.length);
      return;
    }
    if (event.key === 'Escape') {
      takeBack();
      return;
    }
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && draft === null) {
      event.preventDefault();
      if (event.shiftKey) book.redo();
      else book.undo();
      return;
    }
    const to = event.key === 'Tab' ? byTab(table, event.shiftKey) : byKey(table, event);
    if (to === undefined) return;
    event.preventDefault();
    leave();
    (to ?? input.current)?.focus();
  };
  /** After typing Tab goes on to the next box; else it leaves the table, as it leaves any grid. */
  const byTab = (table: Element, back: boolean) =>
    draft === null ? undefined : (nextBox(table, row, column, back) ?? undefined);
  const byKey = (table: Element, event: KeyboardEvent) => {
    const stride = strideOf(event, inLetters);
    if (!stride) return undefined;
    const toCorner = event.ctrlKey && stride.far && stride.right !== 0;
    const from = toCorner ? boxFrom(table, row, column, { down: stride.right, right: 0, far: true }) : null;
    const [r = row] = from?.closest<HTMLElement>('[data-at]')?.dataset['at']?.split(' ').map(Number) ?? [];
    return boxFrom(table, r, column, stride) ?? boxAt(table, r, column);
  };
  const click = () => {
    // A second click into the box is for its letters.
    if (focused && draft === null && input.current?.selectionStart === input.current?.selectionEnd)
      setInLetters(true);
  };
  const pasted = (event: TargetedClipboardEvent<HTMLInputElement>) => {
    if (!paste(event.clipboardData?.getData('text/plain') ?? '')) return;
    event.preventDefault();
    leave();
  };
  const built = entry?.built;
  const title = [
    isFormula ? `= ${entry.text}` : '',
    written && !written.whole ? 'shown rounded; kept exactly' : '',
  ].filter((one) => one !== '');
  const described = [says ? `says-${name}` : '', built === undefined ? '' : `held-${name}`].join(' ').trim();
  return html`<input
    ref=${input}
    type="text"
    autocomplete="off"
    autocapitalize="off"
    spellcheck=${false}
    aria-label=${label}
    inputmode=${quantity ? keypadFor(quantity, rest, { ...plainShown, length: notation === 'mm' ? 'mm' : 'feet' }) : 'text'}
    tabindex=${isStop.value ? 0 : -1}
    class=${`box${says === null ? ' missing' : ''}${entry?.written && quantity?.preset ? ' written' : ''}${isFormula ? ' formula' : ''}${built === undefined ? '' : ' built'}`}
    title=${title.length > 0 ? title.join('; ') : undefined}
    value=${draft ?? rest}
    aria-invalid=${says ? 'true' : undefined}
    aria-describedby=${described === '' ? undefined : described}
    onInput=${type}
    onFocus=${enter}
    onBlur=${() => {
      setFocused(false);
      leave();
    }}
    onKeyDown=${key}
    onClick=${click}
    onPaste=${pasted}
  />`;
}
