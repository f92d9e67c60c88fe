/** Prints the notebook as a worksheet: blank, part-filled or full, one for each of a list of words where its numbers may change. */
import { useId, useState } from 'preact/hooks';
import { LONGEST_SEED } from '../../boat';
import { useBench } from '../bench';
import { html } from '../html';
import { bareOf } from '../bare';
import type { FootProps } from '../plate';
import type { Filled } from './worksheet';

const MOST_SHEETS = 60;

const keys: readonly (readonly [Filled, string])[] = [
  ['blank', 'Blank'],
  ['part', 'Part-filled'],
  ['full', 'Full, the key'],
];

export function Worksheets({ page, blocks }: FootProps) {
  const id = useId();
  const bench = bareOf(useBench());
  const [names, setNames] = useState('');
  const [told, tell] = useState('');
  const hasSeed = page.blocks.some(({ type }) => type === 'seed');
  const words = names
    .split('\n')
    .map((name) => name.trim().slice(0, LONGEST_SEED))
    .filter((name) => name !== '');
  const print = (filled: Filled) => {
    tell('');
    if (words.length > MOST_SHEETS) {
      tell(`${MOST_SHEETS} sheets at a time are the most.`);
      return;
    }
    import('./worksheet')
      .then(({ printWorksheets }) => printWorksheets(bench, { page, blocks }, filled, words))
      .then(
        (why) => tell(why),
        () => tell('The worksheet could not be made ready. Load the page again when you are online.'),
      );
  };
  return html`<div>
    <p>From the same text as the page: <em>blank</em> has lines to write on, <em>part-filled</em> has hints and the steps that the notebook gives, <em>full</em> is the key.</p>
    ${
      hasSeed
        ? html`<label for=${id}>Names, one a line: a sheet for each, with numbers of its own; empty, and there is one with the notebook’s</label>
            <textarea id=${id} rows="3" value=${names} onInput=${(event: Event) => setNames((event.currentTarget as HTMLTextAreaElement).value)}></textarea>`
        : null
    }
    <p class="ask-keys">${keys.map(([filled, words]) => html`<button type="button" key=${filled} onClick=${() => print(filled)}>${words}</button>`)}</p>
    <p role="status">${told}</p>
  </div>`;
}
