/** What a cell speaks of at the moment: the parts of the boat that light up. */
import { isChoice } from './instance';
import type { Cell } from './define';
import { fillIn } from './quantities';

/** @param chosen the answer of a choice of the cell, by its key */
export function lightsOf({ lights, inputs }: Cell, chosen: (key: string) => string): string[] {
  return lights.flatMap((light) => {
    const key = /^\{(\w+)\}$/.exec(light)?.[1] ?? '';
    const spec = inputs[key];
    const options = spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
    return options.find(({ id }) => id === chosen(key))?.lights ?? [fillIn(light, chosen)];
  });
}
