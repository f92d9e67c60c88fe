/** Once the page is at rest: words of the trade are linked to what they mean, and say it when they are pointed at. */
import { effect } from '@preact/signals';
import type { NotebookPage } from '../../notebook';
import { WORDS, wordsIn } from '../../notebook/text/glossary';
import { allOnShelf } from '../library';
import { wordLinks } from '../word-links';
import { finderOf, linked } from './linked';
import { sayOnPointing } from './said';
import './words.css';

export function watchWords(): void {
  let known: NotebookPage | undefined;
  effect(() => {
    const words = allOnShelf().pages.find(({ id }) => id === WORDS);
    if (!words || words === known) return;
    known = words;
    const finder = finderOf(wordsIn(words));
    const made = new WeakMap<NotebookPage, NotebookPage>();
    wordLinks.value = (page) => {
      const before = made.get(page) ?? linked(page, finder);
      made.set(page, before);
      return before;
    };
  });
  sayOnPointing();
}
