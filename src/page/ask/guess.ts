/** The field of a guess: a number, one of a few answers, or words; and what each guess that was written is worth. */
import type { VNode } from 'preact';
import { useId, useState } from 'preact/hooks';
import { type Issue, isIssue } from '../../measure';
import { shownUnit } from '../../measure/shown';
import { directionWords, hasUnit, judge } from '../../notebook/lesson/judge';
import { type Key, unitOf } from '../../notebook/lesson/key';
import { optionsFor, useBench } from '../bench';
import { html, use } from '../html';
import { bareOf } from '../bare';
import { capital } from '../words';
import { type AskProps, guessWords } from './ask-words';
import { useSaid } from './lesson-in-hand';

export function Guess({ ask, showing, answer }: AskProps & { answer: Key | Issue }) {
  const bench = bareOf(useBench());
  const { said, writeDown, put, settle } = useSaid(showing.notebook, ask.name);
  const [says, tell] = useState('');
  const shown = bench.shown.value;
  if (isIssue(answer)) return html`<p class="notice">Line ${ask.line}: ${capital(answer.issue)}.</p>`;
  const write = (text: string) => {
    const { is, says: why } = judge(text, answer, ask.within, shown);
    tell(is === 'unread' ? why : (writeDown(text) ?? ''));
  };
  const keep = (text: string) => tell(put({ draft: text }, 'draft') ?? '');
  const field: FieldProps = { draft: said.draft, says, again: said.guesses.length > 0, keep, write, settle };
  return html`<div class="ask-guess">
    ${
      said.guesses.length > 0
        ? html`<ol class="ask-guesses" aria-live="polite">${said.guesses.map((text) => html`<li>${capital(guessWords(text, answer, bench.book.first.value, shown))} <em>${worth(text, answer)}</em></li>`)}</ol>`
        : null
    }
    ${fieldFor(answer, field)}
  </div>`;

  /** Of three answers two would be left: whether it is so is told with the answer. */
  function worth(text: string, key: Key): string {
    return key.is === 'number' ? judge(text, key, ask.within, shown).says : 'Written down.';
  }

  function fieldFor(key: Key, props: FieldProps): VNode {
    if (key.is === 'number')
      return use(InNumbers, {
        ...props,
        unit: hasUnit(key.kind) ? unitWords(unitOf(key) ?? shownUnit(key.kind, shown)) : '',
      });
    if (key.is === 'words') return use(InWords, props);
    const options =
      key.is === 'choice'
        ? optionsFor(bench.book.first.value, key.of).map(({ id, label }) => ({ id, label }))
        : Object.entries(directionWords).map(([id, label]) => ({ id, label }));
    return use(OneOf, { ...props, options });
  }
}

interface FieldProps {
  readonly draft: string;
  readonly says: string;
  /** Whether a guess is written already. */
  readonly again: boolean;
  readonly keep: (text: string) => void;
  readonly write: (text: string) => void;
  readonly settle: () => void;
}

/** `in in` is no English. */
const unitWords = (unit: string): string => (unit === 'in' ? 'inches' : unit);

const label = (again: boolean) => (again ? 'Another guess' : 'Your guess');

function InNumbers({ draft, says, again, keep, write, settle, unit }: FieldProps & { unit: string }) {
  const id = useId();
  const enter = (event: KeyboardEvent) => {
    if (event.key === 'Enter') write((event.currentTarget as HTMLInputElement).value);
  };
  return html`<div class="ask-field">
    <label for=${id}>${label(again)}${unit === '' ? '' : html` <span class="ask-unit">in ${unit}, or with its unit</span>`}</label>
    <div class="ask-line">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        value=${draft}
        aria-invalid=${says === '' ? undefined : 'true'}
        aria-describedby=${`${id}-says`}
        onInput=${(event: Event) => keep((event.currentTarget as HTMLInputElement).value)}
        onKeyDown=${enter}
        onBlur=${settle}
      />
      <button type="button" onClick=${() => write(draft)}>Write it down</button>
    </div>
    <p class="says" id=${`${id}-says`} role="alert">${says}</p>
  </div>`;
}

function InWords({ draft, says, again, keep, write, settle }: FieldProps) {
  const id = useId();
  return html`<div class="ask-field">
    <label for=${id}>${label(again)}, in words</label>
    <textarea
      id=${id}
      rows="2"
      value=${draft}
      aria-describedby=${`${id}-says`}
      onInput=${(event: Event) => keep((event.currentTarget as HTMLTextAreaElement).value)}
      onBlur=${settle}
    ></textarea>
    <p class="says" id=${`${id}-says`} role="alert">${says}</p>
    <button type="button" onClick=${() => write(draft)}>Write it down</button>
  </div>`;
}

interface OneOfProps extends FieldProps {
  readonly options: readonly { readonly id: string; readonly label: string }[];
}

/** Keys where there are few, each of which writes the guess down. */
function OneOf({ says, again, options, write }: OneOfProps) {
  const id = useId();
  return html`<div class="ask-field" role="group" aria-labelledby=${id}>
    <p id=${id} class="ask-label">${label(again)}</p>
    <p class="ask-line">${options.map((one) => html`<button type="button" key=${one.id} onClick=${() => write(one.id)}>${one.label}</button>`)}</p>
    <p class="says" role="alert">${says}</p>
  </div>`;
}
