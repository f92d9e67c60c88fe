/** In a notebook that tells of a certain boat: whose boat is on the bench, and the way to the other. */
import { starter } from '../../boat';
import { keptAt } from '../../notebook/keeping/read-saved';
import { useBench } from '../bench';
import { html } from '../html';
import { openHead } from '../library';

/** @param boat the starter that the notebook tells of here */
export function WhoseBoat({ boat }: { boat: string }) {
  const { ownBoat, readWith, sheet, shelf } = useBench();
  const head = openHead();
  const brought = starter(boat);
  if (!head || !brought) return null;
  const kept = keptAt(shelf, ownBoat.value);
  const own = kept ? `, ${kept.state.name},` : '';
  const isHere = sheet.value.boat === boat;
  const turn = () => {
    readWith.value = new Map([...readWith.value, [head.id, isHere ? null : boat]]);
  };
  return html`<div class="whose-boat">
    <p>
      ${
        isHere
          ? `The boat on the bench is ${brought.name}. She belongs to this notebook: what you change on her stays here. Your boat${own} lies untouched.`
          : `This part is about a boat called ${brought.name}. She comes on a sheet of her own; your boat${own} is left alone.`
      }
    </p>
    <div class="keys">
      <button type="button" onClick=${turn}>${isHere ? 'Back to your boat' : `Bring ${brought.name}`}</button>
    </div>
  </div>`;
}
