/** One number, or the plan's offsets together: what it may be out by, and how far the answer goes with that. */
import { useId, useState } from 'preact/hooks';
import { isIssue, type KindId } from '../../measure';
import type { Group } from '../../notebook/doubts/groups';
import { sayOf, useBench } from '../bench';
import { html } from '../html';
import { capital } from '../words';
import { bar } from './bars';
import { nameOfGroup, sayMove, whyDoubt } from './words';

export interface DoubtRowProps {
  readonly group: Group;
  /** What fills half of a bar, in the answer's SI unit. */
  readonly most: number;
  /** The answer's. */
  readonly kind: KindId;
  /** Under which the doubt is written. */
  readonly name: string;
}

export function DoubtRow({ group, most, kind, name }: DoubtRowProps) {
  const { book, shown } = useBench();
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const { number, doubt, swing } = group.rows[0]!; // a group has a number
  const units = shown.value;
  const title = nameOfGroup(group);
  const stands = group.isOffsets ? '' : sayOf(book.inHand.value, number.quantity.name, number.value, units);
  const isWrong = isIssue(doubt.by);
  const put = (text: string) => {
    setDraft(text);
    book.write({ [name]: text.trim() === '' ? null : text }, `doubt ${name}`);
  };
  const leave = () => {
    setDraft(null);
    book.settle();
  };
  const both = group.isOffsets ? { less: -group.moves, more: group.moves } : swing;
  const moves = both
    ? `${signed(both.less)} with less, ${signed(both.more)} with more`
    : 'It has no answer that far out.';
  return html`<li class=${isWrong ? 'swing-row wrong' : 'swing-row'}>
    <label class="what" for=${id}>${capital(title)}${stands === '' ? '' : html` <span class="stands">${stands}</span>`}</label>
    <span class="doubt">
      <span aria-hidden="true">±</span>
      <input
        id=${id}
        type="text"
        autocomplete="off"
        spellcheck=${false}
        value=${draft ?? doubt.text}
        aria-label=${`${title}: give or take`}
        aria-invalid=${isWrong ? 'true' : undefined}
        aria-describedby=${`${id}-why`}
        onInput=${(event: Event) => put((event.currentTarget as HTMLInputElement).value)}
        onBlur=${leave}
      />
    </span>
    <span class="moved">${both ? bar(both, most, moves) : null}<span class="by">${group.isOffsets ? `± ${sayMove(group.moves, kind, units)}` : moves}</span></span>
    <span class=${isWrong ? 'says why' : 'why'} id=${`${id}-why`}>${whyDoubt(group)}</span>
  </li>`;

  function signed(by: number): string {
    if (by === 0) return 'nothing';
    return `${by < 0 ? '−' : '+'}${sayMove(by, kind, units)}`;
  }
}
