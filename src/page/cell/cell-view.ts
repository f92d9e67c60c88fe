/** A cell at rest: its question, the answers in large figures, the drawing, the inputs; the rest one step away. */
import { answerInWords, answersOf, type Instance, warningsOf } from '../../cells';
import { isIssue, wordsOf } from '../../measure';
import { tiedWith, useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { later } from '../later';
import { capital } from '../words';
import { Answer } from './answer';
import { views } from './views';

const CellKeys = later(async () => (await import('./cell-keys')).CellKeys, 'cell-keys');
const CellInputs = later(async () => (await import('./cell-inputs')).CellInputs, 'inputs-to-come');
const CellTable = later(async () => (await import('./table')).CellTable, 'table-to-come');
const Offers = later(async () => (await import('./offers')).Offers, 'offers');
const SearchRow = later(async () => (await import('./search-row')).SearchRow, 'search-row');
const Working = later(async () => (await import('./working')).Working, 'working');
const Checks = later(async () => (await import('./checks')).Checks, 'checks');
const Pictures = later(async () => (await import('../picture/pictures')).Pictures, 'pictures');

/** @param under whether a heading of the second level stands above it */
export function CellView({ instance, under }: { instance: Instance; under: boolean }) {
  const bench = useBench();
  const { cell, name } = instance;
  const take = () => {
    bench.inHand.value = name;
  };
  return html`<section
    class="cell"
    id=${`cell-${name}`}
    data-cell=${name}
    aria-label=${name === cell.id ? cell.question : `${cell.question} ${capital(wordsOf(name))}`}
    onFocusIn=${take}
    onPointerDown=${take}
  >
    <header>
      <p class="cell-title">${cell.title}</p>
      <${under ? 'h3' : 'h2'} class="question" id=${`question-${name}`} tabindex="-1">${cell.question}<//>
      ${use(CellKeys, { instance })}
    </header>
    ${use(Answers, { instance })} ${use(InWords, { instance })} ${use(Warnings, { instance })}
    ${cell.search ? use(SearchRow, { instance }) : null}
    <div class=${cell.wide ? 'cell-body wide' : 'cell-body'}>
      ${use(CellInputs, { instance })}
      ${use(Pictures, { instance })}
    </div>
    ${viewOf(instance)}
    ${cell.offers ? use(Offers, { instance }) : null}
    ${cell.table ? use(CellTable, { instance, table: cell.table }) : null}
    ${
      cell.cautions.length > 0
        ? html`<ul class="cautions" aria-label="Cautions">${cell.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`
        : null
    }
    ${use(Disclosure, {
      summary: 'Working',
      className: 'working',
      holds: `${name}.`,
      inside: () => use(Working, { instance }),
    })}
    ${use(Disclosure, { summary: 'Sources and checks', className: 'sources', inside: () => sourcesOf(instance) })}
  </section>`;
}

function Answers({ instance }: { instance: Instance }) {
  const graph = useBench().book.inHand.value;
  return html`<dl class="answers">
    ${answersOf(instance, (by) => graph.workOut(by)).map((answer) =>
      use(Answer, { ...answer, name: `${instance.name}.${answer.of}`, key: answer.of }),
    )}
  </dl>`;
}

function viewOf(instance: Instance) {
  const view = views[instance.cell.view ?? ''];
  return view ? use(view, { instance }) : null;
}

function sourcesOf({ cell, name }: Instance) {
  return [
    html`<ul>
      ${cell.sources.map((source) => html`<li>${source.text} <em>(${source.known})</em></li>`)}
    </ul>`,
    use(Checks, { cell: cell.id, of: wordsOf(name) }),
  ];
}

/** The sentence that sums the answer up; read out only for the cell in hand, or an edit would set all of them talking. */
function InWords({ instance }: { instance: Instance }) {
  const bench = useBench();
  const words = bench.book.inHand.value.workOut((read) => answerInWords(instance, read, tiedWith(bench)));
  const live = bench.inHand.value === instance.name ? 'polite' : 'off';
  return html`<p class="in-words" aria-live=${live}>${isIssue(words) ? `${capital(words.issue)}.` : words}</p>`;
}

function Warnings({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const applies = warningsOf(instance, (by) => graph.workOut(by), tiedWith(bench));
  return html`<div class="warnings" role="status">
    ${applies.map(
      ({ warning, says }) => html`<p class=${`warning ${warning.weight}`}>
        <b>${warning.weight === 'stop' ? 'Stop: ' : 'Mind: '}</b>${says} <span class="limit">${warning.limit}</span>
      </p>`,
    )}
  </div>`;
}
