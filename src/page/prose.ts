/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import type { VNode } from 'preact';
import { type Block, headingsOf, type Inline, type NotebookPage, type PlainTable } from '../notebook';
import { useBench } from './bench';
import { CellView } from './cell/cell-view';
import { TryKey } from './cell/try-key';
import { wayTo } from './address';
import { html, use } from './html';
import { isCellKnown, openText } from './library';
import { later } from './later';
import { LiveValue } from './live-value';

const When = later(async () => (await import('./when')).When, 'when-to-come');
const TickBox = later(async () => (await import('./tick-box')).TickBox, 'tick-to-come');

const WhoseBoat = later(async () => (await import('./boat/whose-boat')).WhoseBoat, 'whose-boat');

export function Prose({ page }: { page: NotebookPage }) {
  return html`<article class="prose">${page.blocks.map((block, index) => blockView(block, index, page.id))}</article>`;
}

function blockView(block: Block, key: number, notebook: string): VNode {
  const blocks = (inside: readonly Block[]) => inside.map((one, index) => blockView(one, index, notebook));
  switch (block.type) {
    case 'heading':
      return heading(block.level, block.id, inlines(block.inside, notebook));
    case 'paragraph':
      return html`<p>${inlines(block.inside, notebook)}</p>`;
    case 'list': {
      const items = block.items.map((item) => html`<li>${blocks(item)}</li>`);
      return block.from === null ? html`<ul>${items}</ul>` : html`<ol start=${block.from}>${items}</ol>`;
    }
    case 'quote':
      return html`<blockquote>${blocks(block.blocks)}</blockquote>`;
    case 'table':
      return tableView(block, notebook);
    case 'code':
      return html`<pre><code>${block.text}</code></pre>`;
    case 'rule':
      return html`<hr />`;
    case 'cell':
      return use(PlacedCell, {
        key: `${block.instance} ${key}`,
        instance: block.instance,
        cell: block.cell,
        line: block.line,
      });
    case 'try':
      return html`<div class="try-this"><p>${block.title}</p>${use(TryKey, { changes: block.changes, what: block.title })}</div>`;
    case 'when':
      return use(When, { condition: block.holds, says: () => blocks(block.blocks) });
    case 'boat':
      return use(WhoseBoat, { boat: block.boat });
    case 'fault':
      return html`<p class="notice">Line ${block.line}: ${block.says} <code>${block.text}</code></p>`;
  }
}

function heading(level: number, id: string, inside: unknown): VNode {
  if (level <= 1) return html`<h1 id=${id} tabindex="-1">${inside}</h1>`;
  return level === 2
    ? html`<h2 id=${id} tabindex="-1">${inside}</h2>`
    : html`<h3 id=${id} tabindex="-1">${inside}</h3>`;
}

function tableView(table: PlainTable, notebook: string): VNode {
  const align = (column: number) => ({ 'data-align': table.align[column] ?? 'left' });
  return html`<div class="table-wrap"><table>
    <thead><tr>${table.head.map((cell, column) => (cell.length === 0 ? html`<td></td>` : html`<th scope="col" ...${align(column)}>${inlines(cell, notebook)}</th>`))}</tr></thead>
    <tbody>${table.rows.map((row) => html`<tr>${row.map((cell, column) => html`<td ...${align(column)}>${inlines(cell, notebook)}</td>`)}</tr>`)}</tbody>
  </table></div>`;
}

function inlines(all: readonly Inline[], notebook: string): (VNode | string)[] {
  return all.map((inline) => {
    switch (inline.type) {
      case 'text':
        return inline.text;
      case 'strong':
        return html`<strong>${inlines(inline.inside, notebook)}</strong>`;
      case 'emphasis':
        return html`<em>${inlines(inline.inside, notebook)}</em>`;
      case 'code':
        return html`<code>${inline.text}</code>`;
      case 'link':
        return html`<a href=${addressOf(inline.to, notebook)}>${inlines(inline.inside, notebook)}</a>`;
      case 'value':
        return use(LiveValue, { of: inline.of });
      case 'when':
        return use(When, {
          condition: inline.holds,
          says: () => inlines(inline.inside, notebook),
          otherwise: () => inlines(inline.otherwise, notebook),
        });
      case 'box':
        return use(TickBox, { notebook, says: inline.says, ticked: inline.ticked });
      case 'break':
        return html`<br />`;
      case 'fault':
        return html`<span class="notice">${inline.says} <code>${inline.text}</code></span>`;
    }
  });
}

/** Links between notebooks are written as between files, so that they work in any viewer; here they open the notebook. */
function addressOf(to: string, notebook: string): string {
  const [, file, place] = /^(?:([\w-]+)\.md)?(?:#(.+))?$/.exec(to) ?? [];
  return file !== undefined || place !== undefined ? wayTo(file ?? notebook, place) : to;
}

function PlacedCell({ instance, cell, line }: { instance: string; cell: string; line: number }) {
  const placed = useBench().instances.value.get(instance);
  if (placed) return use(CellView, { instance: placed, under: isUnderHeadings() });
  if (isCellKnown(cell)) return html`<p class="cell fetching" aria-busy="true">Fetching the cell…</p>`;
  return html`<p class="notice">Line ${line}: there is no calculator cell called "${cell}".</p>`;
}

/** Whether a heading of the second level stands above the cells of the open notebook. */
function isUnderHeadings(): boolean {
  const text = openText();
  return text !== undefined && headingsOf(text).length > 0;
}
