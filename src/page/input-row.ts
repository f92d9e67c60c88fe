/**
 * One input: label, entry, where the value comes from.
 *
 * The text typed is kept letter by letter while the field has the focus; what it says goes to the
 * graph at once. A text that can't be read stays, with the reason under it.
 */
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Given } from '../boat';
import { isIssue, read, write, writeExact } from '../measure';
import type { Graph } from '../notebook';
import { type Bench, graphOf, sayValue, useBench, versionWords } from './bench';
import { html, use } from './html';
import { Provenance } from './provenance';

export interface InputRowProps {
  /** Name of a given quantity. */
  readonly name: string;
  readonly label: string;
  /** Offers a slider between the quantity's limits. */
  readonly slider?: boolean;
  readonly note?: string;
}

export function InputRow({ name, label, slider = false, note }: InputRowProps) {
  const bench = useBench();
  const id = useId();
  const graph = bench.book.inHand.value;
  const quantity = graph.quantity(name) as Given | undefined;
  if (!quantity) return null;
  const value = graph.value(name);
  const entry = graph.entry(name)!;
  const own = isIssue(value) && value.waitsFor === undefined ? value.issue : null;
  const waits = isIssue(value) && value.waitsFor !== undefined ? value : null;
  const says = own ?? (waits ? `waits for ${waits.waitsFor}: ${waits.issue}` : null);
  return html`<div class=${`input ${own ? 'wrong' : ''} ${entry.written ? 'written' : ''}`} data-quantity=${name}>
    <label for=${id}>${label}</label>
    ${
      quantity.kind === 'choice'
        ? use(ChoiceField, { id, quantity, says })
        : use(EntryField, { id, quantity, says, slider })
    }
    ${says === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${capital(says)}.</p>`}
    ${use(Provenance, { name, note: note ?? quantity.source ?? '' })}
    ${use(OtherVersion, { name })}
  </div>`;
}

interface FieldProps {
  readonly id: string;
  readonly quantity: Given;
  readonly says: string | null;
}

function ChoiceField({ id, quantity, says }: FieldProps) {
  const { book } = useBench();
  const value = book.inHand.value.value(quantity.name);
  const change = (event: TargetedEvent<HTMLSelectElement>) => {
    book.write({ [quantity.name]: event.currentTarget.value });
    book.settle();
  };
  return html`<select
    id=${id}
    value=${typeof value === 'string' ? value : ''}
    onChange=${change}
    aria-describedby=${says === null ? undefined : `${id}-says`}
  >
    ${typeof value === 'string' ? null : html`<option value="" selected>—</option>`}
    ${(quantity.options ?? []).map(
      (option) => html`<option value=${option.id} selected=${option.id === value}>${option.label}</option>`,
    )}
  </select>`;
}

function EntryField({ id, quantity, says, slider }: FieldProps & { slider: boolean }) {
  const bench = useBench();
  const { book } = bench;
  const shown = bench.shown.value;
  const graph = book.inHand.value;
  const [draft, setDraft] = useState<string | null>(null);
  const value = graph.value(quantity.name);
  const text = draft ?? restText(bench, graph, quantity);
  const said = isIssue(value) || typeof value === 'string' ? '' : write(value, quantity.kind, shown).text;
  const run = `type ${quantity.name}`;

  const type = (event: TargetedEvent<HTMLInputElement>) => {
    setDraft(event.currentTarget.value);
    book.write({ [quantity.name]: selfContained(bench, quantity, event.currentTarget.value) }, run);
  };
  const leave = () => {
    setDraft(null);
    book.settle();
  };
  const set = (next: number, joined: string) =>
    book.write({ [quantity.name]: writeExact(next, quantity.kind, shown) }, joined);
  const nudge = (by: number) => {
    if (typeof value !== 'number') return;
    setDraft(null);
    set(
      clamp(value + by, limit(bench, quantity, 'min'), limit(bench, quantity, 'max')),
      `step ${quantity.name}`,
    );
  };
  const step = stepOf(bench, quantity, value);
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') leave();
    if (event.key === 'Escape') (event.currentTarget as HTMLInputElement).blur();
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      nudge(event.key === 'ArrowUp' ? step : -step);
    }
  };
  return html`<div class="entry">
    <div class="entry-line">
      <button type="button" class="step" tabindex="-1" aria-label=${`less: ${quantity.meaning}`} onClick=${() => nudge(-step)}>−</button>
      <input
        id=${id}
        type="text"
        inputmode="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck=${false}
        value=${text}
        aria-invalid=${says === null ? undefined : 'true'}
        aria-describedby=${says === null ? undefined : `${id}-says`}
        onInput=${type}
        onBlur=${leave}
        onKeyDown=${key}
      />
      <button type="button" class="step" tabindex="-1" aria-label=${`more: ${quantity.meaning}`} onClick=${() => nudge(step)}>+</button>
    </div>
    ${said && draft === null && said !== text ? html`<p class="means">= ${said}</p>` : null}
    ${draft !== null && said && unspaced(said) !== unspaced(draft) ? html`<p class="means">= ${said}</p>` : null}
    ${slider ? use(Slider, { quantity, set: (next) => set(next, `slide ${quantity.name}`) }) : null}
  </div>`;
}

/** A native range input beside the field, never instead of it. */
function Slider({ quantity, set }: { quantity: Given; set: (next: number) => void }) {
  const bench = useBench();
  const { book } = bench;
  const value = book.inHand.value.value(quantity.name);
  const min = limit(bench, quantity, 'min');
  const max = limit(bench, quantity, 'max');
  if (min === undefined || max === undefined || typeof value !== 'number') return null;
  const slide = (event: TargetedEvent<HTMLInputElement>) => set(event.currentTarget.valueAsNumber);
  return html`<input
    class="slider"
    type="range"
    min=${min}
    max=${max}
    step=${stepOf(bench, quantity, value)}
    value=${value}
    aria-label=${quantity.meaning}
    aria-valuetext=${write(value, quantity.kind, bench.shown.value).spoken}
    onInput=${slide}
    onChange=${() => book.settle()}
  />`;
}

/** What the field shows when nobody types: the entry as written, or the value that a link brings. */
function restText(bench: Bench, graph: Graph, quantity: Given): string {
  const entry = graph.entry(quantity.name)!;
  if (entry.written) return entry.text;
  const value = graph.value(quantity.name);
  return typeof value === 'number' ? write(value, quantity.kind, bench.shown.value).text : entry.text;
}

/** A bare number takes the unit the field shows; an empty field goes back to its preset; what can't be read is kept. */
function selfContained(bench: Bench, quantity: Given, text: string): string | null {
  if (text.trim() === '') return null;
  const graph = bench.book.inHand.peek();
  const reading = read(text, {
    kind: quantity.kind,
    shown: bench.shown.peek(),
    field: quantity.meaning,
    kindOf: (name) => graph.quantity(name)?.kind,
    known: () => graph.names,
  });
  return isIssue(reading) ? text : reading.text;
}

function entryValue(bench: Bench, quantity: Given, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const reading = read(text, { kind: quantity.kind, shown: bench.shown.peek(), field: quantity.meaning });
  const value = isIssue(reading) ? reading : reading.evaluate(() => 0);
  return isIssue(value) ? undefined : value;
}

const limit = (bench: Bench, quantity: Given, end: 'min' | 'max') =>
  entryValue(bench, quantity, quantity[end]);

/** The declared step, else one that suits the number: 1, 2 or 5 in its second figure. */
function stepOf(bench: Bench, quantity: Given, value: unknown): number {
  const { length } = bench.shown.peek();
  if (quantity.kind === 'length' && length !== 'mm')
    return typeof value === 'number' && value > 0.6 ? 0.00635 : 0.0015875;
  const declared = entryValue(bench, quantity, quantity.step);
  if (declared !== undefined) return declared;
  if (typeof value !== 'number' || value === 0) return 1;
  return 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1);
}

function clamp(value: number, min = -Infinity, max = Infinity): number {
  return Math.min(max, Math.max(min, value));
}
const unspaced = (text: string) => text.replaceAll(' ', '');
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The other version's value, where there are two and they differ. */
function OtherVersion({ name }: { name: string }) {
  const { book, shown } = useBench();
  if (!book.second.value) return null;
  const other = book.state.value.inHand === 'second' ? 'first' : 'second';
  const graph = graphOf(book, other);
  const quantity = graph.quantity(name);
  const value = graph.value(name);
  if (!quantity || value === book.inHand.value.value(name)) return null;
  const options = 'options' in quantity ? quantity.options : [];
  return html`<p class=${`other ${other}`}>
    ${versionWords[other]}: ${sayValue(value, quantity.kind, shown.value, options)}
  </p>`;
}
