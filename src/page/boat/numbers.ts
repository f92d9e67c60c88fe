/** Numbers that follow from others, as a list: what it is and how much, both versions. */
import { isIssue, writeDifference } from '../../measure';
import { optionsFor, sayOf, sayValue, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { capital } from '../words';

export function Numbers({ names }: { names: readonly string[] }) {
  return html`<dl class="numbers plain">${names.map((name) => use(NumberLine, { key: name, name }))}</dl>`;
}

function NumberLine({ name }: { name: string }) {
  const bench = useBench();
  const { book, shown } = bench;
  const graph = book.first.value;
  const quantity = graph.quantity(name);
  if (!quantity) return null;
  const { kind } = quantity;
  const asked = bench.asked.value;
  if (asked?.hides(name))
    return html`<div data-quantity=${name} tabindex="-1"><dt>${capital(quantity.meaning)}</dt><dd>${asked.blank(name)}</dd></div>`;
  const first = graph.value(name);
  const second = book.second.value?.value(name);
  const options = optionsFor(graph, name);
  const differs = second !== undefined && second !== first && !(isIssue(first) && isIssue(second));
  return html`<div data-quantity=${name} tabindex="-1">
    <dt>${capital(quantity.meaning)}</dt>
    <dd>
      ${isIssue(first) ? `no value: ${first.issue}` : sayValue(first, kind, shown.value, options)}
      ${
        differs
          ? html`<span class="other second">${versionWords.second}: ${sayValue(second, kind, shown.value, options)}${
              typeof first === 'number' && typeof second === 'number'
                ? ` (${writeDifference(second - first, kind, shown.value)})`
                : ''
            }</span>`
          : null
      }
      ${use(AsDesigned, { name })}
    </dd>
  </div>`;
}

/** What the number would be, had nothing been measured or cut; where it is the same, nothing is said. */
function AsDesigned({ name }: { name: string }) {
  const { book, shown } = useBench();
  const { measured, cut } = book.asBuilt.value;
  // The design as a whole is worked out only where it may be another.
  if (Object.keys(measured).length === 0 && Object.keys(cut).length === 0) return null;
  const graph = book.inHand.value;
  const { kind } = graph.quantity(name)!; // the line has looked it up
  const value = graph.value(name);
  const designed = graph.designed(name);
  const say = (of: typeof value) => (isIssue(of) ? 'no value' : sayOf(graph, name, of, shown.value));
  if (say(value) === say(designed)) return null;
  return html`<span class="as-designed">designed: ${say(designed)}${
    typeof value === 'number' && typeof designed === 'number'
      ? ` (${writeDifference(designed - value, kind, shown.value)})`
      : ''
  }</span>`;
}
