/** Which steps of a worked example are blank, and which numbers a question keeps covered. */
import type { SaidTo } from '../../boat';
import type { AskPlace } from '../text/page-text';

/** A step that comes to what is asked is blank as long as the answer is covered. */
export function isBlank(ask: AskPlace, at: number, said: Pick<SaidTo, 'round' | 'shown'>): boolean {
  const { answer, steps, blank, fades } = ask;
  const step = steps[at]?.answer;
  if (!said.shown && step?.is === 'quantity' && answer.is === 'quantity' && step.of === answer.of)
    return true;
  const count = Math.min(steps.length, blank + said.round);
  return fades === 'end' ? at >= steps.length - count : at < count;
}

/** The numbers that a question waits for. Whether one rises is no secret of where it stands. */
export function waitsFor(ask: AskPlace, said: SaidTo): readonly string[] {
  if (said.shown) return [];
  const steps = ask.steps.filter((_, at) => isBlank(ask, at, said)).map(({ answer }) => answer);
  return [ask.answer, ...steps].flatMap((answer) => (answer.is === 'quantity' ? [answer.of] : []));
}
