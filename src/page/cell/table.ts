/** The same steps for each answer of one choice, as a table; the row in hand is marked. */
import { type Cell, type Instance, isChoice, kindOfKey } from '../../cells';
import { rowsOf } from '../../cells/rows';
import { isIssue } from '../../measure';
import { optionsFor, sayValue, useBench } from '../bench';
import { html } from '../html';

export function CellTable({ instance, table }: { instance: Instance; table: NonNullable<Cell['table']> }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const { cell, name } = instance;
  const choiceName = `${name}.${table.over}`;
  const present = graph.value(choiceName);
  const spec = cell.inputs[table.over];
  const say = (option: string, key: string) => {
    // The row in hand says what the answers say, numbers typed for this one place among them.
    const isOwn = key in cell.inputs || option === present;
    const value = graph.value(isOwn ? `${name}.${key}` : `${name}.${option}.${key}`);
    const text = isIssue(value)
      ? 'no value yet'
      : sayValue(value, kindOfKey(cell, key), shown.value, optionsFor(graph, `${name}.${key}`));
    return { text, isNumber: typeof value === 'number' };
  };
  const rows = rowsOf(instance, optionsFor(graph, choiceName), (of) => graph.value(of)).map((option) => ({
    option,
    texts: table.columns.map((column) => say(option.id, column.of)),
  }));
  // Typed numbers that hang on no hull give every row the same: the answers above say it already.
  const [head, ...rest] = rows.map(({ texts }) => texts.map(({ text }) => text).join('\n'));
  if (head === undefined || (rest.length > 0 && rest.every((row) => row === head))) return null;
  const choose = (id: string) => {
    book.write({ [choiceName]: id });
    book.settle();
  };
  return html`<div class="table-wrap cell-table" tabindex="0" role="region" aria-label=${table.caption}>
    <table>
      <caption>${table.caption}</caption>
      <thead>
        <tr>
          <th scope="col">${spec && isChoice(spec) ? spec.label : ''}</th>
          ${table.columns.map((column) => html`<th scope="col">${column.label}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ option, texts }) => html`<tr class=${option.id === present ? 'present' : ''}>
            <th scope="row">
              <button type="button" class="quiet" aria-pressed=${option.id === present} onClick=${() => choose(option.id)}>
                ${option.label}
              </button>
            </th>
            ${texts.map(({ text, isNumber }) => html`<td class=${isNumber ? 'number' : ''}>${text}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
