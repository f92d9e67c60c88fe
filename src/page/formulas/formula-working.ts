/** How each line comes to its answer: the sum in its names, with the numbers put in, and what that is. */
import { isIssue, mathOf, wordsOf } from '../../measure';
import type { FormulaBlock, LineRead } from '../../notebook/formulas/formula-quantities';
import { sayOf, useBench } from '../bench';
import { equation, equals, ident } from '../cell/equation';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { capital } from '../words';

export function FormulaWorking({ block }: { block: FormulaBlock }) {
  return use(Disclosure, {
    className: 'fold',
    summary: 'Working',
    prints: true,
    inside: () =>
      html`<ol class="steps">${block.lines.map((line) => (line.own ? use(Line, { key: line.name, line }) : null))}</ol>`,
  });
}

function Line({ line: { full, name, label, own, named } }: { line: LineRead }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const fullOf = (word: string) => named?.get(word) ?? word;
  const say = (of: string): string => {
    const value = graph.value(of);
    return isIssue(value) ? '?' : sayOf(graph, of, value, shown.value);
  };
  return html`<li>
    <p class="meaning">${capital(label)}</p>
    <div class="formulas" tabindex="0" role="group" aria-label=${`Formula: ${label}`}>
      ${equation([ident(wordsOf(name)), mathOf(own!, { symbol: wordsOf })])}
      ${equation([equals, mathOf(own!, { symbol: wordsOf, value: (word) => say(fullOf(word)) })])}
      <p class="result">= ${say(full)}</p>
    </div>
  </li>`;
}
