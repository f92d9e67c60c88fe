/** The parts of the boat that a cell speaks of as it stands: what lights up, heads its card and can be marked as cut. */
import type { Cell, ChoiceSpec } from './define';
import { isChoice } from './instance';
import { fillIn } from './links';

/** `{frame}`: the answer of a choice. */
const CHOSEN = /^\{(\w+)\}$/;

/** @param chosen the answer of a choice of the cell, by its key */
export function aboutOf({ about, inputs }: Cell, chosen: (key: string) => string): string[] {
  return about.flatMap((part) => {
    const spec = inputs[CHOSEN.exec(part)?.[1] ?? ''];
    const options = spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
    const named = options.find(({ id }) => id === fillIn(part, chosen))?.about ?? [part];
    return named.map((one) => fillIn(one, chosen));
  });
}

/** The choice of what the cell is about above all: which frame, which edge. Undefined where it leaves no choice. */
export function subjectOf({ about: [first = ''], inputs }: Cell): string | undefined {
  const key = CHOSEN.exec(first)?.[1] ?? '';
  const spec = inputs[key];
  return spec && isChoice(spec) && typeof spec.options === 'string' ? key : undefined;
}

/** The same where it is a part that is cut, and not a line or a place of the hull. */
export function cutBy(cell: Cell): string | undefined {
  const key = subjectOf(cell);
  const list = key === undefined ? undefined : (cell.inputs[key] as ChoiceSpec).options; // a choice
  return list === 'frames' || list === 'panels' ? key : undefined;
}
