/** Puts what was chosen into a text that is being typed. */
import type { Put } from './placing';

/** The text then, and which of its letters are chosen. */
export interface PutIn {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** Within a sentence at the caret itself; what stands by itself, below the line of the caret. */
export function putAt(text: string, caret: number, put: Put): PutIn {
  if (put.inline) {
    const at = caret + put.text.length;
    return { text: text.slice(0, caret) + put.text + text.slice(caret), from: at, to: at };
  }
  const end = text.indexOf('\n', caret);
  const before = text.slice(0, end < 0 ? text.length : end).trimEnd();
  const after = end < 0 ? '' : text.slice(end).replace(/^(?:[ \t]*\n)+/, '');
  const gap = before === '' ? '' : '\n\n';
  const begins = before.length + gap.length;
  return {
    text: before + gap + put.text + (after === '' ? '' : `\n\n${after}`),
    from: begins + put.from,
    to: begins + put.to,
  };
}

/** Takes the focus to some letters of a field. */
export function showAt(field: HTMLTextAreaElement, from: number, to: number): void {
  field.focus();
  field.setSelectionRange(from, to);
}
