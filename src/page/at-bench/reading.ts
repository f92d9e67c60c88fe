/** The answers as they are read at arm's length, each with its datum and face, and what stops the work. */
import { answersOf, type Instance, warningsOf } from '../../cells';
import { tiedWith, useBench } from '../bench';
import { Answer } from '../answer/answer';
import { html, use } from '../html';
import { capital } from '../words';

export function Reading({ instance }: { instance: Instance }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const answers = answersOf(instance, (by) => graph.workOut(by));
  const warnings = warningsOf(instance, (by) => graph.workOut(by), tiedWith(bench));
  return html`<div class="bench-reading" role="region" tabindex="0" aria-label="Answers">
    <dl class="answers">
      ${answers.map((answer) => use(Answer, { ...answer, name: `${instance.name}.${answer.of}`, key: answer.of }))}
    </dl>
    <div role="status">
      ${warnings.map(
        ({ warning, says }) => html`<p class=${`warning ${warning.weight}`}>
          <b>${warning.weight === 'stop' ? 'Stop: ' : 'Mind: '}</b>${says} <span class="limit">${capital(warning.limit)}</span>
        </p>`,
      )}
    </div>
    ${instance.cell.cautions.slice(0, 1).map((caution) => html`<p class="bench-caution">${caution}</p>`)}
  </div>`;
}
