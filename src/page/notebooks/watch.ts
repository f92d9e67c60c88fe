/** Once the page is at rest: the notebooks of a boat that is not on the bench are looked up, and files may be dropped. */
import { effect, untracked } from '@preact/signals';
import { keptAt } from '../../notebook/keeping/read-saved';
import type { Bench } from '../bench';

export function watchNotebooks(bench: Bench): void {
  const { ownBoat, ownNotebooks, resting, shelf } = bench;
  effect(() => {
    const boat = ownBoat.value;
    if (ownNotebooks.value !== null) return;
    const kept = untracked(() => keptAt(shelf, boat));
    resting.value = { boat, notebooks: kept?.state.notebooks ?? {} };
  });
  watchDrops(bench);
}

function watchDrops(bench: Bench): void {
  const over = (is: boolean) => document.body.classList.toggle('dropping', is);
  const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  addEventListener('dragover', (event) => {
    if (!holdsFiles(event)) return;
    // Else the browser would leave the page for the file.
    event.preventDefault();
    over(true);
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) over(false);
  });
  addEventListener('drop', (event) => {
    if (!holdsFiles(event)) return;
    event.preventDefault();
    over(false);
    const files = [...(event.dataTransfer?.files ?? [])];
    void import('./open-files').then(({ openFiles }) => openFiles(bench, files));
  });
}
