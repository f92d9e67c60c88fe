/** A large figure: what it is, how much, from which datum and face; both versions and the difference. */
import { isIssue, type KindId, write, writeDifference } from '../measure';
import type { Value } from '../boat';
import { graphOf, useBench, versionWords } from './bench';
import { html, use } from './html';

export interface AnswerProps {
  /** Name of the quantity. */
  readonly name: string;
  readonly label: string;
  readonly from: string;
  readonly tolerance?: string;
}

export function Answer({ name, label, from, tolerance }: AnswerProps) {
  const { book } = useBench();
  const kind = book.first.value.quantity(name)?.kind ?? 'number';
  const first = graphOf(book, 'first').value(name);
  const second = book.second.value?.value(name);
  const two = second !== undefined;
  return html`<div class=${`answer ${two ? 'two' : ''}`} data-quantity=${name}>
    <dt>${label}</dt>
    <dd>
      ${use(BigFigure, { value: first, kind, word: two ? versionWords.first : '' })}
      ${two ? use(BigFigure, { value: second, kind, word: versionWords.second, than: first }) : null}
      <span class="datum">${from}${tolerance ? `, within ${tolerance}` : ''}</span>
    </dd>
  </div>`;
}

interface BigFigureProps {
  readonly value: Value;
  readonly kind: KindId;
  readonly word: string;
  /** The first version's value, for the difference. */
  readonly than?: Value;
}

function BigFigure({ value, kind, word, than }: BigFigureProps) {
  const { shown } = useBench();
  const name = word ? html`<span class="version-word">${word}</span>` : null;
  const place = than === undefined ? 'first' : 'second';
  if (isIssue(value)) {
    return html`<span class=${`figure waits ${place}`}>${name}<span class="no-value">waits for ${waitsFor(value)}</span></span>`;
  }
  if (typeof value === 'string') return html`<span class=${`figure ${place}`}>${name}<b>${value}</b></span>`;
  const written = write(value, kind, shown.value);
  const differs = typeof than === 'number' && than !== value;
  return html`<span class=${`figure ${place}`}>
    ${name}<b>${written.text}</b>
    ${written.remainder ? html`<i class="remainder">${written.remainder}</i>` : null}
    ${differs ? html`<span class="difference">${writeDifference(value - than, kind, shown.value)}</span>` : null}
    ${typeof than === 'number' && !differs ? html`<span class="difference">the same</span>` : null}
  </span>`;
}

function waitsFor(value: { issue: string; waitsFor?: string }): string {
  return value.waitsFor ? `${value.waitsFor}: ${value.issue}` : `a number it can use: ${value.issue}`;
}
