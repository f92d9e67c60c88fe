/** Words of the hull as a whole, on the lines of the boats that come along. */
import { breadthAt, buildHull, demoBoat, type Hull, offsetsOf } from '../../boat';
import {
  angleDim,
  centreLine,
  dim,
  drawing,
  label,
  line,
  mm,
  type Point,
  type Shape,
  type SpaceLine,
  view,
  type View,
} from '../../drawing';
import { hullLines } from '../hull/hull-lines';
import { curve, type Sketches } from './small-drawing';

let made: Hull | null = null;
const hull = (): Hull => (made ??= buildHull(offsetsOf(demoBoat)));

/** A view of the hull, with the lines of these names strong and all others thin. */
function seen(which: View, strong: (name: string) => boolean, at: Point = [0, 0]): Shape[] {
  const lines = hullLines(hull()).map((one): SpaceLine => ({
    ...one,
    pen: strong(one.name) ? 'outline' : 'thin',
  }));
  return view(lines, which, { amidships: hull().widest.x, at });
}

const under = (): Point => [0, -mm(hull().beam) * 0.62];
const all = () => true;
const none = () => false;

/** A long line of the hull from the side and from above. */
const longLine = (name: string, word: string, share: number, way: 'n' | 's', says: string) => () => {
  const edge = hull().edges.find((one) => one.name === name)!; // of the demo boat, which has it
  const points = edge.polyline(33);
  const [x, , z] = points[Math.round(share * 32)]!; // within 33 points
  const isIt = (one: string) => one === name;
  return drawing({
    title: word,
    says,
    shapes: [
      ...seen('profile', isIt),
      ...seen('plan', isIt, under()),
      label([mm(x), mm(z)], word, { toward: way }),
    ],
  });
};

/** The section at a place along the hull, keel outward, where her edges reach so far; m. */
function sectionAt(x: number): readonly (readonly [y: number, z: number])[] {
  return hull().edges.flatMap((edge) => {
    const points = edge.polyline(65);
    const next = points.findIndex((point) => point[0] >= x);
    const [from, to] = [points[next - 1], points[next]];
    if (!from || !to) return [];
    const share = (x - from[0]) / (to[0] - from[0]);
    return [[from[1] + share * (to[1] - from[1]), from[2] + share * (to[2] - from[2])] as const];
  });
}

/** Where a level or an upright plane cuts the hull, from above or from the side, mm. */
function cut(breadth: (section: ReturnType<typeof sectionAt>) => number | null): Point[] {
  return curve((t) => [t * hull().length, 0], 60).flatMap(([x]): Point[] => {
    const found = breadth(sectionAt(x));
    return found === null ? [] : [[mm(x), mm(found)]];
  });
}
const breadthsAt = (z: number) => cut((section) => breadthAt(section, z));
const heightsAt = (y: number) =>
  cut((section) =>
    breadthAt(
      section.map(([out, up]) => [up, out] as const),
      y,
    ),
  );
const between = (points: readonly Point[], way: 0 | 1, share: number): number => {
  const all = points.map((point) => point[way]);
  return Math.min(...all) + share * (Math.max(...all) - Math.min(...all));
};
const lowest = () =>
  Math.min(
    ...hull()
      .edges[0]!.polyline(33)
      .map(([, , z]) => z),
  ); // a hull has a keel
const LEVEL = 0.18;

export const hullSketches: Sketches = {
  sheer: longLine(
    'sheer',
    'sheer',
    0.55,
    'n',
    'The hull from the side and from above; the top edge of its side is drawn strong.',
  ),
  chine: longLine(
    'chine',
    'chine',
    0.5,
    'n',
    'The hull from the side and from above; the edge between bottom and side is drawn strong.',
  ),
  keel: () =>
    drawing({
      title: 'Keel',
      says: 'The hull from the side; its lowest line, on the centreline, is drawn strong.',
      shapes: [
        ...seen('profile', (one) => one === hull().edges[0]?.name),
        label([mm(hull().widest.x), mm(hull().widest.corners[0]?.[2] ?? 0)], 'keel', { toward: 's' }),
      ],
    }),
  profile: () =>
    drawing({
      title: 'Profile',
      says: 'The hull from the side, bow to the right.',
      shapes: seen('profile', all),
    }),
  'half-breadth': () => {
    const { x, corners } = hull().widest;
    const breadth = mm(Math.max(...corners.map(([, y]) => y)));
    return drawing({
      title: 'Half-breadth',
      says: 'One half of the hull from above; the half-breadth goes from the centreline out to the sheer.',
      shapes: [
        ...seen('plan', all),
        centreLine([0, 0], [mm(hull().length), 0]),
        dim([mm(x), 0], [mm(x), breadth], 'half-breadth', { run: 'vertical', side: 'right' }),
      ],
    });
  },
  'body-plan': () =>
    drawing({
      title: 'Body plan',
      says: 'Sections of the hull from the ends: the fore half to the right of the centreline, the after half to the left.',
      shapes: [
        ...seen('body', all),
        centreLine([0, mm(lowest())], [0, mm(lowest() + hull().depth)]),
        label([-mm(hull().beam) / 4, mm(lowest() + hull().depth)], 'after half', { toward: 'n' }),
        label([mm(hull().beam) / 4, mm(lowest() + hull().depth)], 'fore half', { toward: 'n' }),
      ],
    }),
  station: () => {
    const { name, x, corners } = hull().widest;
    const top = Math.max(...corners.map(([, , z]) => z));
    return drawing({
      title: 'Station',
      says: 'The hull from the side and from the ends; the line of one station, and the section there, are drawn strong.',
      shapes: [
        ...seen('profile', (one) => one === name),
        ...seen('body', (one) => one === name, [mm(hull().length / 2), -mm(hull().depth) * 1.9]),
        label([mm(x), mm(top)], 'station', { toward: 'n' }),
      ],
    });
  },
  waterline: () => {
    const z = lowest() + LEVEL;
    const level = breadthsAt(z);
    const [dx, dy] = under();
    return drawing({
      title: 'Waterline',
      says: 'A waterline is straight and level from the side, and curved from above.',
      shapes: [
        ...seen('profile', none),
        line(
          [
            [between(level, 0, 0), mm(z)],
            [between(level, 0, 1), mm(z)],
          ],
          { pen: 'outline' },
        ),
        ...seen('plan', none, under()),
        line(
          level.map(([x, y]): Point => [x + dx, y + dy]),
          { pen: 'outline' },
        ),
        label([between(level, 0, 0.5), mm(z)], 'waterline', { toward: 'n' }),
      ],
    });
  },
  buttock: () => {
    const y = hull().beam * 0.33;
    const level = heightsAt(y);
    const [, dy] = under();
    return drawing({
      title: 'Buttock',
      says: 'A buttock is curved from the side, and straight from above.',
      shapes: [
        ...seen('profile', none),
        line(level, { pen: 'outline' }),
        ...seen('plan', none, under()),
        line(
          [
            [between(level, 0, 0), mm(y) + dy],
            [between(level, 0, 1), mm(y) + dy],
          ],
          { pen: 'outline' },
        ),
        label([between(level, 0, 0.5), mm(y) + dy], 'buttock', { toward: 'n' }),
      ],
    });
  },
  draught: () => {
    const [low, at] = [mm(lowest()), mm(hull().widest.x)];
    const level = low + mm(LEVEL);
    return drawing({
      title: 'Draught',
      says: 'The hull from the side, afloat; the draught goes from the water down to her lowest point.',
      shapes: [
        ...seen('profile', (one) => hull().edges.some(({ name }) => name === one)),
        line(
          [
            [-mm(hull().length) * 0.08, level],
            [mm(hull().length) * 1.08, level],
          ],
          { pen: 'visible' },
        ),
        dim([at, low], [at, level], 'draught', { run: 'vertical', side: 'right' }),
      ],
    });
  },
  transom: () =>
    drawing({
      title: 'Transom',
      says: 'The hull from the side and from the ends; the flat end at the stern is drawn strong.',
      shapes: [
        ...seen('profile', (one) => one === hull().aft.name),
        ...seen('body', (one) => one === hull().aft.name, [mm(hull().length / 2), -mm(hull().depth) * 1.9]),
        label([mm(hull().aft.corners.at(-1)?.[0] ?? 0), mm(hull().aft.corners.at(-1)?.[2] ?? 0)], 'transom', {
          toward: 'n',
        }),
      ],
    }),
  stem: () => {
    const top = hull().fore.corners.at(-1) ?? [0, 0, 0];
    return drawing({
      title: 'Stem',
      says: 'The hull from the side; the timber at the bow is drawn strong.',
      shapes: [
        ...seen('profile', (one) => one === hull().fore.name),
        label([mm(top[0]), mm(top[2])], 'stem', { toward: 'nw' }),
      ],
    });
  },
  rake: () => {
    const [foot, head] = [hull().aft.corners[0]!, hull().aft.corners.at(-1)!]; // a section has corners
    const at: Point = [mm(foot[0]), mm(foot[2])];
    const lean = Math.atan2(head[2] - foot[2], head[0] - foot[0]);
    const up = Math.hypot(head[2] - foot[2], head[0] - foot[0]);
    const bottom = hull()
      .edges[0]!.polyline(33)
      .filter(([x]) => x < hull().length * 0.22); // a hull has a keel
    const sheer = hull()
      .edges.at(-1)!
      .polyline(33)
      .filter(([x]) => x < hull().length * 0.22);
    const plumb: Point = [at[0], at[1] + mm(up)];
    return drawing({
      title: 'Rake',
      says: 'The after end of the hull from the side; the rake is the angle between the transom and a plumb line.',
      shapes: [
        line(bottom.map(fromSide), { pen: 'thin' }),
        line(sheer.map(fromSide), { pen: 'thin' }),
        line([at, [mm(head[0]), mm(head[2])]], { pen: 'outline' }),
        line([at, plumb], { pen: 'hidden' }),
        angleDim(at, ...ordered(lean, Math.PI / 2), 'rake', { reach: mm(up) * 0.8 }),
      ],
    });
  },
};

const fromSide = ([x, , z]: SpaceLine['points'][number]): Point => [mm(x), mm(z)];
const ordered = (a: number, b: number): [number, number] => (a < b ? [a, b] : [b, a]);
