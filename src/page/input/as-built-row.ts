/** What stands in place of a designed value: a field for what the tape reads, or what the part was cut to. */
import type { TargetedEvent } from 'preact';
import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Given, partOf } from '../../boat';
import { isIssue, write, writeDifference } from '../../measure';
import { optionsFor, sayValue, useBench } from '../bench';
import { html, use } from '../html';
import { entryFrom } from './entry-text';
import { keypadFor } from './keypad';
import { focusField } from './row-keys';
import { takeAll, useTakeAll } from './take-all';
import { capital, waitsFor } from '../words';
import { tied } from '../as-built/words';

export interface AsBuiltRowProps {
  readonly quantity: Given;
  /** Whether the field is kept open, whatever stands in it. */
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
}

export function AsBuiltRow({ quantity, open, setOpen }: AsBuiltRowProps) {
  const { book } = useBench();
  const { measured, cut } = book.asBuilt.value;
  const { name } = quantity;
  const reading = measured[name];
  const held = cut[partOf(name)]?.held[name];
  const isMeasured = open || reading !== undefined;
  return html`<div class="as-built">
    ${held === undefined ? null : use(Held, { quantity, isMeasured })}
    ${isMeasured ? use(quantity.kind === 'choice' ? UsedInstead : Measured, { quantity, reading, open, setOpen }) : null}
  </div>`;
}

/** The part is cut: what it was cut to, and what the design says now. */
function Held({ quantity, isMeasured }: { quantity: Given; isMeasured: boolean }) {
  const { book, shown } = useBench();
  const graph = book.inHand.value;
  const { name, kind } = quantity;
  const say = (value: ReturnType<typeof graph.value>) =>
    tied(sayValue(value, kind, shown.value, optionsFor(graph, name)));
  const designed = graph.designed(name);
  const value = graph.value(name);
  if (isMeasured) return html`<p>This part is cut; what it measures holds.</p>`;
  if (isIssue(value)) return html`<p class="says" role="status">${capital(value.issue)}.</p>`;
  const difference =
    typeof value === 'number' && typeof designed === 'number'
      ? ` (${tied(writeDifference(designed - value, kind, shown.value))})`
      : '';
  return say(value) === say(designed)
    ? html`<p><b>Cut to ${say(value)}.</b></p>`
    : html`<p>
        <b>Cut to ${say(value)}.</b> The design says ${isIssue(designed) ? 'nothing that can be used' : `${say(designed)}${difference}`}; the part stays.
      </p>`;
}

interface MeasuredProps extends AsBuiltRowProps {
  readonly reading: string | undefined;
}

function Measured({ quantity, reading, open, setOpen }: MeasuredProps) {
  const bench = useBench();
  const { book, shown } = bench;
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const taking = useTakeAll(field);
  const [draft, setDraft] = useState<string | null>(null);
  const before = useRef<number | null>(null);
  const graph = book.inHand.value;
  const { name, kind } = quantity;
  const value = graph.value(name);
  const says = reading !== undefined && isIssue(value) ? value.issue : null;
  const text = draft ?? reading ?? '';
  useLayoutEffect(() => {
    if (open) field.current?.focus();
  }, []);

  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const typed = event.currentTarget.value;
    before.current ??= book.step.peek();
    setDraft(typed);
    book.measure({ [name]: entryFrom(typed, quantity, book.inHand.peek(), shown.peek()) }, `measure ${name}`);
  };
  const leave = () => {
    before.current = null;
    setDraft(null);
    book.settle();
    setOpen(false);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && before.current !== null && before.current !== book.step.peek()) book.undo();
    if ((event.key !== 'Enter' && event.key !== 'Escape') || event.altKey) return;
    // An empty field goes away, and the focus must not go with it.
    if (book.asBuilt.peek().measured[name] === undefined) focusField(event);
    else {
      leave();
      takeAll(field);
    }
  };
  const said = typeof value === 'number' && reading !== undefined ? write(value, kind, shown.value).text : '';
  return html`<div class=${`measured${says === null ? '' : ' wrong'}`}>
    <label for=${id}>Measured</label>
    <input
      id=${id}
      ref=${field}
      type="text"
      inputmode=${keypadFor(quantity, text, shown.value)}
      autocomplete="off"
      autocapitalize="off"
      spellcheck=${false}
      value=${text}
      aria-invalid=${says === null ? undefined : 'true'}
      aria-describedby=${`${id}-says`}
      ...${taking}
      onFocus=${() => {
        taking.onFocus();
        setOpen(true);
      }}
      onInput=${type}
      onBlur=${() => {
        taking.onBlur();
        leave();
      }}
      onKeyDown=${key}
    />
    <p class=${says === null ? 'from' : 'says'} id=${`${id}-says`} role="status">
      ${says === null ? (reading === undefined ? 'What calipers or tape read. It holds in both versions.' : `${unlike(said, text)}${against()}`) : `${capital(says)}.`}
    </p>
    ${reading === undefined ? null : use(BackToDesign, { name })}
  </div>`;

  /** How far the wood is off the design. */
  function against(): string {
    const designed = graph.designed(name);
    if (isIssue(designed)) return `the design waits for ${waitsFor(bench, designed)}`;
    if (typeof designed !== 'number' || typeof value !== 'number') return '';
    return `${tied(writeDifference(value - designed, kind, shown.value))} against the designed ${tied(write(designed, kind, shown.value).text)}`;
  }
}

const unlike = (said: string, text: string): string =>
  said === '' || said.replaceAll(/\s+/g, '') === text.replaceAll(/\s+/g, '') ? '' : `= ${said}, `;

/** A choice that came out otherwise: other plywood than was planned. */
function UsedInstead({ quantity, reading, open, setOpen }: MeasuredProps) {
  const { book, shown } = useBench();
  const id = useId();
  const field = useRef<HTMLSelectElement>(null);
  const graph = book.inHand.value;
  const { name, options = [] } = quantity;
  useLayoutEffect(() => {
    if (open) field.current?.focus();
  }, []);
  const change = (event: TargetedEvent<HTMLSelectElement>) => {
    book.measure({ [name]: event.currentTarget.value || null });
  };
  const known = options.some((option) => option.id === reading);
  return html`<div class="measured">
    <label for=${id}>Used in fact</label>
    <select id=${id} ref=${field} value=${known ? reading : ''} onFocus=${() => setOpen(true)} onChange=${change} onBlur=${() => setOpen(false)}>
      ${known ? null : html`<option value="" selected>—</option>`}
      ${options.map((option) => html`<option value=${option.id} selected=${option.id === reading}>${option.label}</option>`)}
    </select>
    ${
      reading === undefined
        ? null
        : html`<p class="from" role="status">
            ${known ? 'in place of' : `"${reading}" is none of these; designed`} ${sayValue(graph.designed(name), quantity.kind, shown.value, options)}
          </p>`
    }
    ${reading === undefined ? null : use(BackToDesign, { name })}
  </div>`;
}

function BackToDesign({ name }: { name: string }) {
  const { book } = useBench();
  const clear = (event: Event) => {
    focusField(event);
    book.measure({ [name]: null });
    book.settle();
  };
  return html`<button type="button" data-row-key class="back-to-design" onClick=${clear}>Back to the design</button>`;
}
