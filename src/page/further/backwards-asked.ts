/** From a result that is wanted back to the number that brings it: asked, told in sentences, and written or tried by a key. */
import { useId, useState } from 'preact/hooks';
import type { Instance } from '../../cells';
import type { Aim } from '../../kernel';
import { type Issue, isIssue, read } from '../../measure';
import { moversOf } from '../../notebook/sweep/movers';
import { comesToInWords, type FoundBack, foundBackwards, foundInWords } from '../../notebook/sweep/backwards';
import type { Backwards } from '../../notebook/sweep/wanted';
import { valueIn } from '../../notebook/sweep/span';
import { type Bench, sayWith, useBench } from '../bench';
import { TryKey } from '../try-key';
import { html, use } from '../html';
import { capital } from '../words';
import { firstAsked, groupsOn, pickOf, textOf } from './asked-of';
import { resultsOf } from './named';
import { useSlices } from '../use-slices';
import './further.css';

const ways: Readonly<Record<Aim, string>> = {
  exactly: 'exactly',
  'at most': 'at most',
  'at least': 'at least',
};

interface Asked {
  readonly result: string;
  readonly by: string;
  readonly wanted: Aim;
  readonly text: string;
}

export function BackwardsAsked({ instance }: { instance: Instance }) {
  const id = useId();
  const bench = useBench();
  const { book, shown } = bench;
  const graph = book.inHand.value;
  const [asked, ask] = useState<Asked>(() => {
    const { result, on } = firstAsked(instance, graph) ?? { result: '', on: '' };
    return { result, by: on, wanted: 'exactly', text: '' };
  });
  const all = moversOf(graph, asked.result);
  const by = all.some(({ name }) => name === asked.by) ? asked.by : (all[0]?.name ?? '');
  const question = questionOf({ ...asked, by }, bench);
  const of = graph.quantity(asked.result);
  const now = graph.value(asked.result);
  const leave = () => {
    if (!of) return;
    // A bare number keeps the unit in which it was meant.
    const reading = read(asked.text, { kind: of.kind, shown: shown.peek(), field: of.meaning });
    if (!isIssue(reading)) ask({ ...asked, text: reading.text });
  };
  return html`<div class="further-part">
    <div class="further-fields">
      ${pickOf({ id: `${id}-result`, label: 'I want', groups: resultsOf(instance, graph), value: asked.result, pick: (result) => ask({ ...asked, result, text: '' }) })}
      <div class="further-field">
        <label for=${`${id}-way`}>to be</label>
        <select
          id=${`${id}-way`}
          value=${asked.wanted}
          onChange=${(event: Event) => ask({ ...asked, wanted: (event.currentTarget as HTMLSelectElement).value as Aim })}
        >
          ${Object.entries(ways).map(([way, says]) => html`<option value=${way} selected=${way === asked.wanted}>${says}</option>`)}
        </select>
      </div>
      ${textOf({
        id: `${id}-value`,
        label: 'what is wanted',
        value: asked.text,
        placeholder: typeof now === 'number' && of ? `now ${sayWith(bench)(now, of.kind)}` : '',
        isAmiss: isIssue(question),
        says: `${id}-says`,
        type: (text) => ask({ ...asked, text }),
        leave,
      })}
      ${pickOf({ id: `${id}-by`, label: 'by changing', groups: groupsOn(instance, all, bench), value: by, pick: (next) => ask({ ...asked, by: next }) })}
    </div>
    ${isIssue(question) ? html`<p class="says" id=${`${id}-says`} role="alert">${capital(question.issue)}.</p>` : null}
    ${question && !isIssue(question) ? use(Answer, { asked: question, key: by }) : null}
  </div>`;
}

/** @returns null while nothing is wanted yet */
function questionOf({ result, by, wanted, text }: Asked, { book, shown }: Bench): Backwards | Issue | null {
  const graph = book.inHand.value;
  const of = graph.quantity(result);
  if (!of || text.trim() === '') return null;
  const on = moversOf(graph, result).find(({ name }) => name === by);
  if (!on) return { issue: `${of.meaning} hangs on no number that could be changed` };
  const value = valueIn(text, of, graph, shown.value);
  return isIssue(value) ? value : { result, kind: of.kind, by: on, wanted, value };
}

function Answer({ asked }: { asked: Backwards }) {
  const bench = useBench();
  const { book, shown, findings } = bench;
  const graph = book.inHand.value;
  const { result, by, wanted, value } = asked;
  const { entries, second, asBuilt, table } = book.state.value;
  const on = [
    graph,
    entries,
    second,
    asBuilt,
    table,
    shown.value,
    findings.count.value,
    result,
    by.name,
    wanted,
    value,
  ];
  const { made, done } = useSlices(function* (): Generator<number, { found: FoundBack; asked: Backwards }> {
    return { found: yield* foundBackwards(graph, asked, shown.value), asked };
  }, on);
  if (!made) return html`<p class="working-out" role="status">Working it out …</p>`;
  const say = sayWith(bench);
  const { given, name } = made.asked.by;
  return html`<div class=${done === null ? 'found' : 'found stale'}>
    <div role="status">${foundInWords(made.found, made.asked, say).map((sentence) => html`<p>${sentence}</p>`)}</div>
    <ul class="found-answers">
      ${made.found.writes.map((one) => {
        const { text } = one;
        const nearly = comesToInWords(one, made.asked, say);
        const what = `${given.label ?? given.meaning} ${text}`;
        return html`<li>
          <span>${capital(what)}${nearly === '' ? '' : html` <span class="nearly">${nearly}</span>`}</span>
          ${
            one.value === made.asked.by.value
              ? html`<span class="stands">stands so now</span>`
              : html`<button type="button" aria-label=${`Write it: ${what}`} onClick=${() => {
                  book.settle();
                  book.write({ [name]: text });
                }}>Write it</button>${use(TryKey, { changes: { [name]: text }, what })}`
          }
        </li>`;
      })}
    </ul>
    ${
      graph.entry(name)?.built === undefined
        ? null
        : html`<p class="note">It is measured: what is written here changes the design, and not what stands in the shed.</p>`
    }
    <p class="note">Looked for at some eighty places from end to end, and closely where it bends. What comes and goes between two of them is not seen.</p>
  </div>`;
}
