/** The list of the builder's boats: name the one in hand, open another, copy, put away, bring back. */
import type { TargetedEvent } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { type OwnBoat, ownBoats, putAway } from '../../notebook/keeping/boats';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { copyBoat, openBoat, putBoatAway } from './other-boat';

const LONGEST = 80;

/** The boats on the shelf, and how to look anew; other windows lay boats there too. */
export function useOwnBoats({
  shelf,
  book,
  sheet,
  boatsOpen,
  keeping,
}: Bench): readonly [boats: OwnBoat[], look: () => void] {
  const see = () => (shelf ? ownBoats(shelf) : []);
  const [boats, setBoats] = useState(see);
  const look = () => {
    // The boat in hand is on the shelf only once the pause after her first edit is over.
    keeping.save();
    setBoats(see());
  };
  useEffect(() => {
    addEventListener('storage', look);
    return () => removeEventListener('storage', look);
  }, []);
  useEffect(look, [sheet.value.key, book.state.value.name, boatsOpen.value]);
  // Hers is the name on the bench, saved or not yet.
  const named = boats.map((boat) =>
    boat.key === sheet.value.key ? { ...boat, name: book.state.value.name } : boat,
  );
  return [named, look];
}

export function OwnBoats() {
  const bench = useBench();
  const { book, ownBoat, sheet } = bench;
  const [boats, look] = useOwnBoats(bench);
  const close = () => {
    bench.boatsOpen.value = false;
  };
  const then = (act: () => void) => () => {
    act();
    look();
  };
  const inHand = ownBoat.value;
  const row = ({ key, name }: OwnBoat) => html`<li key=${key}>
    <span class="own-boat-name">${name}${key === inHand ? ' (in hand)' : ''}</span>
    <span class="keys">
      ${
        key === inHand && sheet.value.kind === 'boat'
          ? null
          : html`<button type="button" aria-label=${`Open ${name}`} onClick=${then(() => openBoat(bench, key, name))}>Open</button>`
      }
      <button type="button" aria-label=${`Copy ${name}`} onClick=${then(() => copyBoat(bench, key))}>Copy</button>
      <button type="button" aria-label=${`Put ${name} away`} onClick=${then(() => putBoatAway(bench, key))}>Put away</button>
    </span>
  </li>`;
  const away = boats.filter((boat) => boat.away);
  const bringBack = (key: string) => {
    if (bench.shelf) putAway(bench.shelf, key, false);
  };
  return html`<section class="boat-sheet own-boats" aria-labelledby="own-boats-title">
    <h2 id="own-boats-title" tabindex="-1">Your boats</h2>
    <p>Each boat keeps her own numbers, versions, marks and steps. They lie in this browser; save a boat to a file to take her elsewhere.</p>
    ${sheet.value.kind === 'boat' ? use(Naming, { key: inHand, name: book.state.value.name, onName: (text: string) => book.rename(text) }) : null}
    <ul>${boats.filter((boat) => !boat.away).map(row)}</ul>
    ${
      away.length > 0 &&
      html`<h3>Put away</h3>
        <ul>
          ${away.map(
            ({ key, name }) => html`<li key=${key}>
              <span class="own-boat-name">${name}</span>
              <span class="keys">
                <button type="button" aria-label=${`Bring ${name} back`} onClick=${then(() => bringBack(key))}>Bring back</button>
              </span>
            </li>`,
          )}
        </ul>`
    }
    <button type="button" class="close-sheet" onClick=${close}>Close the list</button>
  </section>`;
}

function Naming({ name, onName }: { name: string; onName: (name: string) => void }) {
  const id = useId();
  const [says, setSays] = useState('');
  const write = (event: TargetedEvent<HTMLInputElement>) => {
    const text = event.currentTarget.value.trim();
    const fault =
      text === ''
        ? 'A boat needs a name.'
        : text.length > LONGEST
          ? `A name may be ${LONGEST} letters long.`
          : '';
    setSays(fault);
    if (fault === '') onName(text);
  };
  return html`<p class="boat-name">
    <label for=${id}>Name of the boat in hand</label>
    <input id=${id} type="text" autocomplete="off" defaultValue=${name} aria-invalid=${says !== ''} onChange=${write} />
    <span class="says" role="alert">${says}</span>
  </p>`;
}
