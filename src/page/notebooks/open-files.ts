/** Opens what a builder chose or dropped: notebooks, to be kept with the boat in hand, and boat files. */
import type { OwnNotebooks } from '../../boat';
import { type NotebookPage, writeNotebook } from '../../notebook';
import { parseNotebook } from '../../notebook/markdown';
import { wayTo } from '../address';
import type { Bench } from '../bench';
import { openBoatFile } from '../boat/open-boat-file';
import { notebooks } from '../library';
import { amendBoat } from './amend';
import { notebookText } from './file-text';
import { keptWith } from './kept-with';
import { noRoom } from './room';

export async function openFiles(bench: Bench, files: readonly File[]): Promise<void> {
  for (const file of files) {
    // One after the other, so that each is a step of its own.
    // oxlint-disable-next-line no-await-in-loop
    await (/\.json$/i.test(file.name) ? openBoatFile(bench, file) : openNotebookFile(bench, file));
  }
}

async function openNotebookFile(bench: Bench, file: File): Promise<void> {
  const tell = (says: string) => {
    bench.notice.value = { says };
  };
  const text = await notebookText(file);
  if (typeof text !== 'string') {
    tell(`${file.name} was not opened: ${text.because}.`);
    return;
  }
  const page = parseNotebook(text, file.name);
  amendBoat(bench, (state) => {
    const id = idBeside(page, state.notebooks);
    const full = noRoom({ ...state.notebooks, [id]: { text, away: false } });
    if (full !== null) {
      tell(`${file.name} was not opened: ${full}.`);
      return state;
    }
    tell(opened(page, id, state, bench.shelf));
    location.hash = wayTo(id);
    return writeNotebook(state, id, text);
  });
}

/** One of the same file and title is read anew; another of the same file stands beside it, under the next number. */
function idBeside({ id, title }: NotebookPage, own: OwnNotebooks): string {
  for (let n = 1; ; n += 1) {
    const one = n === 1 ? id : `${id}-${n}`;
    if (titleAt(one, own) === title || titleAt(one, own) === undefined) return one;
  }
}

function titleAt(id: string, own: OwnNotebooks): string | undefined {
  return Object.hasOwn(own, id)
    ? parseNotebook(own[id]!.text, id).title
    : notebooks.peek().find((head) => head.id === id)?.title;
}

function opened(
  { title }: NotebookPage,
  id: string,
  { name, notebooks: own }: { readonly name: string; readonly notebooks: OwnNotebooks },
  shelf: Bench['shelf'],
): string {
  if (Object.hasOwn(own, id)) return `“${title}” is read anew. Undo brings back the text before.`;
  return notebooks.peek().some((head) => head.id === id)
    ? `“${title}” now stands in place of the one that comes along. Put it away to have that back.`
    : `“${title}” is opened. It ${keptWith(shelf, name)}.`;
}
