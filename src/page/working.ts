/** The working: each step as formula, numbers put in, result, source. Formulas are MathML. */
import { h, type VNode } from 'preact';
import { useState } from 'preact/hooks';
import { type Cell, compiled, type Instance, isChoice, isHullStep } from '../cells';
import { isIssue, type MathNode, mathOf, wordsOf } from '../measure';
import { sayValue, useBench } from './bench';
import { html, use } from './html';

export function Working({ instance }: { instance: Instance }) {
  const [open, setOpen] = useState(false);
  return html`<details class="working" onToggle=${(event: Event) => setOpen((event.currentTarget as HTMLDetailsElement).open)}>
    <summary>Working</summary>
    ${open ? use(Steps, { instance }) : null}
  </details>`;
}

function Steps({ instance }: { instance: Instance }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const { cell, name } = instance;
  const sayKey = (key: string): string => {
    const spec = cell.inputs[key] ?? cell.steps[key];
    const value = graph.value(`${name}.${key}`);
    if (!spec || isIssue(value)) return '?';
    const options =
      'options' in spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
    return sayValue(value, spec.kind, shown.value, options);
  };
  return html`<ol class="steps">
    ${Object.entries(cell.steps).map(([key, step]) => {
      const value = graph.value(`${name}.${key}`);
      return html`<li data-quantity=${`${name}.${key}`}>
        <p class="meaning">${capital(step.meaning)}</p>
        <div class="formulas">
          ${isHullStep(step) ? html`<p>${wordsOf(key)}: ${step.says}</p>` : formulaLines(cell, key, step.formula, sayKey)}
          <p class="result">
            ${isIssue(value) ? `waits: ${value.issue}` : `= ${sayValue(value, step.kind, shown.value)}`}
          </p>
        </div>
        <p class="source">${step.source}</p>
      </li>`;
    })}
  </ol>`;
}

/** The formula in its own names, then with the numbers put in; what a function called does, in words. */
function formulaLines(cell: Cell, key: string, text: string, sayKey: (key: string) => string): VNode[] {
  const formula = compiled(cell, text);
  const called = formula.functions
    .map((of) => cell.functions?.[of]?.says)
    .filter((says) => says !== undefined);
  return [
    equation([ident(wordsOf(key)), mathOf(formula, { symbol: wordsOf })]),
    equation([operator('='), mathOf(formula, { symbol: wordsOf, value: sayKey })]),
    ...called.map((says) => html`<p class="source">${says}</p>`),
  ];
}

const ident = (text: string): MathNode => ({
  tag: 'mrow',
  children: [
    { tag: 'mi', attrs: { mathvariant: 'normal' }, text },
    { tag: 'mo', text: '=' },
  ],
});
const operator = (text: string): MathNode => ({ tag: 'mo', text });

function equation(parts: readonly MathNode[]): VNode {
  return h('math', { display: 'block' }, ...parts.map(mathVNode));
}

function mathVNode(node: MathNode): VNode {
  return h(node.tag, { ...node.attrs }, node.text ?? null, ...(node.children ?? []).map(mathVNode));
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
