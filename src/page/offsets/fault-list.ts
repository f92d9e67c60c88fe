/** What is wrong with the table, each with the way to its box; numbers missing are counted by station. */
import { useComputed } from '@preact/signals';
import { type Named, offsetsOf } from '../../boat';
import { useBench } from '../bench';
import { useGoodHull } from '../good-hull';
import { html } from '../html';
import { capital } from '../words';
import { boxOf, faultsIn, type GridState } from './grid-state';

interface Told {
  readonly says: string;
  /** The box it leads to; null for a fault of the whole table. */
  readonly box: string | null;
}

export function FaultList({ state, goTo }: { state: GridState; goTo: (box: string) => void }) {
  const { book, table } = useBench();
  const told = useComputed(() =>
    JSON.stringify(toldOf(state, book.inHand.value, offsetsOf(table.value).stations)),
  );
  const { hull } = useGoodHull(book.inHand.value);
  const faults = JSON.parse(told.value) as readonly Told[];
  if (faults.length === 0) return null;
  return html`<div class="offsets-faults">
    <p><b>${faults.length === 1 ? 'One thing to see to:' : `${faults.length} things to see to:`}</b> ${hull ? 'until then the last good hull stays in sight.' : 'until then there is no hull to draw.'}</p>
    <ul>
      ${faults.map(
        ({ says, box }) => html`<li>
          ${box === null ? `${capital(says)}.` : html`<button type="button" class="jump" onClick=${() => goTo(box)}>${capital(says)}</button>`}
        </li>`,
      )}
    </ul>
  </div>`;
}

function toldOf(
  state: GridState,
  graph: Parameters<typeof faultsIn>[0],
  stations: readonly Named[],
): readonly Told[] {
  const missing = new Map<string, string[]>();
  const wrong = new Map<string, Told>();
  for (const fault of faultsIn(graph)) {
    const box = boxOf(fault);
    if (box === null || fault.station === null) {
      wrong.set(fault.says, { says: fault.says, box: null });
      continue;
    }
    // Of a station that is one plane the first edge's box speaks for all.
    if (fault.column === 'x' && state.isPlane(fault.station) && hasLead(wrong, missing, fault.station))
      continue;
    const says = state.faultOf(box);
    if (says === null) missing.set(fault.station, [...(missing.get(fault.station) ?? []), box]);
    else wrong.set(box, { says: says || fault.says, box });
  }
  for (const [box, { says }] of state.refused.value) wrong.set(box, { says, box });
  const empty = stations.flatMap(({ name, label }): Told[] => {
    const boxes = missing.get(name);
    if (!boxes) return [];
    const count = boxes.length === 1 ? 'a number is' : `${boxes.length} numbers are`;
    return [{ says: `${label}: ${count} still missing`, box: boxes[0]! }]; // a list is begun with its first
  });
  return [...wrong.values(), ...empty];
}

const isForward = (box: string, station: string) => box.startsWith(`${station}.`) && box.endsWith('.x');

function hasLead(
  wrong: ReadonlyMap<string, Told>,
  missing: ReadonlyMap<string, readonly string[]>,
  station: string,
): boolean {
  return (
    [...wrong.keys()].some((box) => isForward(box, station)) ||
    (missing.get(station) ?? []).some((box) => isForward(box, station))
  );
}
