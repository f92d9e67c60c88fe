/** What was said to a question, and the ways to say more: each a step that Undo takes back. */
import { LONGEST_SAID, MOST_GUESSES, type SaidTo, tooMuchSaid } from '../../boat';
import { saidIn, writeSaid } from '../../notebook/lesson/write-lesson';
import { useBench } from '../bench';

export interface InHand {
  readonly said: SaidTo;
  /** Writes what has changed. @returns why it can't be kept, as a sentence; null where it is */
  readonly put: (change: Partial<SaidTo>, run?: string) => string | null;
  readonly writeDown: (guess: string) => string | null;
  /** Takes all that was said back, to begin anew. */
  readonly beginAnew: () => void;
  readonly settle: () => void;
}

export function useSaid(notebook: string, ask: string): InHand {
  const { book } = useBench();
  // As it is now: what is typed quickly comes before what was typed last is drawn.
  const now = () => saidIn(book.state.peek(), notebook, ask);
  const put = (change: Partial<SaidTo>, run?: string): string | null => {
    const next = writeSaid(book.state.peek(), notebook, ask, change);
    const why = tooMuchSaid(next.lessons);
    if (why !== null) return `The last letters are not kept: what is said to questions ${why}.`;
    if ([change.draft, change.sentence].some((text) => (text ?? '').length > LONGEST_SAID))
      return `The last letters are not kept: ${LONGEST_SAID} are the most.`;
    book.open(next, run && `${notebook} ${ask} ${run}`);
    return null;
  };
  return {
    said: saidIn(book.state.value, notebook, ask),
    put,
    writeDown: (guess) => {
      const { guesses } = now();
      if (guesses.length >= MOST_GUESSES) return `${MOST_GUESSES} guesses are enough: look at the answer.`;
      book.settle();
      return put({ guesses: [...guesses, guess.trim()], draft: '' });
    },
    beginAnew: () => book.open(writeSaid(book.state.peek(), notebook, ask, null)),
    settle: () => book.settle(),
  };
}
