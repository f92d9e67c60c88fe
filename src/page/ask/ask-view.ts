/** A question: the guess is written first, then the answer is uncovered, then a sentence of one's own is written. */
import { Fragment } from 'preact';
import { useId } from 'preact/hooks';
import { isIssue, type Issue } from '../../measure';
import { keyTo, type Key } from '../../notebook/lesson/key';
import { gap } from '../../notebook/lesson/judge';
import { useBench } from '../bench';
import { html, use } from '../html';
import { bareOf } from '../bare';
import { isAllThere } from '../library';
import { answerWords, type AskProps, guessWords } from './ask-words';
import { askPlace } from '../asks';
import { Guess } from './guess';
import { useSaid } from './lesson-in-hand';
import { Sentence } from './sentence';
import { Steps } from './steps';
import './ask.css';

export function AskView({ ask, showing }: AskProps) {
  const bench = bareOf(useBench());
  const id = useId();
  const wall = bench.wall.value;
  const key = keyTo(ask.answer, bench.book.first.value);
  // What is not there yet may still come.
  if (isIssue(key) && !isAllThere()) return html`<section class="ask" aria-busy="true"></section>`;
  return html`<section class="ask" id=${askPlace(ask.name)} aria-labelledby=${id}>
    <div class="ask-question" id=${id}>${showing.blocks(ask.question)}</div>
    ${use(Hints, { ask, showing })}
    ${ask.steps.length > 0 ? use(Steps, { ask, showing }) : null}
    ${
      wall
        ? use(wall.Plate, {
            instance: askPlace(ask.name),
            part: 'answer',
            what: 'the answer',
            inside: () => use(Shown, { ask, showing, answer: key }),
          })
        : use(AtDesk, { ask, showing, answer: key })
    }
  </section>`;
}

interface WithAnswer extends AskProps {
  readonly answer: Key | Issue;
}

function AtDesk({ ask, showing, answer }: WithAnswer) {
  const { said, put, beginAnew } = useSaid(showing.notebook, ask.name);
  const begin = html`<button type="button" class="quiet" onClick=${beginAnew}>Begin this question anew</button>`;
  if (!said.shown)
    return html`<${Fragment}>
      ${use(Guess, { ask, showing, answer })}
      ${
        said.guesses.length > 0
          ? html`<p class="ask-keys"><button type="button" class="ask-show" onClick=${() => put({ shown: true })}>Show the answer</button>${begin}</p>`
          : null
      }
    <//>`;
  return html`<${Fragment}>
    ${use(Shown, { ask, showing, answer })} ${use(Sentence, { ask, showing })}
    <p class="ask-keys">${begin}</p>
  <//>`;
}

/** The answer, uncovered; what was guessed stands with it. */
function Shown({ ask, showing, answer }: WithAnswer) {
  const bench = bareOf(useBench());
  const { said } = useSaid(showing.notebook, ask.name);
  const shown = bench.shown.value;
  const last = said.guesses.at(-1);
  const graph = bench.book.first.value;
  const told = answerWords(answer, graph, shown);
  return html`<div class="ask-answer" role="status">
    ${said.guesses.length > 0 ? html`<p class="ask-guessed">You wrote: ${said.guesses.map((text) => guessWords(text, answer, graph, shown)).join(', then ')}.</p>` : null}
    ${told === '' ? null : html`<p><b>${told}</b>${last === undefined || isIssue(answer) ? '' : ` ${gap(last, answer, ask.within, shown)}`}</p>`}
    ${ask.answer.is === 'words' ? showing.blocks(ask.answer.blocks) : null} ${showing.blocks(ask.see)}
  </div>`;
}

function Hints({ ask, showing }: AskProps) {
  const { said, put } = useSaid(showing.notebook, ask.name);
  const asked = Math.min(said.hints, ask.hints.length);
  if (ask.hints.length === 0) return null;
  const next =
    asked < ask.hints.length
      ? html`<button type="button" class="quiet" onClick=${() => put({ hints: asked + 1 })}>${asked === 0 ? 'A hint' : 'Another hint'}</button>`
      : null;
  return html`<div class="ask-hints" aria-live="polite">
    ${ask.hints.slice(0, asked).map((hint) => html`<div class="ask-hint">${showing.blocks(hint)}</div>`)}
    ${next}
  </div>`;
}
