/** What is known along a chine log: its length, its marks, and its corner at any place. */
import { cornerAlong } from '../../boat/hull/corner-along';
import { marksAlong } from '../common/frame/marks-along';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

export interface LogAsked {
  readonly chine: string;
  readonly end: 'aft' | 'fore';
}
interface PlaceAsked extends LogAsked {
  readonly at: number;
}

export const log = fact(
  'the chine’s batten, measured along its bend',
  GEOMETRY,
  ({ chine, end }: LogAsked, { hull }) => {
    const edge = hull.edge(chine);
    const { length } = edge;
    return {
      edge,
      length,
      /** The same place from the other end, m: from the after end, where the marks are from the fore end. */
      turned: (at: number) => (end === 'fore' ? length - at : at),
    };
  },
);

/** The corner that the log lies in, at the mark. */
export const corner = fact(
  'the planes of side and bottom at the chine, cut square to the chine',
  'geometry: normals of the ruled panels',
  ({ chine, at }: PlaceAsked, { hull, ask }) => cornerAlong(hull, chine, ask(log).turned(at)),
);

export const marks = fact(
  'from one end to the other at the interval, both ends with them',
  GEOMETRY,
  ({ interval }: LogAsked & { readonly interval: number }, { ask }) => marksAlong(ask(log).length, interval),
);

/** Where in the boat the mark is, by her frames. */
export const place = fact(
  'the frames on both sides of the mark',
  GEOMETRY,
  ({ at }: PlaceAsked, { hull, ask }) => {
    const { edge, length, turned } = ask(log);
    const along = Math.max(0, Math.min(length, turned(at)));
    const near = 5e-3; // closer than this a mark stands at the frame
    const frame = hull.stations.find((_, i) => Math.abs(edge.arcs[i]! - along) < near); // one arc a station
    if (frame) return `at ${frame.label}`;
    const next = edge.arcs.findIndex((arc) => arc > along);
    return `between ${hull.stations[next - 1]!.label} and ${hull.stations[next]!.label}`; // within the ends
  },
);

/** The angle between side and bottom from end to end, and at the frames; as marks are measured. */
export const along = fact('the corner at sixty places', GEOMETRY, ({ chine }: LogAsked, { hull, ask }) => {
  const { edge, length, turned } = ask(log);
  const angleAt = (arc: number): readonly [number, number] => {
    const { flare, deadrise } = cornerAlong(hull, chine, arc);
    return [turned(arc), Math.PI / 2 + flare + deadrise];
  };
  const run = Array.from({ length: 61 }, (_, i) => angleAt((length * i) / 60));
  return {
    run: run.toSorted(([a], [b]) => a - b),
    frames: hull.frames.map(({ index }) => angleAt(edge.arcs[index]!)), // one arc a station
  };
});
