/** Flare of one panel at one station, to be set. */
import type { TargetedEvent } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { isIssue, read, type Reading, type Shown, write, wordsOf } from '../../measure';
import type { Graph } from '../../notebook';
import { useBench } from '../bench';
import { html, use } from '../html';
import { describedBy, FieldLine } from '../input/field-line';
import { onRowKey } from '../input/row-keys';
import { useTakeAll } from '../input/take-all';
import { capital, waitsFor } from '../words';
import { type FlareAt, flareEntry, flareIn, movedBy } from './flare-entry';

export function FlareRow({ at, panel, label }: { at: FlareAt; panel: string; label: string }) {
  const bench = useBench();
  const { book, shown } = bench;
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const taking = useTakeAll(field);
  const [draft, setDraft] = useState<string | null>(null);
  const [open, setOpen] = useState(false);
  const moved = movedBy(at);
  const graph = book.inHand.value;
  const value = graph.value(`${at.station}.${panel}.flare`);
  const entry = graph.entry(moved);
  const typed = entry?.written ? flareIn(at, entry.text) : null;
  const now = typeof value === 'number' ? write(value, 'angle', shown.value).text : '';
  const text = draft ?? typed ?? now;
  const offset = graph.value(moved);
  const says =
    typed === null ? null : (faultIn(typed, graph, shown.value) ?? (isIssue(offset) ? offset.issue : null));

  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const next = event.currentTarget.value;
    setDraft(next);
    const kept = next.trim() === '' ? null : flareEntry(at, keptText(next, book.inHand.peek(), shown.peek()));
    book.write({ [moved]: kept }, `flare ${moved}`);
  };
  const leave = () => {
    setDraft(null);
    book.settle();
  };
  const close = () => setOpen(false);
  const key = (event: KeyboardEvent) => onRowKey(event, { isOpen: open, enter: () => setOpen(true), close });
  const isHeld = entry?.built !== undefined;
  const waits =
    isIssue(value) && says === null ? `waits for ${waitsFor(bench, value)}: ${value.issue}` : null;
  const told = says ?? waits;
  const words = `from the vertical; setting it moves the ${isHeld ? 'designed ' : ''}half-breadth of the ${wordsOf(at.outer)}${isHeld ? ', which is measured or cut and stays' : ''}`;
  return html`<div class=${`input${says ? ' wrong' : ''}${typed === null ? '' : ' written'}`} data-quantity=${`${at.station}.${panel}.flare`} onKeyDown=${key}>
    ${use(FieldLine, {
      id,
      label,
      field: html`<div class="entry-line" style=${{ '--letters': text.length }}>
        <input
          id=${id}
          ref=${field}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck=${false}
          value=${text}
          aria-invalid=${says === null ? undefined : 'true'}
          aria-describedby=${describedBy(id, told, words)}
          ...${taking}
          onInput=${type}
          onBlur=${() => {
            taking.onBlur();
            leave();
          }}
        />
      </div>`,
      mark: typed === null ? '' : 'typed',
      words,
      open,
      turn: () => setOpen(!open),
    })}
    ${told === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${capital(told)}.</p>`}
    ${open ? html`<div class="more-about"><p>${capital(words)}.</p></div>` : null}
  </div>`;
}

/** A bare number is kept with its unit, so that it means the same under any choice of units. */
function keptText(text: string, graph: Graph, shown: Shown): string {
  const reading = readFlare(text, graph, shown);
  return isIssue(reading) ? text : reading.text;
}

function faultIn(text: string, graph: Graph, shown: Shown): string | null {
  const reading = readFlare(text, graph, shown);
  return isIssue(reading) ? reading.issue : null;
}

function readFlare(text: string, graph: Graph, shown: Shown): Reading {
  return read(text, {
    kind: 'angle',
    shown,
    field: 'flare',
    kindOf: (name) => graph.quantity(name)?.kind,
    known: () => graph.names,
  });
}
