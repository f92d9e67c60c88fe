/** Below the list of notebooks: the keys that open one from a file, begin one and copy one, and those that are put away. */
import { Fragment, type TargetedEvent } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { putNotebookAway, writeNotebook } from '../../notebook';
import { useBench } from '../bench';
import { wayTo } from '../address';
import { html, use } from '../html';
import { isOwn, notebooksAway, openHead } from '../library';
import { amendBoat } from '../notebooks/amend';

export function NotebookKeys() {
  const bench = useBench();
  const input = useRef<HTMLInputElement>(null);
  const away = notebooksAway.value;
  const open = async (event: TargetedEvent<HTMLInputElement>) => {
    const files = [...(event.currentTarget.files ?? [])];
    await (await import('../notebooks/open-files')).openFiles(bench, files);
    // The same file, mended, may be chosen again.
    if (input.current) input.current.value = '';
  };
  const bringBack = (id: string) => {
    amendBoat(bench, (state) => putNotebookAway(state, id, false));
    location.hash = wayTo(id);
  };
  const key = useRef<HTMLButtonElement>(null);
  const throwAway = (id: string) => {
    amendBoat(bench, (state) => writeNotebook(state, id, null));
    // The key that was pressed goes.
    key.current?.focus();
  };
  return html`<div class="notebook-keys">
    <button ref=${key} type="button" class="quiet" onClick=${() => input.current?.click()}>Open a notebook from a file</button>
 ${use(ToWriteIn, {})}
    <input ref=${input} class="unseen" type="file" multiple accept=".md,.markdown,.txt,text/markdown,text/plain" tabindex="-1" aria-label="Notebook file" onChange=${open} />
    ${
      away.length > 0 &&
      html`<details class="notebooks-away">
        <summary>Put away (${away.length})</summary>
        <ul>
          ${away.map(
            ({ id, title }) => html`<li key=${id}>
              <span>${title}</span>
              <span class="keys">
                <button type="button" class="quiet" aria-label=${`Bring ${title} back`} onClick=${() => bringBack(id)}>Bring back</button>
                <button type="button" class="quiet" aria-label=${`Throw ${title} away`} onClick=${() => throwAway(id)}>Throw away</button>
              </span>
            </li>`,
          )}
        </ul>
      </details>`
    }
  </div>`;
}

/** The ways to a notebook that can be written in. */
function ToWriteIn() {
  const bench = useBench();
  const [title, setTitle] = useState<string | null>(null);
  const head = openHead();
  const lost = () => {
    bench.notice.value = {
      says: 'What one writes with did not arrive. Load the page again when you are online.',
    };
  };
  const begin = (event: Event) => {
    event.preventDefault();
    void import('./begin').then(({ beginNotebook }) => beginNotebook(bench, title ?? ''), lost);
    setTitle(null);
  };
  const copy = () => void import('./begin').then(({ makeOwn }) => head && makeOwn(bench, head), lost);
  const type = ({ currentTarget }: TargetedEvent<HTMLInputElement>) => setTitle(currentTarget.value);
  const field = (input: HTMLInputElement | null) => {
    if (input && title === '') input.focus();
  };
  return html`<${Fragment}>
  ${
    title === null
      ? html`<button type="button" class="quiet" onClick=${() => setTitle('')}>Begin a notebook</button>`
      : html`<form class="begin-notebook" onSubmit=${begin}>
          <label>Its title <input ref=${field} type="text" autocomplete="off" maxlength="120" value=${title} onInput=${type} /></label>
          <button type="submit">Begin</button>
          <button type="button" class="quiet" onClick=${() => setTitle(null)}>Not now</button>
        </form>`
  }
  ${head && !isOwn(head.id) ? html`<button type="button" class="quiet" onClick=${copy}>Make this notebook my own</button>` : null}
  <//>`;
}
