/** A cell at rest, on one screen: question, answers, what stops, the drawing beside the deciding fields, the sentence, the first caution; the rest a press away. */
import { useRef } from 'preact/hooks';
import { answerInWords, answersOf, type Instance } from '../../cells';
import { isIssue, wordsOf } from '../../measure';
import { type Bench, BenchContext, tiedWith, useBench } from '../bench';
import { html, use } from '../html';
import { cover, coverOf } from '../on-wall/cover';
import { later } from '../later';
import type { Which } from '../picture/pictures-of';
import { capital } from '../words';
import { Answer } from '../answer/answer';
import { Warnings } from '../answer/warnings';
import { useSeen } from '../seen';
import { views } from './views';

const after = async () => (await import('./after-answers')).afterAnswers;

const CellKeys = later(async () => (await after()).CellKeys, 'cell-keys');
const CellInputs = later(async () => (await import('./cell-inputs')).CellInputs, 'inputs-to-come');
const OfferKeys = later(async () => (await import('./offer-keys')).OfferKeys, 'offer-keys');
const SearchRow = later(async () => (await import('./search-row')).SearchRow, 'search-row');
const Pictures = later(async () => (await import('./pictures-in-hand')).PicturesInHand, 'pictures');
const Cautions = later(async () => (await after()).Cautions, 'cautions');
const Folds = later(async () => (await after()).Folds, 'folds');
const InSight = later(async () => (await after()).InSight, 'in-sight');

/** @param under whether a heading of the second level stands above it */
export function CellView({ instance, under }: { instance: Instance; under: boolean }) {
  const host = useRef<HTMLElement>(null);
  const { cell, name } = instance;
  const bench = useSeen(host, useBench(), name);
  const take = () => {
    bench.inHand.value = name;
  };
  const isCovered = coverOf(bench, name) !== null;
  // Its shop card and the bench show the answers.
  const isAsked = isCovered && !bench.wall.value;
  const view = html`<section
    ref=${host}
    class="cell"
    id=${`cell-${name}`}
    data-cell=${name}
    aria-label=${name === cell.id ? cell.question : `${cell.question} ${capital(wordsOf(name))}`}
    onFocusIn=${take}
    onPointerDown=${take}
  >
    ${isCovered ? null : use(InSight, { instance })}
    <header>
      <p class="cell-title">${cell.title}</p>
      <${under ? 'h3' : 'h2'} class="question" id=${`question-${name}`} tabindex="-1">${cell.question}<//>
      ${isAsked ? null : use(CellKeys, { instance })}
    </header>
    ${use(Answers, { instance })}
    ${cover(
      bench,
      name,
      'minding',
      'what to mind',
      () => html`<div class="minding">
        ${use(Warnings, { instance })} ${cell.offers ? use(OfferKeys, { instance }) : null}
      </div>`,
    )}
    ${cell.search ? cover(bench, name, 'search', 'the search', () => use(SearchRow, { instance })) : null}
    <div class=${cell.wide ? 'cell-body wide' : 'cell-body'}>
      ${use(CellInputs, { instance })}
      ${cover(bench, name, 'picture', 'the drawing', () => use(Pictures, { instance, which: inView(cell) }))}
      ${cover(bench, name, 'sentence', 'the sentence', () => use(InWords, { instance }))}
    </div>
    ${viewOf(instance, bench)}
    ${use(Cautions, { cautions: cell.cautions })}
    ${cover(bench, name, 'working', 'the working', () => use(Folds, { instance }))}
  </section>`;
  return use(BenchContext.Provider, { value: bench }, view);
}

function Answers({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const list = coverOf(bench, instance.name) ? 'div' : 'dl';
  return html`<${list} class="answers">
    ${answersOf(instance, (by) => graph.workOut(by)).map((answer) =>
      cover(
        bench,
        instance.name,
        answer.of,
        'the answer',
        () => use(Answer, { ...answer, name: `${instance.name}.${answer.of}`, key: answer.of }),
        answer.label,
      ),
    )}
  <//>`;
}

/** Beside a drawing there is no room for a graph too: it is a press away. */
const inView = ({ draw }: Instance['cell']): readonly Which[] => (draw ? DRAWING : CHART);
const DRAWING = ['drawing'] as const;
const CHART = ['chart'] as const;

function viewOf(instance: Instance, bench: Bench) {
  const view = views[instance.cell.view ?? ''];
  return view && !view.folded
    ? cover(bench, instance.name, 'view', 'the view', () => use(view.show, { instance }))
    : null;
}

/** The sentence that sums the answer up; read out only for the cell in hand, or an edit would set all of them talking. */
function InWords({ instance }: { instance: Instance }) {
  const bench = useBench();
  const words = bench.book.inHand.value.workOut((read) => answerInWords(instance, read, tiedWith(bench)));
  const live = bench.inHand.value === instance.name ? 'polite' : 'off';
  return html`<p class="in-words" aria-live=${live}>${isIssue(words) ? `${capital(words.issue)}.` : words}</p>`;
}
