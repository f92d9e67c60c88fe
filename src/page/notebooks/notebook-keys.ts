/** Below the list of notebooks: the key that opens one from a file, and those that are put away. */
import type { TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import { putNotebookAway, writeNotebook } from '../../notebook';
import { useBench } from '../bench';
import { wayTo } from '../address';
import { html } from '../html';
import { notebooksAway } from '../library';
import { amendBoat } from './amend';

export function NotebookKeys() {
  const bench = useBench();
  const input = useRef<HTMLInputElement>(null);
  const away = notebooksAway.value;
  const open = async (event: TargetedEvent<HTMLInputElement>) => {
    const files = [...(event.currentTarget.files ?? [])];
    await (await import('./open-files')).openFiles(bench, files);
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
