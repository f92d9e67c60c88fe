/** What the boat full of water is asked: how she lies with this or that in her, and the tests that the US rule puts her to. */
import type { Hull } from '../../boat';
import { blockOf } from '../../boat/hull/foam-bays';
import {
  endsOver,
  type EndOver,
  type Flooded,
  floodedUnder,
  type Hung,
  type Solid,
} from '../../boat/hull/flooded';
import { lower, sheerOver } from '../../boat/hull/floating';
import { type SolidPart, solidOf } from '../../boat/hull/solids';
import { block, sectionBelow, type Vec3 } from '../../kernel';
import { fact } from '../form/fact';
import { laid } from './flotation-facts';
import { EQUILIBRIUM } from './float-facts';
import { weights } from './weights';
import { partsAboard } from './weights-facts';
import { GEOMETRY } from '../../trade/sources';

/** More than these in the water are not looked for. */
const MOST_IN_WATER = 24;

/** Parts that lie with others, and those that they lie with. */
const GOES_WITH: Readonly<Record<string, SolidPart>> = { rubRail: 'sheerClamp', gusset: 'frame' };
const PARTS: ReadonlySet<string> = new Set<SolidPart>([
  'bottom',
  'bilge',
  'side',
  'transom',
  'bowTransom',
  'keelson',
  'stem',
  'chineLog',
  'sheerClamp',
  'frame',
  'thwart',
]);
const isPart = (name: string): name is SolidPart => PARTS.has(name);
const SKIN: ReadonlySet<string> = new Set<SolidPart>(['bottom', 'bilge', 'side', 'transom', 'bowTransom']);

interface Built {
  readonly water: number;
  readonly wood: number;
  readonly wetDensity: number;
  readonly finish: number;
  readonly finishDensity: number;
  readonly foamDensity: number;
  readonly soak: number;
  readonly seat: number;
}

/** Each part's share of her wood: as the weights have them, or else all of it as a skin of one thickness. */
const shares = fact(
  'each part’s share of her wood, as the weights have it',
  GEOMETRY,
  (_: {}, { hull, beside }): ReadonlyMap<SolidPart, number> => {
    const parts = [...(beside(weights)?.(partsAboard) ?? skinOf(hull))].flatMap(([name, { mass }]) => {
      const part = GOES_WITH[name] ?? name;
      return isPart(part) && mass > 0 ? [[part, mass] as const] : [];
    });
    const all = parts.reduce((sum, [, mass]) => sum + mass, 0);
    const found = new Map<SolidPart, number>();
    for (const [part, mass] of parts) found.set(part, (found.get(part) ?? 0) + mass / all);
    return found;
  },
);

const skinOf = ({ panels, aft, fore }: Hull) => [
  ...panels.map(({ name, area }) => [name.startsWith('bilge') ? 'bilge' : name, { mass: 2 * area }] as const),
  ['transom', { mass: aft.role === 'transom' ? aft.area : 0 }] as const,
  ['bowTransom', { mass: fore.role === 'bow transom' ? fore.area : 0 }] as const,
];

/** Wood, and what is on it, part by part; foam, block by block. */
const solids = fact(
  'skin as plates, timbers as bars along their edges, foam as blocks in its bays',
  GEOMETRY,
  (v: Built, { hull, ask }): readonly Solid[] => {
    const parts = [...ask(shares)];
    const onSkin = parts.reduce((sum, [part, share]) => sum + (SKIN.has(part) ? share : 0), 0);
    const timber = parts.flatMap(([part, share]): Solid[] => {
      const wood = share * v.wood;
      const finish = SKIN.has(part) ? (share / onSkin) * v.finish : 0;
      const volume = wood / v.wetDensity + finish / v.finishDensity;
      const mesh = solidOf(hull, part, volume, v.seat);
      return mesh ? [{ mesh, density: (wood + finish) / volume }] : [];
    });
    const { bays, volumes } = ask(laid);
    const foam = bays.flatMap((bay, at): Solid[] => {
      const corners = blockOf(bay, volumes[at]!); // as many as bays
      if (!corners) return [];
      const [[x0, y0, z0], [x1, y1, z1]] = corners;
      const density = v.foamDensity + v.soak * v.water;
      return [
        { mesh: block([x0, y0, z0], [x1, y1, z1]), density },
        { mesh: block([x0, -y1, z0], [x1, -y0, z1]), density },
      ];
    });
    return [...timber, ...foam];
  },
);

interface Swamped extends Built {
  readonly metal: number;
  readonly metalDensity: number;
  readonly hullForward: number;
  readonly motorSinks: number;
  readonly motorForward: number;
  readonly motorHeight: number;
  readonly peopleSink: number;
  readonly gearSinks: number;
  readonly peopleForward: number;
  readonly person: number;
  readonly hang: number;
  readonly fromSide: number;
  readonly overSeat: number;
  readonly endReach: number;
}

/** How she lies, and what of her is out. */
export interface Pose extends Flooded {
  /** Of the sheer over the water, where it is lowest, m. */
  readonly low: number;
  readonly ends: { readonly aft: EndOver; readonly fore: EndOver } | null;
}

type Loads = (v: Swamped, hull: Hull, hang: number) => readonly Hung[];

const keelOf = (hull: Hull) => hull.widest.corners[0]![2]; // every station has a keel
const seatOf = (v: Swamped, hull: Hull) => keelOf(hull) + v.seat + v.overSeat;
/** The sheer where people are, or the end of it. */
function sheerAt(hull: Hull, x: number): Vec3 {
  const sheer = hull.edges.at(-1)!.polyline(129); // two edges or more
  return sheer.reduce((best, point) => (Math.abs(point[0] - x) < Math.abs(best[0] - x) ? point : best));
}
const onSeats = (mass: number, aside: 0 | 1, v: Swamped, hull: Hull): Hung => {
  const height = seatOf(v, hull);
  const side = Math.max(sectionBelow(hull.body, v.peopleForward, height).halfBreadth - v.fromSide, 0);
  return { mass, at: [v.peopleForward, aside * side, height] };
};
const inWater = (people: number, aside: 0 | 1, v: Swamped, hull: Hull): Hung => {
  const [x, y, z] = sheerAt(hull, v.peopleForward);
  return { mass: (2 / 15) * v.person * people, at: [x, aside * y, z] };
};

const LOADS: Readonly<Record<'none' | 'middle' | 'side' | 'round' | 'abeam', Loads>> = {
  none: () => [],
  middle: (v, hull) => [onSeats(v.peopleSink + v.gearSinks, 0, v, hull)],
  side: (v, hull) => [onSeats(v.peopleSink / 2, 1, v, hull), onSeats(v.gearSinks, 0, v, hull)],
  round: (v, hull, hang) => [inWater(hang, 0, v, hull)],
  abeam: (v, hull, hang) => [inWater(hang, 1, v, hull)],
};

function poseUnder(v: Swamped, hull: Hull, built: readonly Solid[], loads: readonly Hung[]): Pose {
  const hung = [
    ...loads,
    { mass: v.motorSinks, at: [v.motorForward, 0, v.motorHeight] as const },
    { mass: v.metal * (1 - v.water / v.metalDensity), at: [v.hullForward, 0, keelOf(hull)] as const },
  ];
  const lain = floodedUnder(built, hung, v.water);
  if (!lain.at) return { ...lain, low: -hull.length, ends: null };
  return {
    ...lain,
    low: Math.min(...sheerOver(hull, lain.at).map(lower)),
    ends: endsOver(hull, lain.at, v.endReach),
  };
}

const pose = (loads: Loads) =>
  fact(
    'her parts and her foam, the water free inside, sunk and turned until what they push aside weighs what hangs on them and its middle stands plumb under theirs',
    EQUILIBRIUM,
    (v: Swamped, { hull, ask }): Pose => poseUnder(v, hull, ask(solids), loads(v, hull, v.hang)),
  );

export const none = pose(LOADS.none);
export const middle = pose(LOADS.middle);
export const side = pose(LOADS.side);
export const round = pose(LOADS.round);
const abeam = pose(LOADS.abeam);
const poses = { none, middle, side, round, abeam };

export const swamped = fact(
  'her parts and her foam, the water free inside, at rest under what is looked at',
  EQUILIBRIUM,
  ({ lying }: { readonly lying: keyof typeof poses }, { ask }): Pose => ask(poses[lying]),
);

export const dry = fact(
  'one after the other, all round her, until her sheer goes under somewhere',
  EQUILIBRIUM,
  (v: Swamped, { hull, ask }): number => {
    const built = ask(solids);
    const low = (hang: number) => poseUnder(v, hull, built, LOADS.round(v, hull, hang)).low;
    let [holds, sinks] = [-1, MOST_IN_WATER + 1];
    while (sinks - holds > 1) {
      const half = Math.floor((holds + sinks) / 2);
      if (low(half) > 0) holds = half;
      else sinks = half;
    }
    return Math.max(holds, 0);
  },
);

/** What a test of the rule looks at. */
export interface Tried {
  /** rad; half a turn where she goes down or stands on end. */
  readonly heel: number;
  /** How far the middle of her lower end is under, m; below 0 it is out. */
  readonly under: number;
  /** How high the highest point of the other end is out, m. */
  readonly out: number;
}

/** One end is out, and of the other so much may be under: the way round that leaves less of it under. */
export function triedIn({ at, ends }: Pose, { length }: Hull): Tried {
  if (!at || !ends) return { heel: Math.PI, under: length, out: -length };
  const ways = [
    { out: ends.fore.highest, under: -ends.aft.middle },
    { out: ends.aft.highest, under: -ends.fore.middle },
  ];
  const [one, other] = ways as [(typeof ways)[0], (typeof ways)[0]];
  const better =
    one.out > 0 && other.out > 0
      ? one.under < other.under
        ? one
        : other
      : one.out > other.out
        ? one
        : other;
  return { heel: Math.abs(at.heel), ...better };
}
