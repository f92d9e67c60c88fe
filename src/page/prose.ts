/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import type { VNode } from 'preact';
import { type Instance as CellInstance } from '../cells';
import { isIssue } from '../measure';
import type { Block, Inline, NotebookPage, PlainTable, TryPlace } from '../notebook';
import { graphOf, sayValue, useBench, versionWords } from './bench';
import { CellView } from './cell-view';
import { wayTo } from './hash-way';
import { html, use } from './html';
import { isCellKnown } from './library';

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
      return use(TryThis, { key: `try ${key}`, place: block });
    case 'fault':
      return html`<p class="notice">Line ${block.line}: ${block.says} <code>${block.text}</code></p>`;
  }
}

function heading(level: number, id: string, inside: unknown): VNode {
  if (level <= 1) return html`<h1 id=${id}>${inside}</h1>`;
  return level === 2 ? html`<h2 id=${id}>${inside}</h2>` : html`<h3 id=${id}>${inside}</h3>`;
}

function tableView(table: PlainTable, notebook: string): VNode {
  const align = (column: number) => ({ 'data-align': table.align[column] ?? 'left' });
  return html`<div class="table-wrap"><table>
    <thead><tr>${table.head.map((cell, column) => html`<th scope="col" ...${align(column)}>${inlines(cell, notebook)}</th>`)}</tr></thead>
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

/** A number in the middle of a sentence, moving with the rest; both versions where they differ. */
function LiveValue({ of }: { of: string }) {
  const { book, shown, goTo } = useBench();
  const graph = graphOf(book, 'first');
  const quantity = graph.quantity(of);
  if (!quantity) return html`<span class="notice">there is no quantity "${of}"</span>`;
  const options = 'options' in quantity ? quantity.options : [];
  const first = graph.value(of);
  const second = book.second.value?.value(of);
  const differs = second !== undefined && second !== first;
  const text = isIssue(first)
    ? `(waits: ${first.issue})`
    : sayValue(first, quantity.kind, shown.value, options);
  return html`<button type="button" class="live" title=${quantity.meaning} onClick=${() => goTo(of)}>${text}${
    differs
      ? html` <span class="other second">${versionWords.second.toLowerCase()}: ${sayValue(second, quantity.kind, shown.value, options)}</span>`
      : null
  }</button>`;
}

function PlacedCell({ instance, cell, line }: { instance: string; cell: string; line: number }) {
  const bench = useBench();
  const placed: CellInstance | undefined = bench.instances.value.get(instance);
  if (!placed && isCellKnown(cell)) return html`<p class="cell" aria-busy="true">Fetching the cell…</p>`;
  if (!placed) return html`<p class="notice">Line ${line}: there is no calculator cell called "${cell}".</p>`;
  return use(CellView, { instance: placed });
}

/** A second version ready to look at. */
function TryThis({ place }: { place: TryPlace }) {
  const { book } = useBench();
  const names = Object.keys(place.changes);
  const { second } = book.state.value;
  const looking = second !== null && names.every((name) => second[name] === place.changes[name]);
  return html`<div class="try-this">
    <p>${place.title}</p>
    ${
      looking
        ? html`<button type="button" onClick=${() => book.keepOnly('first')}>Put it away again</button>`
        : html`<button type="button" onClick=${() => book.tryAnother(place.changes)}>Look at it beside the first</button>`
    }
  </div>`;
}
