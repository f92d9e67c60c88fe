/** The working: each step as formula, numbers put in, result, source. Formulas are MathML. */
import { h, type VNode } from 'preact';
import { useState } from 'preact/hooks';
import { compiled, type Instance, isChoice } from '../cells';
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
    const options = 'options' in spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
    return sayValue(value, spec.kind, shown.value, options);
  };
  return html`<ol class="steps">
    ${Object.entries(cell.steps).map(([key, step]) => {
      const formula = compiled(cell, step.formula);
      const value = graph.value(`${name}.${key}`);
      const called = formula.functions.map((of) => cell.functions?.[of]?.says).filter(Boolean);
      return html`<li data-quantity=${`${name}.${key}`}>
        <p class="meaning">${capital(step.meaning)}</p>
        <div class="formulas">
          ${equation([ident(wordsOf(key)), mathOf(formula, { symbol: wordsOf })])}
          ${equation([operator('='), mathOf(formula, { symbol: wordsOf, value: sayKey })])}
          <p class="result">
            ${isIssue(value) ? `waits: ${value.issue}` : `= ${sayValue(value, step.kind, shown.value)}`}
          </p>
        </div>
        ${called.length > 0 ? html`<p class="source">${called.join('; ')}</p>` : null}
        <p class="source">${step.source}</p>
      </li>`;
    })}
  </ol>`;
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
