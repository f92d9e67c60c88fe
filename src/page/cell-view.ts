/** A cell at rest: its question, the answers in large figures, the drawing, the inputs; the rest one step away. */
import { answerInWords, type Instance, isChoice, warningsOf } from '../cells';
import { isIssue } from '../measure';
import { Answer } from './answer';
import { sayWith, useBench } from './bench';
import { CellChecks } from './cell-checks';
import { CellTable } from './cell-table';
import { html, use } from './html';
import { InputRow } from './input-row';
import { later } from './later';

const Working = later(async () => (await import('./working')).Working, 'working');
const Pictures = later(async () => (await import('./pictures')).Pictures, 'pictures');

export function CellView({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { cell, name } = instance;
  const take = () => {
    bench.inHand.value = name;
  };
  return html`<section
    class="cell"
    id=${`cell-${name}`}
    data-cell=${name}
    aria-labelledby=${`question-${name}`}
    onFocusIn=${take}
    onPointerDown=${take}
  >
    <header>
      <p class="cell-title">${cell.title}</p>
      <h3 id=${`question-${name}`}>${cell.question}</h3>
    </header>
    <dl class="answers">
      ${cell.answers.map((answer) => use(Answer, { ...answer, name: `${name}.${answer.of}`, key: answer.of }))}
    </dl>
    ${use(InWords, { instance })} ${use(Warnings, { instance })}
    <div class="cell-body">
      ${use(CellInputs, { instance })}
      ${use(Pictures, { instance })}
    </div>
    ${cell.table ? use(CellTable, { instance, table: cell.table }) : null}
    ${cell.cautions.length > 0 ? html`<ul class="cautions" aria-label="Cautions">${cell.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>` : null}
    ${use(Working, { instance })}
    <details class="sources">
      <summary>Sources and checks</summary>
      <ul>
        ${cell.sources.map((source) => html`<li>${source.text} <em>(${source.known})</em></li>`)}
      </ul>
      ${use(CellChecks, { cell: cell.id })}
    </details>
  </section>`;
}

/** What is typed often stands in sight; what a builder seldom touches is one step away. */
function CellInputs({ instance }: { instance: Instance }) {
  const all = Object.entries(instance.cell.inputs);
  const rows = (inputs: typeof all) => html`<div class="inputs">
    ${inputs.map(([key, spec]) =>
      use(InputRow, {
        key,
        name: `${instance.name}.${key}`,
        label: spec.label,
        slider: !isChoice(spec) && spec.slider === true,
      }),
    )}
  </div>`;
  const seldom = all.filter(([, spec]) => spec.seldom);
  return html`<div>
    ${rows(all.filter(([, spec]) => !spec.seldom))}
    ${
      seldom.length > 0
        ? html`<details class="more-inputs"><summary>${seldom.length === 1 ? 'One more input' : `${seldom.length} more inputs`}</summary>${rows(seldom)}</details>`
        : null
    }
  </div>`;
}

/** Polite to a screen reader: the sentence that sums the answer up. */
function InWords({ instance }: { instance: Instance }) {
  const bench = useBench();
  const words = bench.book.inHand.value.work((read) => answerInWords(instance, read, sayWith(bench)));
  return html`<p class="in-words" role="status">${isIssue(words) ? `Waits for ${words.waitsFor ?? 'a number'}: ${words.issue}.` : words}</p>`;
}

function Warnings({ instance }: { instance: Instance }) {
  const bench = useBench();
  const applies = warningsOf(instance, bench.book.inHand.value.work, sayWith(bench));
  return html`<div class="warnings" role="status">
    ${applies.map(
      ({ warning, says }) => html`<p class=${`warning ${warning.weight}`}>
        <b>${warning.weight === 'stop' ? 'Stop: ' : 'Mind: '}</b>${says} <span class="limit">${warning.limit}</span>
      </p>`,
    )}
  </div>`;
}
