/** Which steps of a worked example are blank, and which numbers a question keeps covered. */
import type { SaidTo } from '../../boat';
import { isIssue } from '../../measure';
import type { Graph } from '../graph/graph';
import type { AskPlace } from '../text/page-text';
import { keyTo } from './key';

type SoFar = Pick<SaidTo, 'round' | 'shown'>;

/**
 * A step that comes to what is asked is blank as long as the answer is covered.
 * @param graph tracked
 */
export function isBlank(ask: AskPlace, at: number, said: SoFar, graph: Graph): boolean {
  const { steps, blank, fades } = ask;
  if (!said.shown && tellsAnswer(ask, at, graph)) return true;
  const count = Math.min(steps.length, blank + said.round);
  return fades === 'end' ? at >= steps.length - count : at < count;
}

function tellsAnswer({ answer, steps }: AskPlace, at: number, graph: Graph): boolean {
  const of = steps[at]?.answer;
  if (!of) return false;
  if (of.is === 'quantity' && answer.is === 'quantity' && of.of === answer.of) return true;
  const step = keyTo(of, graph);
  const asked = keyTo(answer, graph);
  return (
    !isIssue(step) &&
    step.is === 'number' &&
    !isIssue(asked) &&
    asked.is === 'number' &&
    step.kind === asked.kind &&
    Math.abs(step.value - asked.value) <= 1e-9 * Math.abs(asked.value)
  );
}

/**
 * The numbers that a question waits for. Whether one rises is no secret of where it stands.
 * @param graph tracked
 */
export function waitsFor(ask: AskPlace, said: SaidTo, graph: Graph): readonly string[] {
  if (said.shown) return [];
  const steps = ask.steps.filter((_, at) => isBlank(ask, at, said, graph)).map(({ answer }) => answer);
  return [ask.answer, ...steps].flatMap((answer) => (answer.is === 'quantity' ? [answer.of] : []));
}
