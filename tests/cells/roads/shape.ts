/** Second roads to steps of the cells on the hull's shape. */
import type { Hull } from '../../../src/boat';
import { pointAt } from '../../../src/kernel';
import { GRAVITY, type Roads, type Setting } from './road';

const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
const pointsOf = ({ hull, word }: Setting) => hull.edge(word('edge')).points;
const across = ({ is }: Setting) => (is('view', 'plan') ? 1 : 2);
const stationAt = ({ hull, word }: Setting) => hull.station(word('station')).index;
/** The bottom on the centreline, and every edge, at the after end. */
const sternOf = (hull: Hull) => hull.edges.map(({ points }) => points[0]!);

/** How far the edges stand apart, fore and aft, at each frame by the table. */
const leansOf = ({ offsets }: Hull) =>
  offsets.stations.slice(1, -1).map((_, i) => spread(offsets.points.map((line) => line[i + 1]![0]!)));

export const shape: Roads = {
  offsets: {
    leaning: ({ hull }) => leansOf(hull).filter((lean) => lean > 1e-6).length,
    leansMost: ({ hull }) => Math.max(...leansOf(hull)),
    beamOff: ({ n, hull }) => hull.beam - n('planBeam'),
  },
  lines: {
    // On the centreline, for the keel is the lowest edge of every boat here.
    lowest: ({ hull }) => {
      const { batten } = hull.edges[0]!;
      const [from, to] = [batten.knots[0]!, batten.knots.at(-1)!];
      const heights = Array.from(
        { length: 4001 },
        (_, i) => pointAt(batten, from + ((to - from) * i) / 4000)[2],
      );
      return [Math.min(...heights), 1e-4];
    },
    // What is left above the last line drawn is one space more.
    waterlineSpacing: ({ n }) => n('height') - n('waterlines') * n('waterlineSpacing'),
    buttockSpacing: ({ n }) => n('beam') / 2 - n('buttocks') * n('buttockSpacing'),
    sternDepth: ({ n, hull }) => n('waterline') - sternOf(hull)[0]![2],
    sternBreadth: ({ hull }) => Math.max(...sternOf(hull).map(([, y]) => 2 * y)),
  },
  fair: {
    shows: ({ n }) => (n('proof') > 0 ? n('error') / n('proof') : null),
    stations: ({ hull }) => hull.stations.length,
    signs: ({ n, word }) =>
      word('signs').includes(['none', 'one', 'two', 'all three'][n('witnesses')] ?? '') ? word('signs') : '?',
    // From the table; the trial move is another number's.
    stands: (of) =>
      of.n('shift') === 0 ? pointsOf(of)[of.hull.station(of.word('oddStation')).index]![across(of)] : null,
    error: ({ n }) => Math.hypot(n('correction')),
    oneHere: ({ n, is, word }) => (is('station', word('oddStation')) ? n('correction') : null),
    rivalError: ({ word, rerun }) => Math.abs(rerun({ station: word('rival') }).n('oneHere')),
    // Every line by itself has its oddest number; the whole table's is the one that stands out most.
    suspectStation: ({ hull, rerun }) =>
      hull.edges
        .flatMap(({ name: edge }, i) =>
          (i === 0 ? ['profile'] : ['plan', 'profile']).map((view) => rerun({ edge, view, shift: 0 })),
        )
        .reduce((odd, line) => (line.n('proof') > odd.n('proof') ? line : odd))
        .word('oddStation'),
  },
  batten: {
    secondMoment: ({ n }) => n('width') * n('thickness') * (n('thickness') / Math.sqrt(12)) ** 2,
    stress: ({ n }) => n('share') * n('rupture'),
    duckMass: ({ n }) => n('greatest') / GRAVITY / n('grip'),
    bay: (of) => {
      const points = pointsOf(of).map((point) => [point[0], point[across(of)]] as const);
      return Math.max(
        ...points.slice(1).map(([x, y], i) => Math.hypot(x - points[i]![0], y - points[i]![1])),
      );
    },
    offset: (of) => pointsOf(of)[stationAt(of)]![across(of)],
  },
};
