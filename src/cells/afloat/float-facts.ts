/** What the floating hull is asked: where she comes to rest, and where her waterline stands upright. */
import { floatingUnder, waterlineOf } from '../../boat/hull/floating';
import { fact } from '../form/fact';
import type { FloatAsked } from './float-inputs';
import { GEOMETRY } from '../../trade/sources';

export const EQUILIBRIUM =
  'K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapters 3 and 4: buoyancy equals weight, and acts plumb under it';

type Loaded = {
  readonly volume: number;
  readonly movedForward: number;
  readonly movedHeight: number;
  readonly movedSide: number;
};

export const rest = fact(
  'the closed hull cut by the water, sunk and turned until the water pushed aside weighs what she weighs and its middle stands plumb under hers',
  EQUILIBRIUM,
  ({ volume, movedForward, movedHeight, movedSide }: Loaded, { hull }) =>
    floatingUnder(hull, { volume, centre: [movedForward, movedSide, movedHeight] }),
);

/** With everybody in place and all of it on the centreline: where the line is painted. */
const upright = fact(
  'the same with all weight on the centreline',
  EQUILIBRIUM,
  ({ volume, centreForward, centreHeight }: FloatAsked & { readonly volume: number }, { hull }) => {
    const { at } = floatingUnder(hull, { volume, centre: [centreForward, 0, centreHeight] });
    return at;
  },
);

export const waterlines = fact('the closed hull cut by the water', GEOMETRY, (_: Loaded, { hull, ask }) =>
  waterlineOf(hull, ask(rest)),
);

/** Height of the painted waterline over the base line at a place along the boat, m. */
const paintedAt = fact(
  'the water in the centreline plane, everybody in place and no heel',
  GEOMETRY,
  (_: FloatAsked & { readonly volume: number }, { ask }) => {
    const { normal, height } = ask(upright).plane;
    return (along: number) => (height - normal[0] * along) / normal[2];
  },
);

/** At every station. */
export const painted = fact(
  'the same at each station',
  GEOMETRY,
  (_: FloatAsked & { readonly volume: number }, { hull, ask }) =>
    hull.stations.map(({ x }) => ({ x, up: ask(paintedAt)(x) })),
);

/** At the station looked at: her sheer there, and the water on her centreline. */
export const here = fact(
  'the station looked at, and the water in its plane',
  GEOMETRY,
  ({ station }: FloatAsked, { hull, ask }) => {
    const { x, corners } = hull.station(station);
    const [sheerX, sheerY, sheerZ] = corners.at(-1)!; // keel and sheer at least
    const waterAt = ask(paintedAt);
    const now = ask(rest).at.plane;
    const over = (side: 1 | -1) =>
      now.normal[0] * sheerX + now.normal[1] * side * sheerY + now.normal[2] * sheerZ - now.height;
    return {
      x,
      waterUp: waterAt(x),
      sheerDown: sheerZ - waterAt(sheerX),
      port: over(1),
      starboard: over(-1),
    };
  },
);
