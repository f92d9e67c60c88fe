/** One question with the page to itself: the way back, its cell, and what can be done with what was typed. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { VNode } from 'preact';
import type { Instance } from '../../cells';
import type { BookState, NotebookPage } from '../../notebook';
import { useBench } from '../bench';
import { wayTo } from '../address';
import { blockViews } from '../blocks/kinds';
import { html, use } from '../html';
import { later } from '../later';
import type { Question } from './parts';
import { startAgain, typedIn } from './start-again';

const VersionsView = later(async () => (await import('../versions-view')).VersionsView, 'versions');

export function OpenQuestion({ page, question }: { page: NotebookPage; question: Question }) {
  const bench = useBench();
  const { book, instances, inHand } = bench;
  const { name } = question;
  const place = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    inHand.value = name;
    // It fills the window from its top; what a longer address names in it is gone to from there.
    place.current?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, [name]);
  const instance = instances.value.get(name);
  return html`<section class="open-question" id=${name} tabindex="-1" aria-label=${question.asks} ref=${place}>
    <div class="question-keys">
      <a class="back" href=${wayTo(page.id)}>Questions</a>
      ${instance ? use(TypedKeys, { instance }) : null}
    </div>
    <article class="prose">
      ${blockViews([question.cell], page.id)}
      ${blockViews(question.prose, page.id)}
    </article>
    ${book.second.value ? use(VersionsView, {}) : null}
  </section>`;
}

/** There only where something was typed; what a key has done is said where the keys were. */
function TypedKeys({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { book } = bench;
  const host = useRef<HTMLDivElement>(null);
  /** The key pressed goes away with what it did; the focus goes on to what has come in its place. */
  const wanted = useRef<string | null>(null);
  const [done, setDone] = useState<Done | null>(null);
  const state = book.state.value;
  // What was said holds until the next edit.
  const said = done?.at === state ? done.says : null;
  useLayoutEffect(() => {
    if (wanted.current !== null) host.current?.querySelector<HTMLElement>(wanted.current)?.focus();
    wanted.current = null;
  });
  const say = (says: VNode) => setDone({ at: book.state.peek(), says });
  const again = () => {
    wanted.current = '.done button';
    startAgain(book, instance.name);
    say(
      html`<p>Your numbers are cleared. <button type="button" class="quiet" onClick=${bringBack}>Bring them back</button></p>`,
    );
  };
  const bringBack = () => {
    wanted.current = '.keys button';
    book.undo();
  };
  const take = async () => say((await import('./take')).takeToBoat(bench, instance));
  return html`<div class="typed-keys" ref=${host}>
    ${
      typedIn(state, instance.name).length > 0 &&
      html`<div class="keys">
        <button type="button" onClick=${again}>Start again</button>
        <button type="button" onClick=${take}>Take this to my boat</button>
      </div>`
    }
    <div class="done" role="status">${said}</div>
  </div>`;
}

interface Done {
  readonly at: BookState;
  readonly says: VNode;
}
