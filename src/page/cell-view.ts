/** A cell at rest: its question, the answers in large figures, the drawing, the inputs; the rest one step away. */
import { useRef } from 'preact/hooks';
import type { Hull } from '../boat';
import { answerInWords, type Chart, type Instance, isChoice, onHand, valuesOf, warningsOf } from '../cells';
import type { Drawing } from '../drawing';
import { isIssue, type KindId, wordsOf } from '../measure';
import type { Graph } from '../notebook';
import { Answer } from './answer';
import { type Bench, say, useBench } from './bench';
import { CellChecks } from './cell-checks';
import { CellTable } from './cell-table';
import { ChartView } from './chart-view';
import { Figure } from './figure';
import { html, use } from './html';
import { InputRow } from './input-row';
import { Working } from './working';

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
      <p class="cell-title">${cell.title}${name === cell.id ? '' : html`<span> · ${wordsOf(name)}</span>`}</p>
      <h3 id=${`question-${name}`}>${cell.question}</h3>
    </header>
    <dl class="answers">
      ${cell.answers.map((answer) => use(Answer, { ...answer, name: `${name}.${answer.of}`, key: answer.of }))}
    </dl>
    ${use(InWords, { instance })} ${use(Warnings, { instance })}
    <div class="cell-body">
      ${use(Pictures, { instance })}
      <div class="inputs">
        ${Object.entries(cell.inputs).map(([key, spec]) =>
          use(InputRow, {
            key,
            name: `${name}.${key}`,
            label: spec.label,
            slider: !isChoice(spec) && spec.slider === true,
          }),
        )}
      </div>
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

/** Drawing and chart, both versions; the last good ones stay while a number is missing. */
function Pictures({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { book } = bench;
  const last = useRef<{ drawing?: Drawing; chart?: Chart }>({});
  const first = picturesOf(instance, book.first.value, bench);
  const graph2 = book.second.value;
  const second = graph2 ? picturesOf(instance, graph2, bench) : null;
  if (first) last.current = first;
  const { drawing, chart } = last.current;
  const drawing2 = second?.drawing && drawing && !same(second.drawing, drawing) ? second.drawing : undefined;
  const chart2 = second?.chart && chart && !same(second.chart, chart) ? second.chart : undefined;
  const stale = first === null;
  return html`<div class="pictures">
    ${drawing ? use(Figure, { drawing, second: drawing2, stale }) : null}
    ${chart ? use(ChartView, { chart, second: chart2, stale }) : null}
    ${!drawing && !chart ? html`<p class="no-picture">The drawing waits for the numbers it needs.</p>` : null}
  </div>`;
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

interface PicturesDrawn {
  readonly drawing?: Drawing;
  readonly chart?: Chart;
}

function picturesOf(instance: Instance, graph: Graph, bench: Bench): PicturesDrawn | null {
  const { cell } = instance;
  const values = graph.work((read) => valuesOf(instance, read));
  if (isIssue(values)) return null;
  const on = onHand(cell, values, hullOrNull(graph), sayWith(bench));
  const drawing = cell.draw?.(values as never, on);
  const chart = cell.chart?.(values as never, on);
  return { ...(drawing ? { drawing } : {}), ...(chart ? { chart } : {}) };
}

function hullOrNull(graph: Graph): Hull | null {
  const hull = graph.hull();
  return isIssue(hull) ? null : hull;
}

function sayWith(bench: Bench): (value: number, kind: KindId) => string {
  const shown = bench.shown.value;
  return (value, kind) => say(value, kind, shown);
}
