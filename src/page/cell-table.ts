/** The same steps for each answer of one choice, as a table; the row in hand is marked. */
import { type Cell, type Instance, isChoice, kindOfKey } from '../cells';
import { isIssue } from '../measure';
import { sayValue, useBench } from './bench';
import { html } from './html';

export function CellTable({ instance, table }: { instance: Instance; table: NonNullable<Cell['table']> }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const { cell, name } = instance;
  const choiceName = `${name}.${table.over}`;
  const choice = graph.quantity(choiceName);
  const options = choice && 'options' in choice ? (choice.options ?? []) : [];
  const present = graph.value(choiceName);
  const spec = cell.inputs[table.over];
  const cellText = (option: string, key: string) => {
    const value =
      key in cell.inputs ? graph.value(`${name}.${key}`) : graph.value(`${name}.${option}.${key}`);
    return isIssue(value) ? `waits: ${value.issue}` : sayValue(value, kindOfKey(cell, key), shown.value);
  };
  return html`<div class="table-wrap" tabindex="0" role="region" aria-label=${table.caption}>
    <table>
      <caption>${table.caption}</caption>
      <thead>
        <tr>
          <th scope="col">${spec && isChoice(spec) ? spec.label : ''}</th>
          ${table.columns.map((column) => html`<th scope="col">${column.label}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${options.map(
          (option) => html`<tr class=${option.id === present ? 'present' : ''}>
            <th scope="row">
              <button type="button" class="quiet" aria-pressed=${option.id === present} onClick=${() => book.write({ [choiceName]: option.id })}>
                ${option.label}
              </button>
            </th>
            ${table.columns.map((column) => html`<td>${cellText(option.id, column.of)}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
