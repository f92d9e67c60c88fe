/** What a notebook proposes to try: what it is, and the key that puts it beside the version kept. */
import { useBench } from '../bench';
import { TryKey } from '../try-key';
import { html, use } from '../html';
import { isAllThere } from '../library';

type Changes = Readonly<Record<string, string>>;

export function TryThis({ title, changes, line }: { title: string; changes: Changes; line: number }) {
  return html`<div class="try-this"><p>${title}</p>${use(Unknown, { changes, line })}${use(TryKey, { changes, what: title })}</div>`;
}

/** Names among the changes that no entry has; what is not there yet may still come. */
function Unknown({ changes, line }: { changes: Changes; line: number }) {
  const graph = useBench().book.first.value;
  const unknown = isAllThere() ? Object.keys(changes).filter((name) => !graph.entry(name)) : [];
  return unknown.length === 0
    ? null
    : html`<p class="notice">Line ${line}: there is nothing to write under ${unknown.map((name) => `"${name}"`).join(', ')}.</p>`;
}
