/** One number of the cell in hand, with its keypad; a choice has a key for each of its answers. */
import type { TargetedEvent } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Given } from '../../boat';
import { isIssue } from '../../measure';
import { useBench } from '../bench';
import { html, use } from '../html';
import { useDraft } from '../input/draft';
import { fieldValue } from '../input/entry-text';
import { stepEntry } from '../input/step-entry';
import { StepKey } from '../input/step-key';
import { capital } from '../words';
import type { BenchField } from './bench-field';
import { FEET, padFor, type PadKey, pressed, RUB_OUT } from './keys';

export interface NumberInHandProps {
  readonly field: BenchField;
  readonly onBack: () => void;
  readonly onNext: () => void;
}

export function NumberInHand(props: NumberInHandProps) {
  const { book } = useBench();
  const quantity = book.inHand.value.quantity(props.field.name) as Given | undefined;
  if (!quantity) return null;
  return quantity.kind === 'choice'
    ? use(ChoiceInHand, { ...props, quantity })
    : use(EntryInHand, { ...props, quantity });
}

type InHandProps = NumberInHandProps & { readonly quantity: Given };

function ChoiceInHand({ field, quantity, onBack, onNext }: InHandProps) {
  const { book } = useBench();
  const value = fieldValue(book.inHand.value, quantity.name);
  const choose = (id: string) => {
    book.write({ [quantity.name]: id });
    book.settle();
  };
  return html`<section class="bench-field" aria-label=${field.label}>
    <h2 class="bench-label">${field.label}</h2>
    <div class="bench-choices" role="group" aria-label=${field.label}>
      ${(quantity.options ?? []).map(
        ({ id, label }) =>
          html`<button type="button" key=${id} aria-pressed=${id === value} onClick=${() => choose(id)}>${label}</button>`,
      )}
    </div>
    <div class="bench-turn">${turnKeys(onBack, onNext)}</div>
  </section>`;
}

function EntryInHand({ field, quantity, onBack, onNext }: InHandProps) {
  const bench = useBench();
  const { book, shown } = bench;
  const input = useRef<HTMLInputElement>(null);
  const { draft, text, type, drop, leave } = useDraft(quantity);
  const value = fieldValue(book.inHand.value, quantity.name);
  const says = isIssue(value) && value.waitsFor === undefined ? `${capital(value.issue)}.` : '';
  const step = (count: number) => {
    drop();
    stepEntry(bench, quantity, count, null);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') {
      leave();
      if (says === '') onNext();
      return;
    }
    const count = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    if (count === undefined) return;
    event.preventDefault();
    step(count);
  };
  // The keys of a laptop go to it at once.
  useLayoutEffect(() => {
    input.current?.focus();
    input.current?.select();
    return () => book.settle();
  }, []);
  return html`<section class="bench-field" aria-label=${field.label}>
    <div class="bench-line">
      <label class="bench-label" for="bench-entry">${field.label}</label>
      ${stepKey('−', -1)} ${stepKey('+', 1)}
    </div>
    <input
      id="bench-entry"
      ref=${input}
      type="text"
      inputmode="none"
      autocomplete="off"
      spellcheck=${false}
      value=${text}
      aria-invalid=${says === '' ? undefined : 'true'}
      aria-describedby="bench-says"
      onInput=${(event: TargetedEvent<HTMLInputElement>) => type(event.currentTarget.value, null)}
      onKeyDown=${key}
    />
    <p class="bench-says" id="bench-says" role="status">${says}</p>
    <div class="bench-pad" role="group" aria-label="Keypad">
      ${padFor(quantity, shown.value).map((padKey) => (padKey === null ? html`<span></span>` : keyView(padKey)))}
      ${turnKeys(onBack, onNext)}
    </div>
  </section>`;

  function keyView(padKey: PadKey) {
    // The number that stands there gives way to what is typed; it can be rubbed out mark by mark too.
    const press = () => type(pressed(draft ?? (padKey === RUB_OUT ? text : ''), padKey), null);
    // The caret stays in the number: a key of the pad takes no focus.
    return html`<button type="button" class=${/^\d$/.test(padKey) ? 'digit' : ''} aria-label=${spoken(padKey)} onPointerDown=${keepFocus} onClick=${press}>
      ${faceOf(padKey)}
    </button>`;
  }

  function stepKey(sign: '−' | '+', count: number) {
    return use(StepKey, {
      sign,
      label: `${count > 0 ? 'more' : 'less'}: ${field.label}`,
      disabled: typeof value !== 'number',
      act: () => step(count),
    });
  }
}

const keepFocus = (event: Event) => event.preventDefault();

const faceOf = (key: PadKey) => (key === RUB_OUT ? rubber : key === '-' ? '−' : key);

/** A block with a cross, its point towards what goes. */
const rubber = html`<svg viewBox="0 0 34 24" width="34" height="24" aria-hidden="true"><path d="M10 2H32V22H10L2 12ZM16 7.5l9 9m0-9l-9 9" /></svg>`;

const spoken = (key: PadKey): string | undefined =>
  ({ [RUB_OUT]: 'rub out', [FEET]: 'feet', '-': 'minus', '.': 'point' })[key];

const turnKeys = (onBack: () => void, onNext: () => void) => html`
  <button type="button" class="turn" onClick=${onBack}>Back</button>
  <button type="button" class="turn next" onClick=${onNext}>Next</button>`;
