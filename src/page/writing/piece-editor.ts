/** Some lines of the notebook in a field, in their place on the page; what they come to stands below it. */
import type { TargetedEvent, TargetedKeyboardEvent } from 'preact';
import { useEffect, useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { NotebookPage } from '../../notebook';
import { closed } from '../../notebook/writing/closed';
import { replaced } from '../../notebook/writing/edits';
import { useBench } from '../bench';
import { html } from '../html';
import { useHeld } from './held';
import { type PieceInHand, inHand } from './in-hand';
import { askToPlace } from './placing';
import { putAt, showAt } from './put-at';
import { textOf, writeText } from './write';

export interface PieceEditorProps {
  readonly page: NotebookPage;
  readonly begins: PieceInHand;
  /** Whether what stands below is taken in by what is typed. */
  readonly takesIn: boolean;
  /** The cell above, whose names serve as examples. */
  readonly above: string | null;
  readonly onDone: () => void;
}

export function PieceEditor({ page, begins, takesIn, above, onDone }: PieceEditorProps) {
  const bench = useBench();
  const { id } = page;
  const field = useRef<HTMLTextAreaElement>(null);
  const says = useId();
  const [words, setWords] = useState(begins.words);
  const [why, setWhy] = useState('');
  const refused = useRef<string | null>(null);
  const text = textOf(bench, id);
  /** The notebook's text as this field left it: where it is another, somebody else wrote, by Undo or in a file. */
  const left = useRef(text);
  const held = useHeld((typed, run) => {
    const span = inHand.peek();
    if (span?.opened !== begins.opened || textOf(bench, id) !== left.current || left.current === undefined)
      return;
    const done = replaced(left.current, span, closed(typed) ?? typed);
    refused.current = writeText(bench, id, done.text, run);
    setWhy(refused.current ?? '');
    if (refused.current !== null) return;
    left.current = done.text;
    inHand.value = { ...span, first: done.first, last: done.last };
  });
  useEffect(() => {
    if (text !== left.current && inHand.peek()?.opened === begins.opened) inHand.value = null;
  }, [text, begins.opened]);
  useLayoutEffect(() => {
    if (field.current) showAt(field.current, begins.from, begins.to);
  }, []);
  const type = (typed: string) => {
    setWords(typed);
    held.type(typed);
  };
  const done = () => {
    held.flush();
    bench.book.settle();
    // What was not kept must not be lost from sight.
    if (refused.current === null) onDone();
  };
  const onKey = (event: TargetedKeyboardEvent<HTMLTextAreaElement>) => {
    const isDone = event.key === 'Escape' || (event.key === 'Enter' && (event.ctrlKey || event.metaKey));
    if (!isDone || event.isComposing) return;
    event.preventDefault();
    done();
  };
  const place = () =>
    askToPlace(bench, page, { inSentence: true, above }, (put) => {
      if (!field.current) return;
      const next = putAt(field.current.value, field.current.selectionStart, put);
      type(next.text);
      requestAnimationFrame(() => field.current && showAt(field.current, next.from, next.to));
    });
  const told =
    why !== ''
      ? why
      : closed(words) !== null
        ? 'This block is not closed: end it with ``` on a line of its own. Until then it is closed for you.'
        : takesIn
          ? 'This runs into what stands below it.'
          : '';
  return html`<div class="piece-editor">
    <textarea
      ref=${field}
      rows=${Math.max(2, words.split('\n').length)}
      aria-label="Markdown of this piece"
      aria-describedby=${says}
      placeholder="Write here."
      spellcheck=${true}
      value=${words}
      onInput=${({ currentTarget }: TargetedEvent<HTMLTextAreaElement>) => type(currentTarget.value)}
      onKeyDown=${onKey}
      onBlur=${held.flush}
    ></textarea>
    <p class="says" id=${says} role="status">${told}</p>
    <p class="keys">
      <button type="button" onClick=${done}>Done</button>
      <button type="button" class="quiet" aria-haspopup="dialog" onClick=${place}>Place a number or a block</button>
    </p>
  </div>`;
}
