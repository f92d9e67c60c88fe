/** A sentence of one's own, once the answer has been seen. */
import { useId, useState } from 'preact/hooks';
import { html } from '../html';
import type { AskProps } from './ask-words';
import { useSaid } from './lesson-in-hand';

export function Sentence({ ask, showing }: AskProps) {
  const id = useId();
  const { said, put, settle } = useSaid(showing.notebook, ask.name);
  const [says, tell] = useState('');
  const type = (event: Event) =>
    tell(put({ sentence: (event.currentTarget as HTMLTextAreaElement).value }, 'sentence') ?? '');
  const asks =
    ask.sentence.length > 0
      ? showing.blocks(ask.sentence)
      : html`<p>In a sentence of your own: why is it so?</p>`;
  return html`<div class="ask-field">
    <div id=${id} class="ask-label">${asks}</div>
    <textarea rows="2" aria-labelledby=${id} value=${said.sentence} onInput=${type} onBlur=${settle}></textarea>
    <p class="says" role="alert">${says}</p>
  </div>`;
}
