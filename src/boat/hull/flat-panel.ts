/**
 * A panel laid flat along the straight edge of a sheet, so that it stands least high over it, with where the frames
 * cross it: what ordinates are read from, what is cut from sheets, what cloth is laid on.
 *
 * Axes: x, m, the running distance along the straight edge, forward from the panel's aftermost point; y, m, the height
 * above that edge, on which the panel's lowest point lies. The inner edge (the one nearer the keel) is below, the outer
 * above. The face seen is the outside of the port panel; the starboard one is its mirror image.
 */
import {
  distance2,
  fineEdge,
  leastHeight,
  type SectionPoint,
  stripSection,
  turned,
  type Vec2,
} from '../../kernel';
import { onceFor } from '../once';
import type { Panel } from './panel';
import type { Station } from './station';

export interface FlatPanel {
  readonly panel: Panel;
  /** The two long edges from aft forward; chords stand less than 0.02 mm off the curve on a panel of 5 m. */
  readonly inner: readonly Vec2[];
  readonly outer: readonly Vec2[];
  /**
   * The whole outline, anticlockwise and open (the last point is not the first again): the inner edge going forward,
   * the straight fore end, the outer edge going aft, the straight after end. Where the edges meet in a point, as at a
   * stem, that end has no length.
   */
  readonly outline: readonly Vec2[];
  /** Sides of the least upright box round it: along the straight edge, and square to it. */
  readonly length: number;
  readonly width: number;
  /** Brings a point of the strip's own sheet (`panel.flat`, `stripSection(...).flat`) to these axes. */
  readonly place: (point: Vec2) => Vec2;
  /**
   * Where frames of this hull cross it, in their order; one that it doesn't reach across has no mark. The line is that
   * of the station's plane, on which one face of the frame stands.
   */
  readonly marks: (frames: readonly Station[]) => readonly FrameMark[];
}

/** Where a station's line meets an edge of the flat panel. */
export interface EdgeMark {
  readonly at: Vec2;
  /** Length along that edge of the panel from its after end, m: as a tape bent to the edge reads. */
  readonly along: number;
}

/** Where a frame crosses the flat panel: the line of its station, from the inner edge to the outer. */
export interface FrameMark {
  readonly station: Station;
  /** Curved where the panel twists or the rulings slant; two points or more. */
  readonly line: readonly Vec2[];
  readonly inner: EdgeMark;
  readonly outer: EdgeMark;
}

/** How far chords may stand off the curve, of the length of the edge. */
const FINE = 4e-6;

/** Lays a panel flat with the least height over the straight edge of a sheet. The same object for the same panel. */
export const flatPanel = onceFor((panel: Panel): FlatPanel => {
  const edges = {
    inner: fineEdge(panel.strip, 'first', FINE * panel.inner.length),
    outer: fineEdge(panel.strip, 'second', FINE * panel.outer.length),
  };
  const { turn, origin, length, height } = leastHeight([...edges.inner, ...edges.outer]);
  const place = (point: Vec2): Vec2 => {
    const [x, y] = turned(point, turn);
    return [x - origin[0], y - origin[1]];
  };
  const inner = edges.inner.map(place);
  const outer = edges.outer.map(place);
  const outline = [...inner, ...outer.toReversed()];
  return {
    panel,
    inner,
    outer,
    outline: outline.filter((point, i) => distance2(point, outline[(i + 1) % outline.length]!) > SAME),
    length,
    width: height,
    place,
    marks: (frames) => frames.flatMap((station) => markOf(station, panel, place) ?? []),
  };
});

/** Nearer than this, m, two points of the outline are one. */
const SAME = 1e-7;

function markOf(station: Station, panel: Panel, place: FlatPanel['place']): FrameMark | null {
  const [low, high] = [panel.inner, panel.outer].map(({ index }) => station.corners[index]!); // one corner an edge
  const section = stripSection(panel.strip, low![0]);
  // A frame whose corners stand apart fore and aft is marked straight from one to the other.
  const apart = high![0] !== low![0];
  const first = section[0];
  const last = apart ? stripSection(panel.strip, high![0]).at(-1) : section.at(-1);
  if (first?.share !== 0 || last?.share !== 1) return null;
  const mark = ({ flat }: SectionPoint, edge: Panel['inner']): EdgeMark => ({
    at: place(flat),
    along: edge.arcs[station.index]!, // an arc a station
  });
  return {
    station,
    line: (apart ? [first, last] : section).map(({ flat }) => place(flat)),
    inner: mark(first, panel.inner),
    outer: mark(last, panel.outer),
  };
}
