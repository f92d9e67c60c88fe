/** What is being typed into an entry: kept letter by letter, while what it says goes to the graph at once. */
import { useRef, useState } from 'preact/hooks';
import type { Given } from '../../boat';
import { useBench } from '../bench';
import { entryFrom, moneyIn, restText } from './entry-text';
import { holdInPlace } from './hold-in-place';

export function useDraft(quantity: Given) {
  const { book, shown } = useBench();
  const { name, kind } = quantity;
  const [draft, setDraft] = useState<string | null>(null);
  /** The count of steps before typing began, by which one knows whether there is something to take back. */
  const before = useRef<number | null>(null);
  const drop = () => {
    before.current = null;
    setDraft(null);
  };
  const leave = () => {
    drop();
    book.settle();
  };
  return {
    /** Null while what stands there is the number as it is. */
    draft,
    text: draft ?? restText(book.inHand.value, quantity, shown.value),
    /** @param at stays where it is in the window, whatever the number moves above it */
    type: (typed: string, at: Element | null) => {
      before.current ??= book.step.peek();
      setDraft(typed);
      // All prices are in the money that the builder types.
      const money = moneyIn(typed, kind);
      if (money !== undefined && money !== shown.peek().money) shown.value = { ...shown.peek(), money };
      const entry = entryFrom(typed, quantity, book.inHand.peek(), shown.peek());
      const write = () => book.write({ [name]: entry }, `type ${name}`);
      if (at) holdInPlace(at, write);
      else write();
    },
    /** Lets go of the text, for a number that comes by a key. */
    drop,
    leave,
    takeBack: () => {
      if (before.current !== null && before.current !== book.step.peek()) book.undo();
      leave();
    },
  };
}
