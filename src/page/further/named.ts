/** Numbers of a cell under names that are read. */
import type { Instance } from '../../cells';
import { upToComma, wordsOf } from '../../measure';
import type { Graph } from '../../notebook';
import { capital } from '../words';

export interface NumberNamed {
  readonly name: string;
  readonly label: string;
}
export interface NamedGroup {
  readonly label: string;
  readonly of: readonly NumberNamed[];
}

/** Numbers of a cell: its answers, then what it works out on the way, by what each is. */
export function resultsOf({ cell, name }: Instance, graph: Graph): readonly NamedGroup[] {
  const isNumber = (key: string) => {
    const quantity = graph.quantity(`${name}.${key}`);
    return quantity !== undefined && quantity.kind !== 'choice' && !('preset' in quantity);
  };
  const answers = cell.answers.filter(({ of }) => isNumber(of));
  const keys = new Set(answers.map(({ of }) => of));
  const steps = Object.keys(cell.steps).filter((key) => !keys.has(key) && isNumber(key));
  const told = answers.map(({ of, label }) => ({ name: `${name}.${of}`, label: capital(label) }));
  const onTheWay = steps.map((key) => ({ name: `${name}.${key}`, label: capital(whatIs(cell, key)) }));
  return [
    { label: 'Answers', of: toldApart(told) },
    { label: 'On the way', of: toldApart(onTheWay, told) },
  ].filter(({ of }) => of.length > 0);
}

/** What a step works out, in short; where that is but a letter of a formula, its name. */
function whatIs({ steps }: Instance['cell'], key: string): string {
  const meaning = upToComma(steps[key]?.meaning ?? '');
  return meaning.length > 2 ? meaning : wordsOf(key);
}

/**
 * Of those that are called alike, each with its own name behind.
 * @param others that stand beside them
 */
export function toldApart(
  all: readonly NumberNamed[],
  others: readonly NumberNamed[] = [],
): readonly NumberNamed[] {
  return all.map((one) => {
    const { name, label } = one;
    const isTwice = [...all, ...others].some((other) => other.name !== name && other.label === label);
    return isTwice ? { name, label: `${label} (${wordsOf(name.split('.').at(-1)!)})` } : one; // a name has a last part
  });
}
