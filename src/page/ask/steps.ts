/** A worked example, whose steps go blank one after another, each time through it one more. */
import { useId } from 'preact/hooks';
import { type Issue, isIssue, type Shown } from '../../measure';
import type { AskStep } from '../../notebook';
import { isBlank } from '../../notebook/lesson/blanks';
import { judge } from '../../notebook/lesson/judge';
import { keyTo, type Key } from '../../notebook/lesson/key';
import { useBench } from '../bench';
import { html, use } from '../html';
import { bareOf } from '../bare';
import { capital } from '../words';
import { askPlace } from '../asks';
import { type AskProps, keyWords } from './ask-words';
import { useSaid } from './lesson-in-hand';

export function Steps({ ask, showing }: AskProps) {
  const { said, put } = useSaid(showing.notebook, ask.name);
  const { steps } = ask;
  const graph = bareOf(useBench()).book.first.value;
  const isFull = ask.blank + said.round >= steps.length;
  const again = () => put({ round: said.round + 1, steps: {} });
  return html`<div class="ask-steps">
    <ol>
      ${steps.map((step, at) => use(Step, { key: at, ask, showing, step, at, isBlank: isBlank(ask, at, said, graph) }))}
    </ol>
    ${isFull ? null : html`<button type="button" class="quiet" onClick=${again}>Again, with one step more to fill in</button>`}
  </div>`;
}

interface StepProps extends AskProps {
  readonly step: AskStep;
  readonly at: number;
  readonly isBlank: boolean;
}

function Step({ ask, showing, step, at, isBlank: blank }: StepProps) {
  const bench = bareOf(useBench());
  const asked = bench.asked.value;
  const key = keyTo(step.answer, bench.book.first.value);
  const words = html`<span class="ask-step-words">${showing.blocks([{ type: 'paragraph', inside: step.words }])}:</span>`;
  const told = html`<b class="ask-told">${keyWords(key, bench.book.first.value, bench.shown.value)}</b>`;
  const of = step.answer.is === 'quantity' ? step.answer.of : '';
  // What another question waits for is not told here either.
  if (!blank && (asked?.waits(of) ?? ask.name) !== ask.name)
    return html`<li>${words} ${asked?.blank(of)}</li>`;
  if (!blank) return html`<li>${words} ${told}</li>`;
  if (bench.wall.value)
    return html`<li>${words} ${use(bench.wall.value.Plate, { instance: askPlace(ask.name), part: `step ${at}`, what: 'the step', inside: () => told })}</li>`;
  return html`<li>${words} ${use(BlankStep, { ask, showing, at, answer: key })}</li>`;
}

function BlankStep({ ask, showing, at, answer }: AskProps & { at: number; answer: Key | Issue }) {
  const id = useId();
  const { shown } = useBench();
  const { said, put, settle } = useSaid(showing.notebook, ask.name);
  const text = said.steps[String(at)] ?? '';
  const type = (event: Event) =>
    put({ steps: { ...said.steps, [at]: (event.currentTarget as HTMLInputElement).value } }, `step ${at}`);
  return html`<span class="ask-blank">
    <input
      id=${id}
      type="text"
      autocomplete="off"
      aria-label=${`Step ${at + 1}: what it comes to`}
      aria-describedby=${`${id}-says`}
      value=${text}
      onInput=${type}
      onBlur=${settle}
    />
    <span class="says" id=${`${id}-says`} role="status">${worth(text, answer, ask.within, shown.value)}</span>
  </span>`;
}

const worth = (text: string, key: Key | Issue, within: string, shown: Shown): string =>
  text.trim() === '' || isIssue(key) ? '' : capital(judge(text, key, within, shown).says);
