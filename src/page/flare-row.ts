/**
 * Flare at one station, to be set. Flare follows from the offsets, so setting it writes the one
 * offset that a builder would move: the half-breadth of the panel's outer edge, as an entry over
 * the other three.
 */
import type { TargetedEvent } from 'preact';
import { useId, useState } from 'preact/hooks';
import { isIssue, read, write } from '../measure';
import { useBench } from './bench';
import { html } from './html';

export interface FlareRowProps {
  readonly station: string;
  readonly panel: string;
  readonly inner: string;
  readonly outer: string;
  readonly label: string;
}

export function FlareRow({ station, panel, inner, outer, label }: FlareRowProps) {
  const { book, shown } = useBench();
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const value = book.inHand.value.value(`${station}.${panel}.flare`);
  const edge = `${station}.${outer}`;
  const rest = typeof value === 'number' ? write(value, 'angle', shown.value).text : '';
  const flatEdge = isIssue(value);

  const type = (event: TargetedEvent<HTMLInputElement>) => {
    const text = event.currentTarget.value;
    setDraft(text);
    if (text.trim() === '') {
      setFault(null);
      book.write({ [`${edge}.halfBreadth`]: null }, `flare ${edge}`);
      return;
    }
    const reading = read(text, { kind: 'angle', shown: shown.peek(), field: 'flare' });
    const angle = isIssue(reading) ? reading : reading.evaluate(() => 0);
    const says = isIssue(reading)
      ? reading.issue
      : isIssue(angle)
        ? angle.issue
        : Math.abs(angle) > 1.3
          ? 'flare runs from −75° to 75°'
          : null;
    setFault(says);
    if (says !== null || isIssue(reading)) return;
    const inside = `${station}.${inner}`;
    book.write(
      {
        [`${edge}.halfBreadth`]: `${inside}.halfBreadth + tan(${reading.text}) * (${edge}.height - ${inside}.height)`,
      },
      `flare ${edge}`,
    );
  };
  const leave = () => {
    if (fault === null) setDraft(null);
    book.settle();
  };
  return html`<div class=${`input ${fault ? 'wrong' : ''}`} data-quantity=${`${station}.${panel}.flare`}>
    <label for=${id}>${label}</label>
    <div class="entry"><div class="entry-line">
      <input id=${id} type="text" autocomplete="off" spellcheck=${false} value=${draft ?? rest}
        aria-invalid=${fault === null ? undefined : 'true'} aria-describedby=${`${id}-says`} onInput=${type} onBlur=${leave} />
    </div></div>
    ${fault === null ? null : html`<p class="says" id=${`${id}-says`} role="status">${fault}.</p>`}
    <p class="from">
      ${flatEdge ? `waits: ${value.issue}` : `from the vertical; setting it moves the half-breadth of the ${outer}`}
    </p>
  </div>`;
}
