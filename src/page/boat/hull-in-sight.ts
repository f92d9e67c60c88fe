/** The hull, always in sight in small, lighting up the part that the cell in hand speaks of; on a phone under a dock. */
import { useState } from 'preact/hooks';
import { lists } from '../../boat';
import { wordsOf } from '../../measure';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { useNarrow } from '../narrow';
import { later } from '../later';
import { capital } from '../words';
import { useGoodHull } from '../good-hull';
import { Dock } from './dock';
import { litParts } from '../hull/hull-lines';
import { HullViews } from '../hull/hull-views';
import { litBy } from '../hull/lit-by';

/** The three views stand until all that turns her has come. */
const HullInRound = later(
  async () => {
    const round = await import('../hull3d/hull-in-round');
    await round.fetchHands();
    return round.HullInRound;
  },
  'round-to-come',
  HullViews,
);

/** Where this browser keeps how the hull was last looked at. */
const KEY = 'battenbook hull';

export function HullInSight({ onOpen, open }: { onOpen: () => void; open: boolean }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const { hull, fault } = useGoodHull(graph);
  const isNarrow = useNarrow();
  const [isRound, setRound] = useState(() => bench.shelf?.getItem(KEY) === 'in the round');
  const instance = bench.inHand.value === null ? undefined : bench.instances.value.get(bench.inHand.value);
  const heel = instance?.cell.lies ? graph.value(`${instance.name}.${instance.cell.lies}`) : 0;
  const lights = instance ? litBy(instance, graph) : [];
  const lit = hull ? [...litParts(lights, hull)].join(' ') : '';
  const name = bench.name.value;
  const trouble = fault === null ? '' : `${hull ? 'Last good hull. ' : ''}${capital(fault)}.`;
  const look = () => {
    setRound(!isRound);
    try {
      bench.shelf?.setItem(KEY, isRound ? 'three views' : 'in the round');
    } catch {
      // The choice holds for this window.
    }
  };
  return html`<div class="hull-in-sight">
    ${isNarrow ? use(Dock, { hull, lit, trouble, open, onOpen }) : null}
    ${
      isNarrow && !open
        ? null
        : html`<div class="hull-large">
          ${hull ? use(isRound ? HullInRound : HullViews, { hull, lit, name, heel: typeof heel === 'number' ? heel : 0, form: isNarrow ? 'wide' : 'tall' }) : html`<p>The hull can’t be drawn yet.</p>`}
          <div class="hull-foot plain">
            <p class="speaks">${trouble || capital(namesOf(lights, bench)) || instance?.cell.title || name}</p>
            ${hull ? html`<button type="button" class="quiet" aria-pressed=${isRound} onClick=${look}>In the round</button>` : null}
          </div>
        </div>`
    }
  </div>`;
}

/** What lights up, by name: `chine log · chine`; her own edges, panels and stations as her table calls them. */
function namesOf(lights: readonly string[], bench: Bench): string {
  const { edges, panels, stations } = lists(bench.table.value);
  const called = new Map([...edges, ...panels, ...stations].map(({ id, label }) => [id, label]));
  return [...new Set(lights.map((part) => called.get(part) ?? wordsOf(part)))].join(' · ');
}
