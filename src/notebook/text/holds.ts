/** Whether a notebook's sentence is true of the boat in hand. */
import { type Issue, isIssue, issue, plainShown, read, wrongSort } from '../../measure';
import type { Graph } from '../graph/graph';
import type { Comparison, Condition } from './page-text';

/**
 * @param graph tracked
 * @returns false also while a number is missing; an issue where the comparison itself can't be made on any boat like this one
 */
export function holds(condition: Condition, graph: Graph): boolean | Issue {
  for (const one of condition) {
    const so = isSo(one, graph);
    if (so !== true) return so;
  }
  return true;
}

function isSo({ of, is, than }: Comparison, graph: Graph): boolean | Issue {
  if (is === 'there' || is === 'not there') return graph.has(of) === (is === 'there');
  const quantity = graph.quantity(of);
  if (!quantity) return issue(`there is no quantity "${of}"`);
  const { kind } = quantity;
  const value = graph.value(of);
  if (kind === 'choice') {
    const known = 'options' in quantity ? quantity.options?.map(({ id }) => id) : undefined;
    if (known && !known.includes(than)) return issue(`"${than}" is no answer to ${of}`);
    return is === '=' || is === '!='
      ? !isIssue(value) && (value === than) === (is === '=')
      : issue(`${of} is a choice and can only be = or != to an answer`);
  }
  const kindOf = (name: string) => graph.quantity(name)?.kind;
  const other = read(than, { kind, shown: plainShown, field: of, kindOf, known: () => graph.names });
  if (isIssue(other)) return other;
  const beside = other.evaluate((name) => {
    const found = graph.value(name);
    return typeof found === 'string'
      ? issue(wrongSort(name, 'choice', graph.quantity(name)?.meaning))
      : found;
  });
  return typeof value === 'number' && typeof beside === 'number' && compared[is](value, beside);
}

/** Where two numbers are as near as sums of them can come out apart, they are equal. */
const equal = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

const compared: Readonly<
  Record<Exclude<Comparison['is'], 'there' | 'not there'>, (a: number, b: number) => boolean>
> = {
  '<': (a, b) => a < b && !equal(a, b),
  '>': (a, b) => a > b && !equal(a, b),
  '<=': (a, b) => a < b || equal(a, b),
  '>=': (a, b) => a > b || equal(a, b),
  '=': equal,
  '!=': (a, b) => !equal(a, b),
};
