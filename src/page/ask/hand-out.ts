/** What a teacher hands out: a link to the notebook with what lies on the bench, or the notebook alone with a word for its numbers. */
import { useEffect, useId, useState } from 'preact/hooks';
import { LONGEST_SEED } from '../../boat';
import type { NotebookPage } from '../../notebook';
import { makeLink } from '../../notebook/link/make';
import { wayTo } from '../address';
import { useBench } from '../bench';
import { html, use } from '../html';
import { isOwn } from '../library';
import { linkOnBench } from '../link/on-bench';
import { CodeField } from './code-field';

export function HandOut({ page }: { page: NotebookPage }) {
  const id = useId();
  const bench = useBench();
  const [word, setWord] = useState('');
  const [letters, setLetters] = useState<string | null | undefined>();
  const link = linkOnBench(bench);
  const now = JSON.stringify([link, bench.name.value]);
  useEffect(() => {
    let isWanted = true;
    void makeLink(linkOnBench(bench)).then((made) => isWanted && setLetters(made?.letters ?? null));
    return () => {
      isWanted = false;
    };
  }, [now]);
  const base = location.href.replace(/[?#].*$/s, '');
  const seed = word.trim() === '' ? '' : `?seed=${encodeURIComponent(word.trim())}`;
  const short = `${base}${seed}${wayTo(page.id)}`;
  const seeded = page.blocks.some(({ type }) => type === 'seed');
  return html`<div>
    ${location.protocol === 'file:' ? fromDisk(page, seeded) : null}
    <p>The link opens this notebook with what lies on the bench now. What was said to its questions is not in it.</p>
    ${
      letters
        ? use(CodeField, {
            label: 'The link',
            text: `${base}#link=${letters}`,
            what: 'the link',
            tooLong: 'Hand out the short form below.',
          })
        : letters === null
          ? html`<p class="notice">There is more on this bench than a link holds. Hand out the short form, or the boat file.</p>`
          : html`<p aria-busy="true">The link is being made …</p>`
    }
    <p>${isOwn(page.id) ? 'This notebook is your own: the short form finds it only where its file was opened.' : 'The short form opens the notebook as it comes, and nothing of your bench.'}</p>
    ${
      seeded
        ? html`<p class="ask-field">
            <label for=${id}>A word for the numbers, the same for all; empty, and each learner types one</label>
            <input id=${id} type="text" autocomplete="off" maxlength=${LONGEST_SEED} value=${word} onInput=${(event: Event) => setWord((event.currentTarget as HTMLInputElement).value)} />
          </p>`
        : null
    }
    ${use(CodeField, { label: 'The short form', text: short, what: 'the short form', tooLong: 'Write it on the board.' })}
  </div>`;
}

/** A link to a file is a way on this computer alone. */
const fromDisk = (page: NotebookPage, seeded: boolean) => html`<div class="notice">
  <p><b>This page was opened from a disk.</b> A link or a square code made here works only on a computer that has the same file in the same place; a phone finds nothing.</p>
  <p>Instead, give each learner the file of this page, on a stick. There they open “${page.title}” ${isOwn(page.id) ? 'from its own file: save it first, with the key at its head' : 'from the list of notebooks'}.${seeded ? ' Say the word for the numbers aloud, or write it on the board.' : ''} What lies on your bench goes along as a boat file. What they hand in can be copied and sent as anywhere.</p>
</div>`;
