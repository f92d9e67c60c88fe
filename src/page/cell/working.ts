/** The working: each step as formula, numbers put in, result, source. Formulas are MathML. */
import type { VNode } from 'preact';
import { type Cell, compiled, type Instance, isFormula, type StepSpec } from '../../cells';
import { isIssue, mathOf, wordsOf } from '../../measure';
import { sayOf, useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { equals, equation, ident } from './equation';
import { capital } from '../words';
import { WaitsFor } from '../answer/waits-for';

export function Working({ instance }: { instance: Instance }) {
  return html`<ol class="steps">
    ${Object.entries(instance.cell.steps).map(([key, step]) => use(Step, { key, instance, of: key, step }))}
  </ol>`;
}

function Step({ instance, of, step }: { instance: Instance; of: string; step: StepSpec }) {
  const { book, other, shown } = useBench();
  const graph = book.inHand.value;
  const { cell, name } = instance;
  const sayKey = (key: string): string => {
    const value = graph.value(`${name}.${key}`);
    if (isIssue(value)) return '?';
    return sayOf(graph, `${name}.${key}`, value, shown.value);
  };
  const value = graph.value(`${name}.${of}`);
  const elsewhere = other.value?.graph.value(`${name}.${of}`);
  const differs = other.value && !isIssue(elsewhere) && elsewhere !== undefined && elsewhere !== value;
  return html`<li data-quantity=${`${name}.${of}`} tabindex="-1">
    <p class="meaning">${capital(step.meaning)}</p>
    <div class="formulas" tabindex="0" role="group" aria-label=${`Formula: ${step.meaning}`}>
      ${isFormula(step) ? formulaLines(cell, of, step.formula, sayKey) : html`<p>${wordsOf(of)}: ${step.how}</p>`}
      <p class="result">${isIssue(value) ? use(WaitsFor, { why: value }) : `= ${sayKey(of)}`}</p>
    </div>
    ${
      differs && other.value
        ? html`<p class=${`other ${other.value.version}`}>${versionWords[other.value.version]}: ${sayOf(graph, `${name}.${of}`, elsewhere, shown.value)}</p>`
        : null
    }
    <p class="source">${step.source}</p>
  </li>`;
}

/** The formula in its own names, then with the numbers put in; what a function called does, in words. */
function formulaLines(cell: Cell, key: string, text: string, sayKey: (key: string) => string): VNode[] {
  const formula = compiled(cell, text);
  const called = formula.functions
    .map((of) => cell.functions?.[of]?.how)
    .filter((says) => says !== undefined);
  return [
    equation([ident(wordsOf(key)), mathOf(formula, { symbol: wordsOf })]),
    equation([equals, mathOf(formula, { symbol: wordsOf, value: sayKey })]),
    ...called.map((says) => html`<p class="source">${says}</p>`),
  ];
}
