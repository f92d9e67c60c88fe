/** What a learner shows or sends: a text that holds the guesses and sentences of this notebook. */
import { useEffect, useId, useState } from 'preact/hooks';
import type { NotebookPage } from '../../notebook';
import { LONGEST_NAME, writeHandedIn } from '../../notebook/lesson/hand-in';
import { lessonIn } from '../../notebook/lesson/write-lesson';
import { useBench } from '../bench';
import { html, use } from '../html';
import { CodeField } from './code-field';

/** The name that was last typed here, in this browser. */
const KEY = 'battenbook learner';

export function HandIn({ page }: { page: NotebookPage }) {
  const id = useId();
  const { book, shelf } = useBench();
  const lesson = lessonIn(book.state.value, page.id);
  const [name, setName] = useState(() => kept(() => shelf?.getItem(KEY)) ?? lesson.seed);
  const [text, setText] = useState('');
  const said = JSON.stringify(lesson);
  useEffect(() => {
    let isWanted = true;
    void writeHandedIn({ name: name.trim(), notebook: page.id, lesson }).then(
      (made) => isWanted && setText(made),
    );
    return () => {
      isWanted = false;
    };
  }, [said, name, page.id]);
  const type = (event: Event) => {
    const typed = (event.currentTarget as HTMLInputElement).value;
    setName(typed);
    kept(() => shelf?.setItem(KEY, typed));
  };
  const count = Object.values(lesson.said).filter(({ guesses }) => guesses.length > 0).length;
  return html`<div>
    <p>This text holds your name, your guesses and your sentences, and nothing else. Nothing leaves this browser until you show it or send it.</p>
    <label for=${id}>Your name, as the teacher knows you</label>
    <input id=${id} type="text" autocomplete="off" maxlength=${LONGEST_NAME} value=${name} onInput=${type} />
    <p>${count === 0 ? 'Nothing is written down yet.' : `${count} of ${page.blocks.filter(({ type: of }) => of === 'ask').length} questions are answered.`}</p>
    ${
      count > 0 && text !== ''
        ? use(CodeField, {
            label: 'What you hand in',
            text,
            what: 'what you hand in',
            tooLong: 'Copy the text and send that.',
          })
        : null
    }
  </div>`;
}

/** A shelf may be full or shut. */
function kept<T>(use: () => T): T | null {
  try {
    return use();
  } catch {
    return null;
  }
}
