/** What the table of offsets is asked for, and what its numbers make. */
import { apartForward } from '../../boat/hull/station-plane';
import { choice, input, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { sectionSteps, sizeSteps } from './hull-sizes';
import { GEOMETRY } from '../../trade/sources';

const TABLE = 'the table of offsets';

export const offsetsInputs = {
  station: choice('Station looked at', { options: 'stations', preset: 'frame3' }),
  edge: choice('Edge looked at', { options: 'edges', preset: 'sheer' }),
  planLength: input('length', 'Length over all by the plan', {
    from: '{self}.length',
    preset: '4.5 m',
    min: '0.1 m',
    max: '100 m',
    step: '1 mm',
    note: 'as the plan states it; until you type it, what the table makes',
  }),
  planBeam: input('length', 'Greatest breadth by the plan', {
    from: '{self}.beam',
    preset: '1.5 m',
    min: '0.01 m',
    max: '100 m',
    step: '1 mm',
    note: 'as the plan states it, to the same face of the skin as the table',
  }),
  within: input('length', 'Look into differences over', {
    preset: '10 mm',
    presetInch: '3/8 in',
    min: '1 mm',
    max: '100 mm',
    step: '1 mm',
    note: 'about 3/8 in (10 mm): drawing and copying lose that much; common practice, no source',
  }),
};

type Asked = ValuesOf<typeof offsetsInputs>;

const table = fact('counted', TABLE, (_: Asked, { hull }) => hull);

const missing = fact(
  'counted: boxes that are empty or can’t be read',
  TABLE,
  (_: Asked, { hull }) => hull.offsets.points.flat(2).filter((value) => value === null).length,
);

const faults = fact(
  'counted: points behind one another, a half-breadth below nothing, a section that crosses itself, names told apart by nothing',
  TABLE,
  (_: Asked, { hull, ask }) => hull.faults.length - ask(missing),
);

const diagonal = fact(
  'in plan, as it is lofted: √(distance forward² + half-breadths²), the heights left out',
  GEOMETRY,
  (_: Asked, { hull }) => {
    const sheer = hull.edges.at(-1)!.points; // a hull without edges has no length either
    const [aft, fore] = [sheer[0]!, sheer.at(-1)!];
    // From the port corner across to the starboard one of a bow transom; to the centreline at a stem.
    return Math.hypot(fore[0] - aft[0], fore[1] + aft[1]);
  },
);

/** How far the edges of each frame stand apart, fore and aft, m. */
const leans = fact(
  'foremost edge less aftmost, at the frame where they stand farthest apart',
  TABLE,
  (_: Asked, { hull }) => hull.frames.map(({ corners }) => apartForward(corners)),
);

const point = fact(
  'from the table',
  TABLE,
  ({ station, edge }: Asked, { hull }) => hull.edge(edge).points[hull.station(station).index]!, // a point a station
);

export const offsetsSteps = {
  stations: tell(table, 'count', 'stations of the table', ({ stations }) => stations.length),
  edges: tell(table, 'count', 'edges of the table', ({ edges }) => edges.length),
  missing: tell(missing, 'count', 'numbers still missing'),
  faults: tell(faults, 'count', 'other faults of the table'),
  ...sizeSteps,
  diagonal: tell(
    diagonal,
    'length',
    'diagonal from the after corner of the sheer across to its fore end, in plan, to tape on the floor',
  ),
  leaning: tell(leans, 'count', 'frames that lean', (all) => all.filter((apart) => apart > 0).length, {
    how: 'counted: stations between the ends whose edges do not all stand equally far forward',
  }),
  leansMost: tell(leans, 'length', 'most that a frame’s edges stand apart, fore and aft', (all) =>
    Math.max(0, ...all),
  ),
  lengthOff: step('length', 'length - planLength', 'table less plan, in length', GEOMETRY),
  beamOff: step('length', 'beam - planBeam', 'table less plan, in breadth', GEOMETRY),
  forward: tell(point, 'length', 'distance forward of that edge at that station', ([x]) => x),
  halfBreadth: tell(point, 'length', 'half-breadth of that edge at that station', ([, y]) => y),
  height: tell(point, 'length', 'height of that edge at that station above the base line', ([, , z]) => z),
  ...sectionSteps,
} as const;

export type OffsetsValues = ValuesOf<typeof offsetsInputs, typeof offsetsSteps>;
