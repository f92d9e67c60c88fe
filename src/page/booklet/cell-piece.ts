/** A cell in a booklet, in the form of one screen: question, answers, what to mind, drawing, sentence, deciding numbers. */
import type { VNode } from 'preact';
import type { Instance } from '../../cells';
import type { Bench } from '../bench';
import type { Card, CardInput } from '../card/card';
import type { Picture } from '../card/card-picture';
import { headed } from '../card/versions';
import { html } from '../html';
import { coverOf } from '../on-wall/cover';

/** Of the picture, px; it is drawn for hands at the bench and set smaller here. */
const HIGHEST = 420;

export function cellPiece(
  instance: Instance,
  { title, question, answers, words, warnings, cautions, inputs }: Card,
  [picture]: readonly Picture[],
  bench: Bench,
): VNode {
  // A question that waits for a guess keeps its answers to itself on paper too.
  const isCovered = coverOf(bench, instance.name) !== null;
  const deciding = inputs.filter(({ weight }) => weight !== 'grouped');
  return html`<section class="booklet-cell">
    <p class="booklet-title">${title}</p>
    <h3>${question}</h3>
    <dl class="card-answers">
      ${answers.map(
        ({ label, datum, figures }) => html`<div>
          <dt>${label}</dt>
          <dd>
            ${
              isCovered
                ? html`<span class="booklet-blank"></span>`
                : figures.map(
                    ({
                      version,
                      word,
                      text,
                      large,
                      remainder,
                      difference,
                    }) => html`<span class=${`card-figure ${version}`}>
                      ${word ? html`<em>${word}</em>` : null}
                      <b class=${large ? '' : 'wordy'}>${text}</b>
                      ${remainder ? html`<span>${remainder}</span>` : null}
                      ${difference ? html`<span>${difference}</span>` : null}
                    </span>`,
                  )
            }
            <span class="card-datum">${datum}</span>
          </dd>
        </div>`,
      )}
    </dl>
    ${
      isCovered
        ? null
        : html`${warnings.map(
            (said) => html`<p class="card-warning"><b>${said.head}: </b>${headed(said)} ${said.limit}</p>`,
          )}
          ${picture ? html`<div class="booklet-picture">${picture.draw(HIGHEST).node}</div>` : null}
          ${words.map((said) => html`<p>${headed(said)}</p>`)}`
    }
    ${deciding.length > 0 ? html`<ul class="booklet-inputs">${deciding.map(inputLine)}</ul>` : null}
    ${cautions[0] ? html`<p class="card-cautions"><b>Caution: </b>${cautions[0]}</p>` : null}
  </section>`;
}

const inputLine = ({ label, values, from }: CardInput): VNode =>
  html`<li>${label}: <b>${values.map(({ word, text }) => (word ? `${word.toLowerCase()} ${text}` : text)).join(', ')}</b> (${from})</li>`;
