/**
 * The hull to look at: a still picture at rest, from any of the usual sides; and, when asked for, one to turn by
 * hand. Without WebGL, and on paper, the still picture stands alone.
 */
import { useCallback, useMemo, useState } from 'preact/hooks';
import type { Hull } from '../../boat';
import type { Instance } from '../../cells';
import { type Issue, isIssue } from '../../measure';
import { useBench } from '../bench';
import { useGoodHull } from '../good-hull';
import { litBy } from '../hull/lit-by';
import { litParts } from '../hull/hull-lines';
import { sameShape } from '../hull/lines-figure';
import { html, use } from '../html';
import { later } from '../later';
import { toVNode } from '../picture/vnode';
import { capital } from '../words';
import { modelOf } from './hull-model';
import './hull.css';
import { useColoursInUse } from './colours-in-use';
import { type Viewpoint, namedLooks, seenFrom, threeQuarter } from './look';
import { partsInWords, stillOf } from './still';
import { hasWebGl } from './webgl';

const HullByHand = later(async () => (await import('./hull-by-hand')).HullByHand, 'hull-canvas');

/** At rest, turned by hand, or why it can't be. */
type ViewState = 'at rest' | 'in hand' | 'no WebGL' | 'lost';

const WHY: Readonly<Record<ViewState, string>> = {
  'at rest': '',
  'in hand': '',
  'no WebGL':
    'This browser shows no pictures in the round (it has no WebGL), so the hull stands still. The keys below show it from other sides.',
  lost: 'The graphics card let go of the picture, so the hull stands still again. Try once more, or use the keys below.',
};

export function HullView({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { hull, fault } = useGoodHull(bench.book.first.value);
  const [state, setState] = useState<ViewState>('at rest');
  const [look, setLook] = useState<Viewpoint>(threeQuarter);
  const turn = useCallback((change: (from: Viewpoint) => Viewpoint) => setLook(change), []);
  const colours = useColoursInUse(bench.colours.value);
  const spoken = bench.instances.value.get(bench.inHand.value ?? instance.name) ?? instance;
  const second = secondHull(bench.book.second.value?.hull() ?? null, hull);
  const name = bench.name.value;
  const lit = hull ? [...litParts(litBy(spoken, bench.book.inHand.value), hull)].join(' ') : '';
  const still = useMemo(
    () =>
      hull &&
      toVNode(
        stillOf(hull, {
          look: state === 'in hand' ? threeQuarter : look,
          name,
          lit: new Set(lit.split(' ')),
          second,
        }),
      ),
    [hull, second, name, lit, look, state],
  );
  const model = hull && modelOf(hull);
  if (!hull || !model) return html`<p class="says">${capital(fault ?? 'the hull can’t be drawn yet')}.</p>`;
  const open = () => setState(state === 'in hand' ? 'at rest' : hasWebGl() ? 'in hand' : 'no WebGL');
  const hint = `hull-hint-${instance.name}`;
  return html`<div class=${fault === null ? 'hull-view' : 'hull-view stale'}>
    <figure class=${state === 'in hand' ? 'on-paper-only' : ''}>${still}</figure>
    ${
      state === 'in hand'
        ? use(HullByHand, {
            model,
            second: second && modelOf(second),
            lit,
            colours,
            look,
            onLook: turn,
            onLost: () => setState('lost'),
            label: `${name}, to be turned by hand: ${partsInWords(hull)}`,
            hint,
          })
        : null
    }
    <p class=${state === 'in hand' ? 'plain on-screen-only' : 'plain'} role="status">${capital(seenFrom(look))}.${fault === null ? '' : ` ${capital(fault)}: the last good hull.`} ${WHY[state]}</p>
    ${
      state === 'in hand'
        ? html`<p class="hull-hint plain" id=${hint}>Drag to turn the hull. Once the picture is selected the arrow keys turn it too; + and −, the wheel or two fingers bring it nearer or farther, and Home puts it back.</p>`
        : null
    }
    <div class="hull-keys">
      <button type="button" aria-expanded=${state === 'in hand'} onClick=${open}>
        ${state === 'in hand' ? 'Show the still picture' : 'Turn the hull by hand'}
      </button>
      ${namedLooks.map(({ words, look: from }) => html`<button type="button" class="quiet" onClick=${() => setLook(from)}>${words}</button>`)}
    </div>
  </div>`;
}

/** The second version's hull where it has one of another shape. */
function secondHull(found: Hull | Issue | null, first: Hull | null): Hull | null {
  const isDrawn = found !== null && !isIssue(found) && found.faults.length === 0;
  return isDrawn && !sameShape(found, first) ? found : null;
}
