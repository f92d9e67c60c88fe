/** A graph of a few quantities, to be written and watched in tests. */
import { signal } from '@preact/signals-core';
import { type Derived, type Given, type Hull, ownerOf, type Read, type Value } from '../../src/boat';
import { isIssue, type KindId, plainShown } from '../../src/measure';
import { createGraph, type Graph } from '../../src/notebook/graph/graph';
import { catalogueFrom } from '../../src/notebook/graph/on-hand';

/** A graph on a bench of its own, with its entries to write and a count of what was worked out. */
export interface Bench {
  readonly graph: Graph;
  /** Writes an entry; null takes it away. */
  readonly write: (name: string, text: string | null) => void;
  /** How often each derived quantity was worked out since the last time this was asked. */
  readonly worked: () => Readonly<Record<string, number>>;
}

const noHull = (): never => {
  throw new Error('the offsets are missing');
};

export function bench(
  given: readonly Given[],
  derived: readonly Derived[] = [],
  hull: (read: Read) => Hull = noHull,
): Bench {
  const entries = signal<Readonly<Record<string, string>>>({});
  let counts: Record<string, number> = {};
  const counted = derived.map((one): Derived => ({
    ...one,
    from: (read) => {
      counts[one.name] = (counts[one.name] ?? 0) + 1;
      return one.from(read);
    },
  }));
  const catalogue = catalogueFrom([ownerOf([...given, ...counted])], { hull });
  return {
    graph: createGraph({
      catalogue: () => catalogue,
      entries: () => entries.value,
      shown: plainShown,
    }),
    write: (name, text) => {
      const { [name]: _, ...others } = entries.peek();
      entries.value = text === null ? others : { ...others, [name]: text };
    },
    worked: () => {
      const since = counts;
      counts = {};
      return since;
    },
  };
}

export const given = (name: string, preset: string, more: Partial<Given> = {}): Given => ({
  name,
  kind: 'length',
  meaning: `${name.replaceAll('.', ' ')} as given`,
  preset,
  ...more,
});
export const derived = (name: string, from: (read: Read) => Value, kind: KindId = 'length'): Derived => ({
  name,
  kind,
  meaning: `${name} as derived`,
  from,
});
export const sum = (name: string, ...of: string[]) =>
  derived(name, (read) => of.reduce((total, one) => total + read.number(one), 0));
export const options = ['oak', 'ash', 'elm'].map((id) => ({ id, label: id }));
export const choice = (name: string, preset: string, more: Partial<Given> = {}) =>
  given(name, preset, { kind: 'choice', options, ...more });

export const sentence = (value: unknown): string => {
  if (!isIssue(value)) throw new Error(`an issue was expected, not ${String(value)}`);
  return value.issue;
};
