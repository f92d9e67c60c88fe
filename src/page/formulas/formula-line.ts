/** One line of a formula: what it comes to; or what is amiss in it, with the place marked in the line as it is typed. */
import { isIssue } from '../../measure';
import type { LineRead } from '../../notebook/formulas/formula-quantities';
import type { Amiss } from '../../notebook/formulas/lines';
import { Answer } from '../answer/answer';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { nearTo } from '../notebooks/unknown-name';
import { capital } from '../words';

export interface FormulaLineProps {
  readonly line: LineRead;
  /** Whether names are offered in the place of one that is not there: to look for them takes long. */
  readonly near: boolean;
  readonly onGo: (line: LineRead) => void;
}

export function FormulaLineView({ line, near, onGo }: FormulaLineProps) {
  const bench = useBench();
  const spot = spotOf(line, bench, near);
  if (!spot) return use(Answer, { name: line.full, label: capital(line.label), from: line.full });
  const { text, at, full, label } = line;
  return html`<div class="answer amiss" data-quantity=${full || undefined}>
    <dt><span class="label">${capital(label) || `Line ${at + 1}`}</span> <span class="datum">${full}</span></dt>
    <dd>
      ${text === '' ? null : html`<code class="as-typed">${text.slice(0, spot.from)}<mark>${text.slice(spot.from, spot.to) || ' '}</mark>${text.slice(spot.to)}</code>`}
      <p class="says">${capital(spot.says)}.${
        text === ''
          ? null
          : html` <button type="button" class="jump" onClick=${() => onGo({ ...line, spot })}>Line ${at + 1}, character ${spot.from + 1}</button>`
      }</p>
    </dd>
  </div>`;
}

/** What is amiss in the line itself: in its form, or in what it comes to with the numbers as they are. */
function spotOf(line: LineRead, bench: Bench, near: boolean): Amiss | undefined {
  const { full, spot, own, named, from } = line;
  if (full === '') return spot;
  const graph = bench.book.inHand.value;
  const value = graph.value(full);
  if (!isIssue(value)) return undefined;
  // A name that is not there is told with those that are near.
  if (spot)
    return line.missing === undefined || !near ? spot : { ...spot, says: nearTo(line.missing, graph) };
  if (value.waitsFor !== undefined || !own) return undefined;
  if (value.circle) return { says: value.issue, from, to: from + line.sum.length };
  const missing = own.names.some((name) => isIssue(graph.value(named?.get(name) ?? name)));
  if (missing) return undefined;
  const place = own.placeOf((name) => graph.value(named?.get(name) ?? name) as number | string);
  return { says: value.issue, from: from + place.from, to: from + place.to };
}
