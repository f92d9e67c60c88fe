/**
 * The finder: one field and a list under it, over the page. The field keeps the focus; the arrows go through the list,
 * Enter goes to what is chosen there. As the ARIA practices have it for a combobox with a list.
 */
import type { TargetedEvent, TargetedKeyboardEvent, TargetedMouseEvent } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { isAllThere, openHead } from '../library';
import './finder.css';
import { find, type Index, type Listed } from './search';

/** What is looked for, and what becomes of it. */
export interface FinderFor<T extends Listed> {
  /** What the finder is called, its field, and the list while nothing is typed. */
  readonly called: string;
  readonly field: string;
  readonly atFirst: string;
  readonly example: string;
  /** Tracked. */
  readonly index: (bench: Bench) => Index<T>;
  /** What is listed while nothing is typed. */
  readonly first: (index: Index<T>, bench: Bench) => readonly T[];
  /** What is listed behind all that is found. */
  readonly last?: (typed: string) => readonly T[];
  readonly take: (thing: T, bench: Bench) => void;
}

/** More than anyone reads: who does not see it there types another letter. */
const MOST = 24;

export function Finder<T extends Listed>({ asking, onClose }: { asking: FinderFor<T>; onClose: () => void }) {
  const bench = useBench();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const dialog = useRef<HTMLDialogElement>(null);
  const index = asking.index(bench);
  const isAsked = typed.trim().length >= 2;
  const some = isAsked
    ? find(index, typed, openHead()?.id ?? null)
    : typed.trim() === ''
      ? asking.first(index, bench)
      : [];
  const found = [...some.slice(0, MOST), ...(isAsked ? (asking.last?.(typed) ?? []) : [])];
  const chosen = Math.min(at, found.length - 1);
  useLayoutEffect(() => dialog.current?.showModal(), []);
  useLayoutEffect(() => {
    document.getElementById(optionId(chosen))?.scrollIntoView({ block: 'nearest' });
  }, [chosen, typed]);

  const close = () => dialog.current?.close();
  const take = (thing: T | undefined) => {
    if (!thing) return;
    // First, for it gives the focus back.
    close();
    asking.take(thing, bench);
  };
  const onKey = (event: TargetedKeyboardEvent<HTMLInputElement>) => {
    if (event.isComposing) return;
    const to = nextAt(event.key, chosen, found.length);
    if (to !== null) setAt(to);
    else if (event.key === 'Enter') take(found[chosen]);
    else return;
    event.preventDefault();
  };
  const onInput = (event: TargetedEvent<HTMLInputElement>) => {
    setTyped(event.currentTarget.value);
    setAt(0);
  };
  const onPress = (event: TargetedMouseEvent<HTMLDialogElement>) => {
    if (event.target === dialog.current) close();
  };
  return html`<dialog class="finder" aria-label=${asking.called} ref=${dialog} onClose=${onClose} onClick=${onPress}>
    <div class="finder-head">
      <input
        type="text"
        role="combobox"
        aria-label=${asking.field}
        aria-autocomplete="list"
        aria-expanded=${found.length > 0}
        aria-controls="found"
        aria-activedescendant=${found.length > 0 ? optionId(chosen) : undefined}
        autocomplete="off"
        autocapitalize="off"
        spellcheck=${false}
        enterkeyhint="go"
        placeholder=${asking.example}
        value=${typed}
        onInput=${onInput}
        onKeyDown=${onKey}
      />
      <button type="button" onClick=${close}>Close</button>
    </div>
    <p class=${isAsked && some.length === 0 ? 'nothing' : 'unseen'} role="status">${said(isAsked, some.length)}</p>
    <ul id="found" role="listbox" aria-label=${isAsked ? 'Found' : asking.atFirst}>
      ${found.map(
        (thing, i) => html`<li
          key=${`${thing.same} ${thing.notebook}`}
          id=${optionId(i)}
          role="option"
          aria-selected=${i === chosen}
          onClick=${() => take(thing)}
        >
          <span class="kind">${thing.kind}</span>
          <span class="what">${thing.more !== undefined && thing.kind !== 'answer' ? thing.more : thing.title}</span>
          <span class="where">${thing.kind === 'answer' && thing.more !== undefined ? `${thing.more} · ` : ''}${thing.where}</span>
        </li>`,
      )}
    </ul>
  </dialog>`;
}

const optionId = (at: number): string => `found-${at}`;

function said(isAsked: boolean, count: number): string {
  if (!isAsked) return '';
  if (count > 0) return count >= MOST ? `the first ${MOST} found` : `${count} found`;
  return isAllThere()
    ? 'Nothing is called that here. Try another word for it.'
    : 'Not found yet; some of the notebooks are still on their way.';
}

/** Where a key leads to in a list; null where it leads nowhere. */
function nextAt(key: string, at: number, count: number): number | null {
  if (count === 0) return null;
  if (key === 'ArrowDown') return (at + 1) % count;
  if (key === 'ArrowUp') return (at + count - 1) % count;
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : null;
}
