/** The boat on the bench, the builder's others, and the starters to begin another from. */
import type { TargetedEvent } from 'preact';
import { starters } from '../../boat';
import { useBench } from '../bench';
import { html } from '../html';
import { openBoat } from './other-boat';
import { useOwnBoats } from './own-boats';

/** The choice that opens the list of boats. */
const LIST = 'list';

export function BoatPick() {
  const bench = useBench();
  const { boatless, name, sheet } = bench;
  const [boats, look] = useOwnBoats(bench);
  const others = boats.filter(({ key, away }) => !away && key !== sheet.value.key);
  const pick = (event: TargetedEvent<HTMLSelectElement>) => {
    const chosen = event.currentTarget.value;
    event.currentTarget.value = '';
    const starter = starters.find(({ id }) => id === chosen);
    const boat = boats.find(({ key }) => key === chosen);
    if (starter) void bench.openBoat(starter);
    else if (boat) openBoat(bench, boat.key, boat.name);
    else if (chosen === LIST) bench.goTo('boats');
  };
  return html`<select class="boat-pick" aria-label="Boat" value="" onChange=${pick} onFocus=${look} onPointerDown=${look}>
    <option value="" selected>${boatless.value ? 'No boat here' : name.value}</option>
    <optgroup label="Your boats">
      ${others.map((boat) => html`<option value=${boat.key}>${boat.name}</option>`)}
      <option value=${LIST}>Name, copy, put away …</option>
    </optgroup>
    <optgroup label="Begin anew from">
      ${starters.map(({ id, table: plan }) => html`<option value=${id}>${plan.name}</option>`)}
    </optgroup>
  </select>`;
}
