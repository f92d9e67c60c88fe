/** What was measured or cut stands in place of the plan's number: a word under its box, and a sentence when the plan moves away from it. */
import { useComputed } from '@preact/signals';
import { type Named, offsetName, partOf } from '../../boat';
import { writeOffset } from '../../boat/table/offset-notation';
import { isIssue } from '../../measure';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { capital } from '../words';
import { columnWords, type GridState, leadOf } from './grid-state';

export type HeldBy = 'measured' | 'cut';

/** By what a number is held; null where nothing holds it. Tracked. */
export function heldBy({ book }: Bench, name: string): HeldBy | null {
  const { measured, cut } = book.asBuilt.value;
  if (Object.hasOwn(measured, name)) return 'measured';
  return Object.hasOwn(cut[partOf(name)]?.held ?? {}, name) ? 'cut' : null;
}

/** `cut 851`. */
export const heldWords = (bench: Bench, state: GridState, name: string): string =>
  `${heldBy(bench, name) ?? ''} ${heldText(bench, state, name)}`;

/** The number that holds, as the boxes write it. */
function heldText({ book }: Bench, state: GridState, name: string): string {
  const value = book.inHand.value.value(name);
  return typeof value === 'number' ? writeOffset(value, state.notation.value).text : '?';
}

/** `cut 851`, under the box. */
export function HeldWord({ state, name }: { state: GridState; name: string }) {
  const bench = useBench();
  return heldBy(bench, name) === null
    ? null
    : html`<span class="held-word" id=${`held-${name}`}>${heldWords(bench, state, name)}</span>`;
}

interface HeldNoteProps {
  readonly state: GridState;
  readonly station: Named;
}

/** Why a number typed into a held box moves nothing but the design. */
export function HeldNote({ state, station }: HeldNoteProps) {
  const bench = useBench();
  const told = useComputed(() => {
    const graph = bench.book.inHand.value;
    return state.columns.value
      .flatMap(({ edge, column }, c) => {
        // One box may hold how far forward all edges stand.
        if (column === 'x' && c !== leadOf(state) && state.isPlane(station.name)) return [];
        const name = offsetName(station.name, edge.name, column);
        const by = heldBy(bench, name);
        if (by === null) return [];
        const [holds, designed] = [graph.value(name), graph.designed(name)];
        // To a hundredth of a millimetre, as the boxes are read.
        if (isIssue(designed) || (typeof holds === 'number' && Math.abs(holds - Number(designed)) < 1e-5))
          return [];
        const what = `${edge.label}, ${columnWords[column]}`;
        return [`${what} ${by === 'cut' ? 'is cut to' : 'measures'} ${heldText(bench, state, name)}`];
      })
      .join('; ');
  }).value;
  if (told === '') return null;
  const open = () => {
    bench.station.value = station.name;
    bench.goTo('boat');
  };
  return html`<tr class="row-says">
    <td colspan=${state.columns.value.length + 1}>
      <p class="held-note" role="status">
        ${capital(station.label)} stays as it is built: ${told}. What is typed here moves the design alone.${' '}
        <button type="button" class="jump" onClick=${open}>${capital(station.label)} in the boat’s own sheet</button>
      </p>
    </td>
  </tr>`;
}
