/** Stretches of text within a block, shown. */
import type { VNode } from 'preact';
import type { Inline } from '../../notebook';
import { wayTo } from '../address';
import { html, use } from '../html';
import { later } from '../later';
import { LiveValue } from './live-value';
import type { Showing } from './show';
import { When } from './when';

const TickBox = later(async () => (await import('./tick-box')).TickBox, 'tick-to-come');

/** What ends a phrase stays on the line of the figure before it: a figure is a key, after which a browser may break. */
const CLOSING = /^[.,;:!?)]+/;
const closing = (next?: Inline) => (next?.type === 'text' && CLOSING.exec(next.text)?.[0]) || '';

export function inlines(all: readonly Inline[], { notebook }: Pick<Showing, 'notebook'>): (VNode | string)[] {
  const inside = (some: readonly Inline[]) => inlines(some, { notebook });
  return all.map((inline, i) => {
    switch (inline.type) {
      case 'text':
        return all[i - 1]?.type === 'value' ? inline.text.replace(CLOSING, '') : inline.text;
      case 'strong':
        return html`<strong>${inside(inline.inside)}</strong>`;
      case 'emphasis':
        return html`<em>${inside(inline.inside)}</em>`;
      case 'code':
        return html`<code>${inline.text}</code>`;
      case 'link':
        return html`<a href=${addressOf(inline.to, notebook)} class=${inline.says && 'word'} data-says=${inline.says}>${inside(inline.inside)}</a>`;
      case 'value':
        return html`<span class="whole">${use(LiveValue, { of: inline.of, line: inline.line })}${closing(all[i + 1])}</span>`;
      case 'when':
        return use(When, {
          condition: inline.holds,
          line: inline.line,
          text: () => inside(inline.inside),
          otherwise: () => inside(inline.otherwise),
        });
      case 'box':
        return use(TickBox, { notebook, label: inline.label, ticked: inline.ticked });
      case 'break':
        return html`<br />`;
      case 'fault':
        return html`<span class="notice">Line ${inline.line}: ${inline.says} <code>${inline.text}</code></span>`;
    }
  });
}

/** Links between notebooks are written as between files, so that they work in any viewer; here they open the notebook. */
function addressOf(to: string, notebook: string): string {
  const [, file, place] = /^(?:([\w\p{Letter}-]+)\.md)?(?:#(.+))?$/u.exec(to) ?? [];
  if (file === undefined && place === undefined) return to;
  return wayTo(file?.toLowerCase().replaceAll('_', '-') ?? notebook, place);
}
