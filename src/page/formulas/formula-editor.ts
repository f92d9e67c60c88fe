/** The lines of a formula as text, to change where they stand: each letter goes to the results at once, and Undo takes it back. */
import type { RefObject, TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import { LONGEST_KEPT, MINE, writeLines } from '../../notebook/formulas/place-formulas';
import { useBench } from '../bench';
import { html, use } from '../html';
import { NamesHelp } from './names-help';

export interface FormulaEditorProps {
  readonly name: string;
  readonly text: RefObject<HTMLTextAreaElement | null>;
  readonly lines: string;
  /** Those that the notebook gives it. */
  readonly given: string;
  readonly onDone: () => void;
}

export function FormulaEditor({ name, text, lines, given, onDone }: FormulaEditorProps) {
  const { book } = useBench();
  const id = useId();
  const [full, setFull] = useState(false);
  const put = (next: string) => {
    setFull(next.length > LONGEST_KEPT);
    if (next.length > LONGEST_KEPT) return;
    const isGiven = next === given && name !== MINE;
    const isNone = name === MINE && next.trim() === '';
    book.open(writeLines(book.state.peek(), name, isGiven || isNone ? null : next), `lines of ${name}`);
  };
  const putIn = (word: string) => {
    const area = text.current;
    if (!area) return;
    area.setRangeText(word, area.selectionStart, area.selectionEnd, 'end');
    area.focus();
    put(area.value);
  };
  const done = () => {
    book.settle();
    onDone();
  };
  return html`<div class="formula-editor">
    <label for=${id}>Lines: a name, “=” and a sum; after a bar, what it is, and the unit</label>
    <textarea
      id=${id}
      ref=${text}
      rows=${Math.min(Math.max(lines.split('\n').length + 1, 4), 16)}
      value=${lines}
      placeholder="share = hull.beam / hull.length | her beam over her length | in %"
      spellcheck=${false}
      autocapitalize="off"
      autocomplete="off"
      aria-describedby=${`${id}-says`}
      onInput=${(event: TargetedEvent<HTMLTextAreaElement>) => put(event.currentTarget.value)}
      onBlur=${() => book.settle()}
    ></textarea>
    <p class="says" id=${`${id}-says`} role="alert">${full ? `What was typed last is not kept: ${LONGEST_KEPT} characters is the most.` : ''}</p>
    ${use(NamesHelp, { onName: putIn })}
    <p class="keys">
      <button type="button" onClick=${done}>Done</button>
      ${
        given !== '' && lines !== given
          ? html`<button type="button" class="quiet" onClick=${() => put(given)}>Back to the notebook’s lines</button>`
          : null
      }
    </p>
  </div>`;
}
