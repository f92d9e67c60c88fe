/** Where a learner takes numbers of his or her own, drawn by a word: a name or a number. */
import { useId, useState } from 'preact/hooks';
import { LONGEST_SEED } from '../../boat';
import { isIssue } from '../../measure';
import type { SeedPlace } from '../../notebook';
import { draw } from '../../notebook/lesson/draw';
import { lessonIn, writeSeed } from '../../notebook/lesson/write-lesson';
import { write } from '../../notebook/state/state';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { isAllThere, openText } from '../library';
import { bareOf } from '../bare';
import { capital } from '../words';
import { asksOf } from '../asks';
import './ask.css';

export function SeedView({ seed, notebook }: { seed: SeedPlace; notebook: string }) {
  const bench = bareOf(useBench());
  const id = useId();
  const { book } = bench;
  const now = lessonIn(book.state.value, notebook).seed;
  const [typed, setTyped] = useState(() => (now === '' ? wordInAddress() : null));
  const [says, tell] = useState('');
  const word = typed ?? now;
  const take = () => {
    const why = takeNumbers(word.trim(), seed, notebook, bench);
    tell(why === null ? '' : `${capital(why)}.`);
    if (why === null) setTyped(null);
  };
  const enter = (event: KeyboardEvent) => {
    if (event.key === 'Enter') take();
  };
  // On the wall the class looks at one set of numbers.
  if (bench.wall.value)
    return html`<p class="seed">${now === '' ? 'The numbers are the notebook’s.' : `The numbers of “${now}”.`}</p>`;
  return html`<div class="ask seed">
    <div class="ask-field">
      <label for=${id}>Numbers of your own: your name, or the number that you were given</label>
      <div class="ask-line">
        <input
          id=${id}
          type="text"
          autocomplete="off"
          maxlength=${LONGEST_SEED}
          value=${word}
          aria-describedby=${`${id}-says`}
          onInput=${(event: Event) => setTyped((event.currentTarget as HTMLInputElement).value)}
          onKeyDown=${enter}
        />
        <button type="button" onClick=${take}>Take these numbers</button>
      </div>
      <p class="says" id=${`${id}-says`} role="alert">${says}</p>
      <p class="ask-note" role="status">${now === '' ? 'Now the numbers are the notebook’s. The same word always brings the same numbers.' : `Now the numbers are those of “${now}”. Clear the word to have the notebook’s again.`}</p>
    </div>
  </div>`;
}

/** The word that a teacher handed on with the address; it is put into the field, and taken by nobody but the learner. */
const wordInAddress = (): string | null =>
  new URLSearchParams(location.search).get('seed')?.slice(0, LONGEST_SEED) ?? null;

/** One step: the word, and the numbers that it draws. @returns why there are none, as a sentence; null where there are */
function takeNumbers(word: string, seed: SeedPlace, notebook: string, bench: Bench): string | null {
  const { book, sheet } = bench;
  const page = openText();
  if (!isAllThere()) return 'not all has come yet: try again in a moment';
  // A boat of the builder's own is nobody's to change.
  const isOwn = (of: string) =>
    page?.places.some(({ instance, cell }) => of.startsWith(`${instance}.`) && instance !== cell) ?? false;
  const hers = seed.may.find(({ of }) => sheet.peek().kind === 'boat' && !isOwn(of));
  if (hers) return `${hers.of} is a number of your own boat, which no word changes`;
  const none = Object.fromEntries(seed.may.map(({ of }) => [of, null]));
  const state = book.state.peek();
  const changes = word === '' ? none : draw(word, seed, asksOf(page), book.first.peek());
  if (isIssue(changes)) return changes.issue;
  book.settle();
  book.open(write(writeSeed(state, notebook, word), changes));
  return null;
}
