/** A graph with formulas in it, over a few numbers. */
import { signal } from '@preact/signals-core';
import { ownerOf, type Derived, type Given } from '../../../src/boat';
import { isIssue, plainShown, write } from '../../../src/measure';
import { formulaBlocks, type FormulaText } from '../../../src/notebook/formulas/formula-quantities';
import { withFormulas } from '../../../src/notebook/formulas/with-formulas';
import { createGraph, type Graph } from '../../../src/notebook/graph/graph';
import { catalogueFrom } from '../../../src/notebook/graph/on-hand';
import { given } from '../small-graph';

const noHull = (): never => {
  throw new Error('the offsets are missing');
};

export const around: readonly (Given | Derived)[] = [
  given('hull.length', '4 m'),
  given('hull.mass', '82 kg', { kind: 'mass' }),
  given('keelson.length', '3.2 m'),
  given('bend.share', '40 %', { kind: 'share' }),
  given('shop.air', '20 °C', { kind: 'temperature' }),
  given('shop.night', '8 °C', { kind: 'temperature' }),
  given('paint.film', '100 µm', { kind: 'film' }),
  given('sheet.price', '50', { kind: 'money' }),
  given('count.screws', '12', { kind: 'count' }),
  given('frame.timber', 'oak', {
    kind: 'choice',
    options: ['oak', 'ash'].map((id) => ({ id, label: id })),
  }),
];

export interface FormulaBench {
  readonly graph: Graph;
  readonly write: (name: string, text: string) => void;
  /** Puts other lines in place of a block's. */
  readonly set: (name: string, text: string) => void;
  /** What a line comes to, as it is told; or its sentence. */
  readonly told: (name: string) => string;
  readonly spots: () => readonly (string | undefined)[];
}

export function formulaBench(
  texts: Readonly<Record<string, string>>,
  quantities: readonly (Given | Derived)[] = around,
): FormulaBench {
  const base = catalogueFrom([ownerOf(quantities)], { hull: noHull });
  const now = signal(texts);
  const entries = signal<Readonly<Record<string, string>>>({});
  const list = (): FormulaText[] => Object.entries(now.value).map(([name, text]) => ({ name, text }));
  const graph = createGraph({
    catalogue: () => withFormulas(base, list()),
    entries: () => entries.value,
    shown: plainShown,
  });
  return {
    graph,
    write: (name, text) => {
      entries.value = { ...entries.peek(), [name]: text };
    },
    set: (name, text) => {
      now.value = { ...now.peek(), [name]: text };
    },
    told: (name) => {
      const value = graph.value(name);
      if (isIssue(value)) return value.waitsFor === undefined ? value.issue : `waits for ${value.waitsFor}`;
      return typeof value === 'string'
        ? value
        : write(value, graph.quantity(name)!.kind, plainShown, graph.mannerOf(name)).text;
    },
    spots: () =>
      formulaBlocks(list(), base.find).flatMap(({ lines }) =>
        lines.map(({ text, spot }) => spot && `${spot.says} [${text.slice(spot.from, spot.to)}]`),
      ),
  };
}
