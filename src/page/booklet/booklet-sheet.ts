/** What goes into a booklet: the paper, and the shop cards and patterns at its end. */
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { PaperName } from '../../drawing/export/full-size';
import { useBench } from '../bench';
import { bookletOpen } from '../booklet-open';
import { html } from '../html';
import { openText } from '../library';
import { coverOf } from '../on-wall/cover';
import { cellTitle } from '../log/stages';
import './booklet.css';

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];

export function BookletSheet() {
  const bench = useBench();
  const id = useId();
  const page = openText();
  const [chosen, choose] = useState<PaperName | null>(null);
  const [cards, setCards] = useState<readonly string[]>([]);
  const [patterns, setPatterns] = useState<readonly string[]>([]);
  const [told, tell] = useState('');
  if (!page) return null;
  const paper = chosen ?? (bench.shown.value.length === 'mm' ? 'A4' : 'Letter');
  const names = [...new Set(page.places.map(({ instance }) => instance))].filter((name) =>
    bench.instances.value.has(name),
  );
  // A card, and a pattern, would tell what a question waits for.
  const open = names.filter((name) => coverOf(bench, name) === null);
  const withPatterns = open.filter((name) => bench.instances.value.get(name)?.cell.patterns);
  const stillOpen = (of: readonly string[]) => of.filter((name) => open.includes(name));
  const close = () => {
    bookletOpen.value = false;
    document.getElementById('notebook-title')?.focus();
  };
  const make = () => {
    tell('The pages are being set out …');
    import('./booklet')
      .then(({ printBooklet }) =>
        printBooklet(page, bench, { paper, cards: stillOpen(cards), patterns: stillOpen(patterns) }),
      )
      .then(() => tell(''))
      .catch(() => tell('The booklet could not be made ready. Load the page again when you are online.'));
  };
  const list = (
    legend: string,
    of: readonly string[],
    ticked: readonly string[],
    set: (names: readonly string[]) => void,
  ) =>
    of.length === 0
      ? null
      : html`<fieldset>
          <legend>${legend}</legend>
          ${of.map(
            (name) => html`<label key=${name}>
              <input type="checkbox" class="tick" checked=${ticked.includes(name)} onChange=${({ currentTarget }: TargetedEvent<HTMLInputElement>) => set(of.filter((one) => (one === name ? currentTarget.checked : ticked.includes(one))))} />
              <span>${cellTitle(name, bench)}</span>
            </label>`,
          )}
        </fieldset>`;
  return html`<section class="boat-sheet own-boats booklet-asks" aria-labelledby="booklet-title">
    <button type="button" class="close-sheet" aria-label="Close the booklet" onClick=${close}>Close</button>
    <h2 id="booklet-title" tabindex="-1">A booklet of ${page.title}</h2>
    <p>Title, contents with page numbers, the text and every calculator as it stands now. At the end, if you tick them, shop cards to take to the bench and patterns at full size.</p>
    <p class="pick">
      <label for=${id}>Paper</label>
      <select id=${id} value=${paper} onChange=${(event: TargetedEvent<HTMLSelectElement>) => choose(PAPERS.find((one) => one === event.currentTarget.value) ?? null)}>
        ${PAPERS.map((one) => html`<option value=${one} selected=${one === paper}>${one}</option>`)}
      </select>
    </p>
    ${list('Shop cards', open, cards, setCards)} ${list('Patterns at full size', withPatterns, patterns, setPatterns)}
    ${open.length < names.length ? html`<p>What a question still waits for is left blank, and has no card.</p>` : null}
    <p>Print it at 100 %, with no margins of the printer’s own: the pages have theirs.</p>
    <p class="keys"><button type="button" onClick=${make}>Print the booklet</button></p>
    <p role="status">${told}</p>
  </section>`;
}
