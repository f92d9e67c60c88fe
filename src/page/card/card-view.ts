/** A card set out in its place: on one page, or on two where a table with all the rest finds no room on the first. */
import type { VNode } from 'preact';
import { html } from '../html';
import type { Card, CardFigure, CardInput } from './card';
import type { CardTable } from './card-table';
import type { Said } from './versions';

/** How much is given up for room, from nothing to all that may be. */
export type Closeness = 'roomy' | 'close' | 'tight' | 'tightest';

export interface CardLayout {
  readonly closeness: Closeness;
  /** The same of table, inputs and sources. */
  readonly reference: Closeness;
  /** What stands on a second page. */
  readonly overleaf: 'nothing' | 'table' | 'reference' | 'reference and picture';
  /** The rest runs on at the picture's side. */
  readonly beside: boolean;
  /** Into how many the table's columns are parted, one part below the other. */
  readonly tableParts: number;
  /** Rows of the table keep to one line each. */
  readonly tableLines: boolean;
  readonly pictures: readonly VNode[];
  /** Why there is no picture; empty where there is one. */
  readonly noPicture: string;
}

export function cardView(card: Card, layout: CardLayout): VNode {
  const { closeness, overleaf } = layout;
  const picture = html`<div class=${layout.beside ? 'card-pictures beside' : 'card-pictures'}>
    ${layout.pictures} ${layout.noPicture ? html`<p>${layout.noPicture}</p>` : null}
  </div>`;
  const table = card.table && tableView(card.table, layout);
  const used = [
    inputsView(card.inputs, layout.reference),
    html`<p class="card-sources"><b>Sources: </b>${card.sources}.</p>`,
  ];
  return html`<div>
    <section class="card-page" data-closeness=${closeness}>
      ${headView(card)}
      <h1>${card.question}</h1>
      ${answersView(card)}
      ${card.words.map((said) => html`<p class="card-words">${headed(said)}</p>`)}
      ${card.warnings.map(
        (said) => html`<p class="card-warning"><b>${said.head}: </b>${headed(said)} (${said.limit})</p>`,
      )}
      ${overleaf === 'reference and picture' ? null : picture}
      ${cautionsView(card, closeness)}
      ${overleaf === 'nothing' ? table : html`<p class="card-overleaf">${overleafWords(card, overleaf)}</p>`}
      ${overleaf === 'nothing' || overleaf === 'table' ? used : null}
    </section>
    ${
      overleaf === 'nothing'
        ? null
        : html`<section class="card-page" data-closeness=${layout.reference}>
            ${headView(card, ', second page')}
            ${overleaf === 'reference and picture' ? picture : null}
            ${table} ${overleaf === 'table' ? null : used}
          </section>`
    }
  </div>`;
}

function overleafWords({ table }: Card, overleaf: CardLayout['overleaf']): string {
  const things = [
    overleaf === 'reference and picture' ? ['the drawing'] : [],
    table ? [`the table (${table.caption})`] : [],
    overleaf === 'table' ? [] : ['the inputs used', 'the sources'],
  ].flat();
  return `On the second page: ${things.join(', ')}.`;
}

function headView({ boat, versions, title, day }: Card, page = ''): VNode {
  return html`<p class="card-head"><b>${boat}</b>, ${versions} · <b>${title}</b>${page} · ${day}</p>`;
}

/** A version's word before its text, where there are two. */
const headed = ({ word, text }: Said) => (word ? [html`<em>${word}: </em>`, text] : text);

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

function cautionsView({ cautions }: Card, closeness: Closeness): VNode | null {
  if (cautions.length === 0) return null;
  if (closeness !== 'roomy') return html`<p class="card-cautions"><b>Caution: </b>${cautions.join(' ')}</p>`;
  return html`<ul class="card-cautions">${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`;
}

/** A row for each input while there is room; then the usual ones run on in a line, then all; at last those seldom touched are counted. */
function inputsView(inputs: readonly CardInput[], closeness: Closeness): VNode {
  const rows = inputs.filter(({ foremost }) => closeness === 'roomy' || (closeness === 'close' && foremost));
  const rest = inputs.filter((input) => !rows.includes(input));
  const left = closeness === 'tightest' ? rest.filter(({ foremost }) => !foremost) : [];
  const running = STANDINGS.map((standing) => ({
    standing,
    of: rest.filter((input) => input.standing === standing && !left.includes(input)),
  }));
  return html`<div class="card-inputs">
    ${rows.length > 0 ? html`<ul>${rows.map(rowView)}</ul>` : null}
    ${running.map(({ standing, of }) => (of.length > 0 ? runningView(RUNNING[standing], of, closeness !== 'tightest') : null))}
    ${left.length > 0 ? html`<p>${left.length} more inputs stand at what the boat gives or at usual values.</p>` : null}
  </div>`;
}

const rowView = ({ label, values, from }: CardInput): VNode =>
  html`<li>${label}: <b>${valuesOf(values)}</b> (${from})</li>`;

const runningView = (head: string, inputs: readonly CardInput[], withFrom: boolean): VNode =>
  html`<p>
    <i>${head}: </i>${inputs.map(({ label, values, from, standing }, index) => [
      index > 0 ? '; ' : '',
      `${label} `,
      html`<b>${valuesOf(values)}</b>`,
      standing === 'built' || (withFrom && standing === 'linked') ? ` (${from})` : '',
    ])}.
  </p>`;

const STANDINGS = ['built', 'written', 'linked', 'usual'] as const;
const RUNNING = {
  built: 'As built',
  written: 'Written here',
  linked: 'From the boat and other cells',
  usual: 'At usual values',
};

const valuesOf = (values: readonly Said[]): string =>
  values.map(({ word, text }) => (word ? `${word.toLowerCase()} ${text}` : text)).join(', ');

function tableView(table: CardTable, { tableParts, tableLines }: CardLayout): VNode {
  const each = Math.ceil(table.columns.length / tableParts);
  const starts = Array.from({ length: Math.ceil(table.columns.length / each) }, (_, part) => part * each);
  return html`<div class=${tableLines ? 'card-table lines' : 'card-table'}>
    <p><b>${table.caption}</b></p>
    ${starts.map((start) => columnsView(table, start, start + each))}
  </div>`;
}

function columnsView({ over, columns, rows }: CardTable, start: number, end: number): VNode {
  return html`<table>
    <thead>
      <tr>
        <th scope="col">${over}</th>
        ${columns.slice(start, end).map((label) => html`<th scope="col">${label}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ head, inHand, cells }) => html`<tr class=${inHand ? 'in-hand' : ''}>
          <th scope="row">${head}${inHand ? ', in hand' : ''}</th>
          ${cells
            .slice(start, end)
            .map((said) => html`<td>${said.map((one) => html`<span>${headed(one)}</span>`)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
