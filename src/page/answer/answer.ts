/** A large figure: what it is, how much, from which datum and face; both versions and the difference. */
import { isIssue, type KindId, write, writeDifference } from '../../measure';
import type { Value } from '../../boat';
import { optionsFor, sayValue, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { rangeAsked } from '../matters/range-asked';
import { within } from '../within';
import { WaitsFor } from './waits-for';

export interface AnswerProps {
  /** Name of the quantity. */
  readonly name: string;
  readonly label: string;
  readonly from: string;
  readonly tolerance?: string;
}

export function Answer({ name, label, from, tolerance }: AnswerProps) {
  const { book, shown } = useBench();
  const graph = book.first.value;
  const kind = graph.quantity(name)?.kind ?? 'number';
  const first = graph.value(name);
  const second = book.second.value?.value(name);
  const two = second !== undefined;
  return html`<div class=${two ? 'answer two' : 'answer'} data-quantity=${name}>
    <dt>
      <span class="label">${label}</span> <span class="datum">${from}${tolerance ? `, within ${within(tolerance, kind, shown.value)}` : ''}</span>
    </dt>
    <dd>
      ${use(BigFigure, { name, value: first, kind, word: two ? versionWords.first : '' })}
      ${two ? use(BigFigure, { name, value: second, kind, word: versionWords.second, than: first }) : null}
    </dd>
  </div>`;
}

interface BigFigureProps {
  readonly name: string;
  readonly value: Value;
  readonly kind: KindId;
  readonly word: string;
  /** The first version's value, for the difference. */
  readonly than?: Value;
}

function BigFigure({ name, value, kind, word, than }: BigFigureProps) {
  const { book, shown } = useBench();
  const head = word ? html`<span class="version-word">${word}</span>` : null;
  const place = than === undefined ? 'first' : 'second';
  if (isIssue(value)) {
    return html`<span class=${`figure waits ${place}`}>${head}<span class="no-value">${use(WaitsFor, { why: value })}</span></span>`;
  }
  if (typeof value === 'string') {
    const text = sayValue(value, kind, shown.value, optionsFor(book.first.value, name));
    return html`<span class=${`figure ${place}`}>${head}<b class="wordy">${text}</b></span>`;
  }
  const written = write(value, kind, shown.value, book.first.value.mannerOf(name));
  return html`<span class=${`figure ${place}`}>
    ${head}<b>${written.text}</b>
    ${written.remainder ? html`<i class="remainder">${written.remainder}</i>` : null}
    ${place === 'first' && rangeAsked.value.has(name) ? html`<i class="remainder">${rangeAsked.value.get(name)}</i>` : null}
    ${typeof than === 'number' ? html`<span class="difference">${difference(value, than, kind)}</span>` : null}
  </span>`;

  function difference(is: number, was: number, of: KindId): string {
    return is === was ? 'the same' : writeDifference(is - was, of, shown.value);
  }
}
