/** One input: label, field, what is wrong with it, where the value comes from, and the other version's value. */
import { useId } from 'preact/hooks';
import type { Given, Value } from '../../boat';
import { isIssue } from '../../measure';
import { optionsFor, sayValue, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { capital, waitsFor } from '../words';
import { ChoiceField } from './choice-field';
import { EntryField } from './entry-field';
import { Provenance } from './provenance';

export interface InputRowProps {
  /** Name of a given quantity. */
  readonly name: string;
  readonly label: string;
  /** Offers a slider between the quantity's limits. */
  readonly slider?: boolean;
  /** Where the value comes from that holds until another is written; the quantity's own source where not given. */
  readonly usual?: string;
}

export function InputRow({ name, label, slider = false, usual }: InputRowProps) {
  const bench = useBench();
  const id = useId();
  const graph = bench.book.inHand.value;
  const quantity = graph.quantity(name) as Given | undefined;
  const entry = graph.entry(name);
  if (!quantity || !entry) return null;
  const value = graph.value(name);
  const own = isIssue(value) && value.waitsFor === undefined ? value.issue : null;
  const waits = isIssue(value) && own === null ? `waits for ${waitsFor(bench, value)}: ${value.issue}` : null;
  const says = own ?? waits;
  const state = `${own ? ' wrong' : ''}${entry.written ? ' written' : ''}`;
  return html`<div class=${`input${state}`} data-quantity=${name}>
    <label for=${id}>${label}</label>
    ${
      quantity.kind === 'choice'
        ? use(ChoiceField, { id, quantity, says })
        : use(EntryField, { id, quantity, says, slider })
    }
    ${says === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${capital(says)}.</p>`}
    ${use(Provenance, { name, ...(usual === undefined ? {} : { usual }) })}
    ${use(OtherValue, { name })}
  </div>`;
}

/** The other version's value, where there are two and they differ. */
function OtherValue({ name }: { name: string }) {
  const { book, other, shown } = useBench();
  if (!other.value) return null;
  const { graph, version } = other.value;
  const value = graph.value(name);
  const quantity = graph.quantity(name);
  if (!quantity || same(value, book.inHand.value.value(name))) return null;
  const text = sayValue(value, quantity.kind, shown.value, optionsFor(graph, name));
  return html`<p class=${`other ${version}`}>${versionWords[version]}: ${text}</p>`;
}

/** Issues of two graphs are never one object; what they say is. */
function same(a: Value, b: Value): boolean {
  return a === b || (isIssue(a) && isIssue(b) && a.issue === b.issue);
}
