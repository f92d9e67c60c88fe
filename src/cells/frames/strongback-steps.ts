/** The working of the strongback. */
import { isPost } from '../../boat';
import { sideOf } from '../../boat/hull/side-of';
import { distance, type Vec3 } from '../../kernel';
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { aftCorners, foreMark, legsOf, standing, standings, type JigSkin } from './jig-facts';
import { GEOMETRY } from '../../trade/sources';

const PRACTICE = 'common practice, no source';

interface StationAsked extends JigSkin {
  readonly station: string;
}

const stands = fact(
  'frames by custom forward of their line before the widest one, aft of it behind; a transom and a stem inboard of it',
  'custom of the trade; common practice, no source',
  ({ station, side, face }: Record<'station' | 'side' | 'face', string>, { hull }) =>
    sideOf(hull.station(station), side, face === 'outer'),
);

const role = fact(
  'by the plan’s half-breadths: an end with breadth is a transom, one without a stem',
  GEOMETRY,
  ({ station }: StationAsked, { hull }) => {
    const of = hull.station(station).role;
    if (of === 'frame') return 'frame';
    return isPost(of) ? 'stem' : 'transom';
  },
);

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];

/** From the station in hand to others along the jig. */
const along = fact(standings.how, GEOMETRY, (_: StationAsked, { ask }) => {
  const { sheer, station } = ask(standing);
  const { all, aftmost } = ask(standings);
  const next = (all[station.index + 1] ?? all[station.index - 1])!; // three stations at least
  return {
    fromAft: sheer[0] - aftmost,
    toFore: ask(foreMark).sheer[0] - sheer[0],
    across: distance(sheer, toStarboard(next.sheer)),
  };
});

/** The stem's sheer mark from the transom's corners. */
const stem = fact('between the sheer marks', GEOMETRY, (_: JigSkin, { ask }) => {
  const [aft, fore] = [ask(aftCorners).sheer, ask(foreMark).sheer];
  return { ahead: fore[0] - aft[0], rise: fore[2] - aft[2] };
});

interface JigAsked extends JigSkin {
  readonly gauge: number;
  readonly levelLine: number;
  readonly spallBeyond: number;
  readonly legOverlap: number;
}

/** Lumber under the frames, over all stations. */
const lengths = fact(
  'over all stations',
  GEOMETRY,
  ({ gauge, levelLine, spallBeyond, legOverlap }: JigAsked, { ask }) => {
    const { all } = ask(standings);
    const sum = (of: (one: (typeof all)[number]) => number) => all.reduce((total, one) => total + of(one), 0);
    return {
      spalls: sum(({ sheer }) => 2 * (Math.max(sheer[1], gauge / 2) + spallBeyond)),
      legs: sum((one) => legsOf(one) * (Math.max(0, levelLine - one.sheer[2]) + legOverlap)),
      props: sum(({ foot }) => Math.SQRT2 * Math.max(0, levelLine - foot[2])),
    };
  },
);

export const strongbackSteps = {
  stands: tell(stands, 'choice', 'side of the line on which the wood stands', (side) => side),
  kindOfStation: tell(role, 'choice', 'what stands there', (kind) => kind),
  highest: tell(
    standings,
    'length',
    'highest point of what is set up, above the base',
    ({ all }, { stemHead }: { readonly stemHead: number }) =>
      Math.max(...all.map(({ sheer, station }) => sheer[2] + (isPost(station.role) ? stemHead : 0))),
    { how: 'the highest sheer mark of all stations, or the head of the stem' },
  ),
  usualLevel: step(
    'length',
    'highest + clearance',
    'level line that leaves the room asked for',
    GEOMETRY,
    'least',
  ),
  freeOverJig: step(
    'length',
    'levelLine - highest',
    'free between the jig’s top and what hangs nearest to it',
    GEOMETRY,
  ),
  fromAft: tell(along, 'length', 'sheer mark, forward of the boat’s aftmost point', ({ fromAft }) => fromAft),
  running: step(
    'length',
    'overhang + fromAft',
    'station line on the jig, from its after end; of a raked end the line plumb under its sheer mark',
    GEOMETRY,
  ),
  footAhead: tell(
    standing,
    'length',
    'how far the bottom on the centreline stands forward of the sheer mark; none of a plumb frame',
    ({ sheer, foot }) => foot[0] - sheer[0],
  ),
  footRunning: step('length', 'running + footAhead', 'the bottom on the centreline, along the jig', GEOMETRY),
  sheerOut: tell(standing, 'length', 'half-breadth of the sheer mark', ({ sheer }) => sheer[1]),
  sheerHeight: tell(standing, 'length', 'height of the sheer mark above the base', ({ sheer }) => sheer[2]),
  footHeight: tell(
    standing,
    'length',
    'height of the bottom on the centreline above the base',
    ({ foot }) => foot[2],
  ),
  farFace: step(
    'length',
    'stands == "forward" ? running + siding : running - siding',
    'the wood’s other face, along the jig, so that its cross-spall does not stand there',
    GEOMETRY,
  ),
  hullSpan: tell(
    standings,
    'length',
    'length of what is set up, along the jig',
    ({ aftmost, foremost }) => foremost - aftmost,
    { how: 'from the aftmost mark to the foremost' },
  ),
  jigLength: step('length', 'hullSpan + 2 * overhang', 'length of the jig', GEOMETRY),
  jigDiagonal: step(
    'length',
    'sqrt(jigLength^2 + gauge^2)',
    'diagonal of the jig, both alike: outer corner to outer corner',
    'geometry: Pythagoras',
  ),
  leg: step(
    'length',
    'levelLine - sheerHeight',
    'from the level of the jig’s top up to the sheer mark, plumb',
    'geometry: upside down, height = level line - height above the base',
  ),
  legPort: step(
    'length',
    'leg + foreLow * running / jigLength - starboardLow * sheerOut / gauge',
    'leg to port, from the jig as it lies',
    'geometry: a jig out of level is made good in the legs',
  ),
  legStarboard: step(
    'length',
    'leg + foreLow * running / jigLength + starboardLow * sheerOut / gauge',
    'leg to starboard, from the jig as it lies',
    'geometry: a jig out of level is made good in the legs',
  ),
  footAboveJig: step(
    'length',
    'levelLine - footHeight',
    'the bottom on the centreline above the level of the jig’s top',
    GEOMETRY,
  ),
  frameDepth: step(
    'length',
    'footAboveJig - leg',
    'from the sheer mark to the bottom on the centreline, plumb',
    GEOMETRY,
  ),
  markAboveJig: step(
    'length',
    'levelLine - markLine',
    'level mark of every frame above the level of the jig’s top: one height for all',
    GEOMETRY,
  ),
  underRails: step('length', 'max(jigTop - railDepth, 0 mm)', 'under the rails, from the floor', GEOMETRY),
  topHeight: tell(
    standings,
    'length',
    'highest frame’s bottom above the floor',
    ({ all }, { jigTop, levelLine }: { readonly jigTop: number; readonly levelLine: number }) =>
      jigTop + levelLine - Math.min(...all.map(({ foot }) => foot[2])),
    { how: 'jig’s top + level line - the lowest point of the bottom' },
  ),
  nailAhead: tell(
    along,
    'length',
    'nail on the jig’s centreline, plumb under the foremost sheer mark: forward of this station’s sheer mark',
    ({ toFore }) => toFore,
    { how: 'from the sheer mark to the mark of the foremost station' },
  ),
  nailLength: step(
    'length',
    'sqrt(nailAhead^2 + sheerOut^2 + leg^2)',
    'from that nail to the sheer mark, port and starboard alike',
    'geometry: Pythagoras in space',
  ),
  crossLength: tell(
    along,
    'length',
    'from a sheer mark across to the other side’s at the next station forward; the two alike',
    ({ across }) => across,
    { how: 'between the two marks in space; from the foremost station to the one abaft it' },
  ),
  cornerOut: tell(
    aftCorners,
    'length',
    'half-breadth at the transom’s corners; of a boat that is sharp at both ends, at the first frame’s',
    ({ sheer }) => sheer[1],
  ),
  stemAhead: tell(stem, 'length', 'stem’s sheer mark forward of those corners', ({ ahead }) => ahead, {
    how: 'along the boat, between the sheer marks',
  }),
  stemRise: tell(stem, 'length', 'stem’s sheer mark above those corners', ({ rise }) => rise, {
    how: 'between the sheer marks, + where the stem’s is the higher in the boat',
  }),
  spallLength: step(
    'length',
    '2 * (max(sheerOut, gauge / 2) + spallBeyond)',
    'cross-spall under this station',
    GEOMETRY,
  ),
  railPieces: step('count', 'ceil(jigLength / stock)', 'pieces in each rail', GEOMETRY),
  spallsLength: tell(lengths, 'length', 'all cross-spalls', ({ spalls }) => spalls, {
    how: 'over all stations: twice the half-breadth of legs or rails, and what stands beyond',
  }),
  legsLength: tell(lengths, 'length', 'all legs', ({ legs }) => legs, {
    how: 'over all stations: leg and lap, two to a frame or transom, one to a stem',
  }),
  propsLength: tell(lengths, 'length', 'all props fore and aft', ({ props }) => props, {
    how: 'one to a station, at 45° from its bottom down to the jig: √2 × height',
    source: PRACTICE,
  }),
  lumber: step(
    'length',
    '2 * jigLength + spallsLength + legsLength + propsLength',
    'rails, cross-spalls, legs and props together, without waste',
    GEOMETRY,
  ),
  boards: step(
    'count',
    'ceil(lumber * (1 + waste) / stock)',
    'lengths of lumber to buy, the jig’s own feet not counted',
    `${GEOMETRY}; the share of waste is common practice, no source`,
  ),
} as const;
