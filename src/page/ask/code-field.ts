/** A text to be shown, copied or sent by whoever made it, with a square code of it where one holds it. */
import { useId, useRef, useState } from 'preact/hooks';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { bytesOf, DENSE, MOST_IN_CODE, SquareCode } from './square-code';

export interface CodeFieldProps {
  readonly label: string;
  readonly text: string;
  /** What it is, for who doesn't see the square code. */
  readonly what: string;
  /** What is said where no square code holds it. */
  readonly tooLong: string;
}

export function CodeField({ label, text, what, tooLong }: CodeFieldProps) {
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const [told, tell] = useState('');
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      tell('It is copied.');
    } catch {
      tell('This browser does not let the page copy. The text is marked in its field: copy it from there.');
    }
  };
  const bytes = bytesOf(text);
  return html`<div class="code-field">
    <label for=${id}>${label}, ${text.length} letters</label>
    <textarea id=${id} ref=${field} readonly rows="3" value=${text} onFocus=${() => field.current?.select()}></textarea>
    <p><button type="button" onClick=${copy}>Copy</button> <span role="status">${told}</span></p>
    ${
      bytes > MOST_IN_CODE
        ? html`<p class="notice">No square code holds so much: the largest holds ${MOST_IN_CODE} letters. ${tooLong}</p>`
        : use(Disclosure, {
            summary: 'As a square code',
            className: 'fold',
            inside: () =>
              html`<div>
                ${bytes > DENSE ? html`<p>It is dense: hold the phone near and still, or print it large.</p>` : null}
                ${use(SquareCode, { text, what })}
              </div>`,
          })
    }
  </div>`;
}
