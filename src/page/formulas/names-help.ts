/** What the quantities are called that a sum may name: looked for by words, and put in by a press. */
import type { TargetedEvent } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import type { Graph } from '../../notebook';
import { sayOf, useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';
import { upToComma } from '../../measure';

const MOST_OFFERED = 8;

export function NamesHelp({ onName }: { onName: (name: string) => void }) {
  return use(Disclosure, {
    className: 'fold',
    summary: 'Names of numbers',
    inside: () => use(Names, { onName }),
  });
}

function Names({ onName }: { onName: (name: string) => void }) {
  const { book, shown } = useBench();
  const id = useId();
  const [asked, ask] = useState('');
  const graph = book.inHand.value;
  const { names } = graph;
  const found = useMemo(() => namesFor(asked, names, graph), [asked, names, graph]);
  return html`<div class="names-help">
    <label for=${id}>What it is, in a word or two</label>
    <input id=${id} type="text" autocomplete="off" autocapitalize="off" placeholder="keel length" value=${asked} onInput=${(event: TargetedEvent<HTMLInputElement>) => ask(event.currentTarget.value)} />
    <ul>
      ${found.map(
        ({ name, meaning }) => html`<li key=${name}>
          <button type="button" class="quiet" onClick=${() => onName(name)}><b>${name}</b> ${meaning} · ${sayOf(graph, name, graph.value(name), shown.value)}</button>
        </li>`,
      )}
    </ul>
    ${asked.trim() !== '' && found.length === 0 ? html`<p class="says">No number goes by these words.</p>` : null}
  </div>`;
}

/** Those with every word in their name or in what they are, the shortest names first. */
function namesFor(asked: string, names: readonly string[], graph: Graph) {
  const words = asked.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  if (words.length === 0) return [];
  return names
    .flatMap((name) => {
      const meaning = upToComma(graph.quantity(name)?.meaning ?? '');
      const all = `${name} ${meaning}`.toLowerCase();
      return words.every((word) => all.includes(word)) ? [{ name, meaning }] : [];
    })
    .toSorted((a, b) => a.name.length - b.name.length || (a.name < b.name ? -1 : 1))
    .slice(0, MOST_OFFERED);
}
