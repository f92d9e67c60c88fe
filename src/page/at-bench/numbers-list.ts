/** All numbers that the answers follow from, each a key that takes it in hand. */
import { type Bench, sayOf, useBench } from '../bench';
import { isIssue } from '../../measure';
import { html } from '../html';
import type { BenchField } from './bench-field';

export interface NumbersListProps {
  readonly fields: readonly BenchField[];
  readonly onPick: (index: number) => void;
  /** How many marks or rows the cell's table has; 0 where there is none. */
  readonly marks: number;
  readonly toMarks: () => void;
}

export function NumbersList({ fields, onPick, marks, toMarks }: NumbersListProps) {
  const bench = useBench();
  return html`<div class="bench-numbers" role="group" aria-label="Numbers">
    ${marks > 0 ? html`<button type="button" class="bench-to-marks" onClick=${toMarks}>One by one: ${marks} in the list</button>` : null}
    ${fields.map(
      (field, index) => html`
        ${field.group !== '' && field.group !== fields[index - 1]?.group ? html`<p class="bench-group">${field.group}</p>` : null}
        <button type="button" class="bench-number" key=${field.place} onClick=${() => onPick(index)}>
          <span>${field.label}</span> <b>${said(bench, field.name)}</b>
        </button>`,
    )}
  </div>`;
}

function said(bench: Bench, name: string): string {
  const graph = bench.book.inHand.value;
  const value = graph.value(name);
  if (!isIssue(value)) return sayOf(graph, name, value, bench.shown.value);
  return value.waitsFor === undefined ? (graph.entry(name)?.text ?? '') : 'waits';
}
