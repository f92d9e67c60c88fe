/** The hull in the round, in the rail: turned by hand, or where this browser has no WebGL, a still picture from side to side. */
import { useCallback, useId, useMemo, useState } from 'preact/hooks';
import type { HullViewsProps } from '../hull/hull-views';
import { useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { toVNode } from '../picture/vnode';
import { capital } from '../words';
import { useColoursInUse } from './colours-in-use';
import './hull.css';
import { modelOf } from './hull-model';
import { heelInWords, type Viewpoint, namedLooks, seenFrom, threeQuarter } from './look';
import { partsInWords, stillOf } from './still';
import { hasWebGl } from './webgl';

const HullByHand = later(async () => (await import('./hull-by-hand')).HullByHand, 'hull-canvas');

/** Fetches what turns her by hand, where this browser can show it. */
export const fetchHands = async (): Promise<unknown> => hasWebGl() && HullByHand.fetch();

export interface HullInRoundProps extends HullViewsProps {
  /** By which she lies over to port, rad. */
  readonly heel: number;
}

export function HullInRound({ hull, lit, name, heel }: HullInRoundProps) {
  const bench = useBench();
  const colours = useColoursInUse(bench.colours.value);
  const hint = useId();
  const [byHand, setByHand] = useState(hasWebGl);
  const [look, setLook] = useState<Viewpoint>(threeQuarter);
  const turn = useCallback((change: (from: Viewpoint) => Viewpoint) => setLook(change), []);
  const model = useMemo(() => modelOf(hull), [hull]);
  if (byHand && model)
    return html`<div class="hull-view">
      ${use(HullByHand, {
        model,
        second: null,
        lit,
        colours,
        look,
        heel,
        onLook: turn,
        onLost: () => setByHand(false),
        label: `${name}, to be turned by hand${heelInWords(heel)}: ${partsInWords(hull)}`,
        hint,
      })}
      <p class="unseen" id=${hint}>Drag to turn the hull. The arrow keys turn it too; + and − bring it nearer or farther, and Home puts it back.</p>
    </div>`;
  return use(Still, { hull, lit, name, heel, look, onLook: setLook });
}

interface StillProps extends HullInRoundProps {
  readonly look: Viewpoint;
  readonly onLook: (look: Viewpoint) => void;
}

/** Each press shows her from the next side. */
function Still({ hull, lit, name, heel, look, onLook }: StillProps) {
  const svg = useMemo(
    () => toVNode(stillOf(hull, { look, heel, name, lit: new Set(lit.split(' ')), second: null })),
    [hull, lit, name, heel, look],
  );
  const at = namedLooks.findIndex((named) => named.look === look);
  const next = namedLooks[(at + 1) % namedLooks.length]!; // there are some
  return html`<div class="hull-view">
    <figure>${svg}</figure>
    <p class="plain" role="status">${capital(seenFrom(look))}${heelInWords(heel)}.</p>
    <button type="button" class="quiet" onClick=${() => onLook(next.look)}>${next.words}</button>
  </div>`;
}
