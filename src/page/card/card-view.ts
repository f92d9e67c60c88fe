/** One page of a card set out in its place: all of the card, or one part of it. */
import type { VNode } from 'preact';
import { html } from '../html';
import type { Card, CardFigure } from './card';
import type { Closeness, Rung } from './ladder';
import { type TableSetting, tableView } from './table-view';
import { usedView } from './used-view';
import { headed } from './versions';

/** What stands on one page. */
export interface CardPage extends Pick<Card, 'words' | 'warnings' | 'cautions'> {
  /** The first page has the question and the answers. */
  readonly page: 'first' | 'second' | 'third';
  readonly pictured: boolean;
  /** Why there is no picture; empty where there is one. */
  readonly noPicture: string;
  readonly tabled: boolean;
  /** The inputs and the sources. */
  readonly used: boolean;
  /** What stands on the second page: `the drawing`. */
  readonly overleaf: readonly string[];
}

/** Text runs on at the picture's side. */
export const isBeside = ({ picture }: Rung): boolean => picture === 'beside' || picture === 'narrow';

export interface PageSetting {
  readonly table: TableSetting;
  /** How many inputs are told by name, if the rung counts some. */
  readonly told: number;
  readonly pictures: readonly VNode[];
}

export function pageView(
  card: Card,
  part: CardPage,
  rung: Rung,
  { table, told, pictures }: PageSetting,
): VNode {
  const { closeness } = rung;
  const beside = isBeside(rung) && pictures.length > 0;
  return html`<section class="card-page" data-closeness=${closeness}>
    ${headView(card, part.page === 'first' ? '' : `, ${part.page} page`)}
    ${part.page === 'first' ? [html`<h1>${card.question}</h1>`, answersView(card)] : null}
    ${part.words.map((said) => html`<p class="card-words">${headed(said)}</p>`)}
    ${part.warnings.map(
      (said) => html`<p class="card-warning"><b>${said.head}: </b>${headed(said)} ${said.limit}</p>`,
    )}
    ${pictures.length > 0 ? html`<div class=${beside ? 'card-pictures beside' : 'card-pictures'}>${pictures}</div>` : null}
    ${part.noPicture ? html`<p>${part.noPicture}</p>` : null}
    ${cautionsView(part.cautions, closeness)}
    ${part.tabled && card.table ? tableView(card.table, table) : null}
    ${part.used ? usedView(card.inputs, card.sources, rung, told) : null}
    ${part.overleaf.length > 0 ? html`<p class="card-overleaf"><b>Goes on overleaf: </b>${part.overleaf.join(', ')}.</p>` : null}
  </section>`;
}

export function headView({ boat, versions, title, day }: Card, page: string): VNode {
  return html`<p class="card-head"><b>${boat}</b>${versions ? `, ${versions}` : ''} · <b>${title}</b>${page} · ${day}</p>`;
}

/** Who has more to say of where it is measured gets more of the width. */
function answersView({ answers }: Card): VNode {
  return html`<dl class="card-answers">
    ${answers.map(
      ({ label, datum, figures }) => html`<div style=${{ flexGrow: datum.length }}>
        <dt>${label}</dt>
        <dd>
          ${figures.map((figure) => figureView(figure, figures.length > 1))}
          <span class="card-datum">${figures.length === 1 && figures[0]?.remainder ? `${figures[0].remainder}; ` : ''}${datum}</span>
        </dd>
      </div>`,
    )}
  </dl>`;
}

/** What the mark leaves out stands in the line below where there is one version only. */
function figureView(
  { version, word, text, large, remainder, difference }: CardFigure,
  ofTwo: boolean,
): VNode {
  return html`<span class=${`card-figure ${version}`}>
    ${word ? html`<em>${word}</em>` : null}
    ${large ? html`<b>${text}</b>` : html`<b class="wordy">${text}</b>`}
    ${ofTwo && remainder ? html`<span>${remainder}</span>` : null}
    ${difference ? html`<span>${difference}</span>` : null}
  </span>`;
}

function cautionsView(cautions: readonly string[], closeness: Closeness): VNode | null {
  if (cautions.length === 0) return null;
  if (closeness !== 'roomy') return html`<p class="card-cautions"><b>Caution: </b>${cautions.join(' ')}</p>`;
  return html`<ul class="card-cautions">${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`;
}
