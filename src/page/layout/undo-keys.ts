/** Undo and redo from the keyboard; in a field the browser's own undo of letters comes first. */
import type { Book } from '../../notebook';

export function listenForUndo(book: Book): void {
  addEventListener('keydown', (event) => {
    const isUndo = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
    const { target } = event;
    const inText =
      target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');
    if (!isUndo || inText) return;
    event.preventDefault();
    if (event.shiftKey) book.redo();
    else book.undo();
  });
}
