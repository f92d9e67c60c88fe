/** The answers as they are read at arm's length, each with its datum and face, and what stops the work. */
import { answersOf, type Instance } from '../../cells';
import { useBench } from '../bench';
import { Answer } from '../answer/answer';
import { Warnings } from '../answer/warnings';
import { html, use } from '../html';

export function Reading({ instance }: { instance: Instance }) {
  const graph = useBench().book.inHand.value;
  const answers = answersOf(instance, (by) => graph.workOut(by));
  return html`<div class="bench-reading" role="group" tabindex="0" aria-label="Answers">
    <dl class="answers">
      ${answers.map((answer) => use(Answer, { ...answer, name: `${instance.name}.${answer.of}`, key: answer.of }))}
    </dl>
    ${use(Warnings, { instance })}
    ${instance.cell.cautions.slice(0, 1).map((caution) => html`<p class="bench-caution">${caution}</p>`)}
  </div>`;
}
