/** The wedge glued to a frame side, or the wood planed off it, at full size: what lies between the side as it is and as it should be. */
import type { Hull } from '../../boat';
import {
  dim,
  type Drawing,
  drawing,
  hatch,
  label,
  line,
  mm,
  note,
  type Point,
  type Shape,
} from '../../drawing';
import type { Vec3 } from '../../kernel';
import type { OnHand } from '../form/define';
import { after, before, line as lineInHand, panel as panelUnder } from './fair-facts';
import type { FairValues } from './fair-steps';

/** @throws where no number of the line stands out, or its frame side need not be touched */
export function wedgePatterns(
  v: FairValues,
  { hull, say, ask }: Pick<OnHand, 'hull' | 'say' | 'ask'>,
): readonly Drawing[] {
  if (!hull) return [];
  if (v.proposed === 0) throw new Error('no number of this line stands out, so nothing is wedged or planed');
  const { wedge } = v;
  if (Math.abs(wedge) < v.nearest)
    throw new Error('the frame side runs along the move: the line is only marked elsewhere on it');
  const glued = wedge > 0;
  const drawn = ask(lineInHand);
  const panel = ask(panelUnder);
  const station = hull.station(v.oddStation);
  const corner = (of: Hull, edge: number) => of.edges[edge]!.points[station.index]!; // one a station
  const here = drawn.edge.index;
  const there = here === panel.index ? here + 1 : panel.index;
  const now = ask(before);
  const [still, was] = [corner(now, there), corner(now, here)];
  if (Math.abs(still[0] - was[0]) > 1e-6)
    throw new Error(`the ${station.label} leans: take its mend from its true shape, up the slope`);
  const lay = layAlong(corner(now, panel.index), corner(now, panel.index + 1));
  const foot = lay(still);
  const old = lay(was);
  const mended = lay(corner(ask(after), here));
  const thick: Point = [mended[0], old[1]];
  const far = hull.edges[there]!.label; // a panel has two edges
  const named = `${capital(station.label)}, ${panel.label}`;
  return [
    drawing({
      title: `${named}: ${glued ? 'wedge' : 'wood to come off'}`,
      says: `Full size, seen along the boat: ${say(Math.abs(wedge), 'length')} ${glued ? 'thick' : 'deep'} at the ${drawn.edge.label}, nothing at the ${far}.`,
      shapes: [
        hatch([foot, old, mended], glued ? 'cedar' : 'void', { part: station.name }),
        line([foot, old], { pen: glued ? 'hidden' : 'outline' }),
        dim(foot, old, say(v.wedgeLength, 'length'), { side: 'left', run: 'vertical' }),
        dim(old, thick, say(Math.abs(wedge), 'length'), { side: 'above', run: 'horizontal' }),
        label(foot, far, { toward: 'sw' }),
        label(old, drawn.edge.label, { toward: 'nw' }),
        note(
          glued
            ? `${named}: glue it to the outer edge of the frame, both sides of the boat alike. Straight edge: the frame as it is.`
            : `${named}: plane the outer edge of the frame down to this, both sides of the boat alike. Heavy edge: the frame as it is.`,
        ),
        insideToo(v, say),
      ],
    }),
  ];
}

/** The same taper off the inside keeps the depth of a wedged frame side. */
function insideToo(v: FairValues, say: OnHand['say']): Shape[] {
  const left = v.ownWood;
  if (v.wedge < 0 || left <= 0) return [];
  return [
    note(
      `The same taper off the inner edge keeps the frame side ${say(v.moulded, 'length')} deep; ${say(left, 'length')} of its own wood is left at the thick end.`,
    ),
  ];
}

/** Turns a frame's corners, m, so that its side goes straight up from the inner one, outboard to the right, mm. */
function layAlong([, y0, z0]: Vec3, [, y1, z1]: Vec3): (corner: Vec3) => Point {
  const length = Math.hypot(y1 - y0, z1 - z0);
  const [out, up] = [(y1 - y0) / length, (z1 - z0) / length];
  return ([, y, z]) => [mm((y - y0) * up - (z - z0) * out), mm((y - y0) * out + (z - z0) * up)];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
