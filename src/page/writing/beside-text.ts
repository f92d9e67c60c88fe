/** The notebook's text with the page beside it: what the caret stands in is marked in the page. */
import type { TargetedEvent } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { NotebookPage } from '../../notebook';
import { piecesOf } from '../../notebook/text/pieces';
import { wordsAt } from '../../notebook/writing/edits';
import { asShown } from '../../notebook/writing/lines';
import { typedOver } from '../../notebook/writing/typed-over';
import { useBench } from '../bench';
import { html, use } from '../html';
import { linesAmiss } from '../notebooks/lines-amiss';
import { wordLinks } from '../word-links';
import { useHeld } from './held';
import { shownPieces } from './piece';
import { askToPlace } from './placing';
import { putAt, showAt } from './put-at';
import { textOf, writeText } from './write';

export function BesideText({ page }: { page: NotebookPage }) {
  const bench = useBench();
  const { id } = page;
  const field = useRef<HTMLTextAreaElement>(null);
  const says = useId();
  const text = textOf(bench, id) ?? '';
  const [draft, setDraft] = useState<string | null>(null);
  const [why, setWhy] = useState('');
  const [caret, setCaret] = useState(0);
  const held = useHeld((typed, run) => {
    const now = textOf(bench, id);
    if (now === undefined) return;
    const refused = writeText(bench, id, typedOver(now, typed), run);
    setWhy(refused ?? '');
    if (refused === null) setDraft(null);
  });
  const words = draft ?? asShown(text);
  const line = words.slice(0, caret).split('\n').length;
  const type = (typed: string) => {
    setDraft(typed);
    held.type(typed);
  };
  const look = () => setCaret(field.current?.selectionStart ?? 0);
  const goTo = (to: number) => {
    if (!field.current) return;
    const from = words
      .split('\n')
      .slice(0, to - 1)
      .join('\n').length;
    const begins = to > 1 ? from + 1 : 0;
    const ends = words.indexOf('\n', begins);
    showAt(field.current, begins, ends < 0 ? words.length : ends);
    // A field brings the caret into view only where the letters are few.
    field.current.scrollTop = (field.current.scrollHeight * (to - 2)) / words.split('\n').length;
    look();
  };
  const place = () => {
    const cells = piecesOf(page).filter(({ first, blocks }) => first <= line && blocks[0]?.type === 'cell');
    const above = cells.at(-1)?.blocks[0];
    const near = above?.type === 'cell' ? above.instance : null;
    askToPlace(bench, page, { inSentence: true, above: near }, (put) => {
      const next = putAt(words, caret, put);
      type(next.text);
      requestAnimationFrame(() => {
        if (field.current) showAt(field.current, next.from, next.to);
        look();
      });
    });
  };
  const amiss = linesAmiss(page, bench);
  const here = page.faults.filter((fault) => fault.line === line);
  return html`<div class="beside-text">
    <div class="text-side">
      <textarea
        ref=${field}
        aria-label="Text of this notebook, in Markdown"
        aria-describedby=${says}
        spellcheck=${true}
        value=${words}
        onInput=${({ currentTarget }: TargetedEvent<HTMLTextAreaElement>) => {
          type(currentTarget.value);
          look();
        }}
        onSelect=${look}
        onKeyUp=${look}
        onClick=${look}
        onBlur=${held.flush}
      ></textarea>
      <div class="text-foot">
        <span class="at-line">Line ${line} of ${words.split('\n').length}</span>
        <button type="button" class="quiet" aria-haspopup="dialog" onClick=${place}>Place a number or a block</button>
      </div>
      <p class="says" id=${says} role="status">
        ${why} ${here.map(({ says: sentence }) => html`<span>${sentence} </span>`)}
        ${amiss.length === 0 ? null : 'Something can’t be used on'}
        ${amiss.slice(0, TOLD).map((at) => html` <button type="button" class="jump" onClick=${() => goTo(at)}>line ${at}</button>`)}
      </p>
    </div>
    ${use(PageSide, { page, text, line })}
  </div>`;
}
/** As many as the head of a notebook tells. */
const TOLD = 12;

function PageSide({ page, text, line }: { page: NotebookPage; text: string; line: number }) {
  const lit = useRef<HTMLDivElement>(null);
  const shown = shownPieces(piecesOf(page), wordLinks.value(page).blocks, page.id, (piece) =>
    wordsAt(text, piece),
  );
  const at = shown.findIndex(({ first, last }) => first <= line && line <= last);
  useLayoutEffect(() => lit.current?.scrollIntoView({ block: 'nearest' }), [at]);
  return html`<article class="prose page-side">
    ${shown.map((piece, i) => html`<div key=${piece.key} class=${i === at ? 'piece caret-here' : 'piece'} ref=${i === at ? lit : null}>${piece.shown}</div>`)}
  </article>`;
}
