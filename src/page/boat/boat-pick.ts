/** The boat on the bench, the builder's others, and the starters to begin another from. */
import { useState } from 'preact/hooks';
import type { TargetedEvent } from 'preact';
import { starters } from '../../boat';
import { boatKeys, createStore } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { openBoat } from './other-boat';

interface OwnBoat {
  readonly key: string;
  readonly name: string;
}

/** The builder's boats on the shelf, oldest first; those that can't be read are told when they are opened. */
function ownBoats({ shelf }: Bench): OwnBoat[] {
  if (!shelf) return [];
  return boatKeys(shelf).flatMap((key) => {
    const { kept } = createStore(shelf, key).look();
    return kept ? [{ key, name: kept.state.name }] : [];
  });
}

export function BoatPick() {
  const bench = useBench();
  const { boatless, name, sheet } = bench;
  // Other windows lay boats on the shelf too, so it is looked through whenever the list is about to open.
  const [own, setOwn] = useState(() => ownBoats(bench));
  const others = own.filter(({ key }) => key !== sheet.value.key);
  const look = () => setOwn(ownBoats(bench));
  const pick = (event: TargetedEvent<HTMLSelectElement>) => {
    const chosen = event.currentTarget.value;
    event.currentTarget.value = '';
    const starter = starters.find(({ id }) => id === chosen);
    if (starter) bench.openBoat(starter.table);
    const boat = own.find(({ key }) => key === chosen);
    if (boat) openBoat(bench, boat.key, boat.name);
  };
  return html`<select class="boat-pick" aria-label="Boat" value="" onChange=${pick} onFocus=${look} onPointerDown=${look}>
    <option value="" selected>${boatless.value ? 'No boat here' : name.value}</option>
    ${
      others.length > 0 &&
      html`<optgroup label="Your boats">
        ${others.map((boat) => html`<option value=${boat.key}>${boat.name}</option>`)}
      </optgroup>`
    }
    <optgroup label="Begin anew from">
      ${starters.map(({ id, table: plan }) => html`<option value=${id}>${plan.name}</option>`)}
    </optgroup>
  </select>`;
}
