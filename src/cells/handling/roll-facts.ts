/** What the turn asks of the hull: her section as it rolls over the floor, and how she goes through room and door. */
import type { Hull } from '../../boat';
import { convexOutline, type Rolled, type Rolling, rollingOf, type Vec2 } from '../../kernel';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

export const ROLLING = 'statics: moments about what she rolls over';
const DEGREE = Math.PI / 180;

interface Centred {
  readonly centreHeight: number;
}
interface Turned extends Centred {
  readonly angle: number;
}

/** Both sides of points of the port side. */
const bothSides = (points: readonly Vec2[]): readonly Vec2[] => [
  ...points,
  ...points.map(([y, z]): Vec2 => [-y, z]),
];

/** Her widest section as a straight batten bridges its hollows: what the floor meets. */
const outlineOf = ({ widest }: Hull): readonly Vec2[] => convexOutline(bothSides(widest.section));

export const rolling = fact(
  'the widest section rolled over the floor corner by corner',
  ROLLING,
  ({ centreHeight }: Centred, { hull }) => rollingOf(outlineOf(hull), [0, centreHeight]),
);

/** As she lies now; hands are at her far sheer, and pull or push square to the line from the floor to it. */
export const rolledTo = fact('her section turned so far', ROLLING, ({ angle }: Turned, { ask }) =>
  standingAt(ask(rolling), angle),
);

/** Turned so far, with where her far sheer is and how far that is from what bears. */
export function standingAt(roll: Rolling, angle: number) {
  const now = roll.at(angle);
  const grip = now.place(roll.grip);
  return { ...now, gripAt: grip, arm: Math.hypot(grip[0] - now.along, grip[1]) };
}

/** What the whole turn comes to: where she stands in balance, and the fall after it. */
export const theTurn = fact('the slope of the height of her centre', ROLLING, (_: Centred, { hull, ask }) => {
  const roll = ask(rolling);
  const [start, over, down] = [roll.at(0), roll.at(roll.balance), roll.at(roll.landing)];
  const outline = outlineOf(hull);
  const far = (at: Rolled) =>
    Math.max(...outline.map((point) => Math.hypot(point[0] - at.corner[0], point[1] - at.corner[1])));
  return {
    ...roll,
    rise: over.centre[1] - start.centre[1],
    fall: over.centre[1] - down.centre[1],
    radius: over.centre[1],
    farthest: far(over),
  };
});

export const sizes = fact('greatest breadth and depth of that section', GEOMETRY, (_: {}, { hull }) => {
  const heights = hull.widest.section.map(([, z]) => z);
  return { broad: hull.beam, deep: Math.max(...heights) - Math.min(...heights) };
});

/** The whole hull as seen from ahead: what door and ceiling see. */
const silhouette = fact('the tightest outline round all of her', GEOMETRY, (_: {}, { hull }) => {
  const { points } = hull.body;
  const seen: Vec2[] = [];
  for (let i = 0; i < points.length; i += 3) seen.push([points[i + 1]!, points[i + 2]!]); // three a point
  return convexOutline(bothSides(seen));
});

/** Of the turn, degrees. */
const EVERY = 2;

/** How broad and high the box round her is when she is turned so far. */
function extent(outline: readonly Vec2[], angle: number) {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  let [left, right, low, top] = [Infinity, -Infinity, Infinity, -Infinity];
  // Asked for some hundred turns of some hundred points, so it makes no lists.
  for (const point of outline) {
    const across = cosine * point[0] - sine * point[1];
    const up = sine * point[0] + cosine * point[1];
    left = Math.min(left, across);
    right = Math.max(right, across);
    low = Math.min(low, up);
    top = Math.max(top, up);
  }
  return { broad: right - left, high: top - low };
}

/** Angles looked at: every degree, and each at which a side lies flat. */
const anglesOf = (outline: readonly Vec2[]): readonly number[] => [
  ...Array.from({ length: 180 / EVERY }, (_, i) => i * EVERY * DEGREE),
  ...outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    return -Math.atan2(to[1] - from[1], to[0] - from[0]);
  }),
];

/** Greatest height on the way over, and the floor that she sweeps from upside down to right side up. */
export const room = fact(
  'her outline at every second degree of the turn; her two farthest points one over the other',
  GEOMETRY,
  (_: Centred, { ask }) => {
    const outline = ask(silhouette);
    const roll = ask(rolling);
    let [from, to] = [Infinity, -Infinity];
    for (let turn = 0; turn <= 180; turn += EVERY) {
      const { place } = roll.at(turn * DEGREE);
      for (const point of outline) {
        const [across] = place(point);
        from = Math.min(from, across);
        to = Math.max(to, across);
      }
    }
    let farthest = 0;
    for (const [at, one] of outline.entries()) {
      for (let i = 0; i < at; i += 1) {
        const y = outline[i]![0] - one[0]; // up to this one
        const z = outline[i]![1] - one[1];
        farthest = Math.max(farthest, y * y + z * z);
      }
    }
    return {
      // Nothing of her stands higher than her two farthest points one over the other.
      high: Math.sqrt(farthest),
      across: to - from,
    };
  },
);

/** How she goes through the doorway with the most to spare: that spare, - where she does not pass. */
export const throughDoor = fact(
  'her outline at every second degree, and with each side level',
  GEOMETRY,
  ({ doorBroad, doorHigh }: { readonly doorBroad: number; readonly doorHigh: number }, { ask }) => {
    const outline = ask(silhouette);
    const ways = anglesOf(outline).map((angle) => {
      const { broad, high } = extent(outline, angle);
      return { angle, spare: Math.min(doorBroad - broad, doorHigh - high) };
    });
    const best = ways.reduce((one, other) => (other.spare > one.spare + 1e-9 ? other : one));
    const turn = Math.abs(best.angle) / DEGREE;
    const lean = turn % 180;
    return { spare: best.spare, lean: Math.min(lean, 180 - lean) * DEGREE };
  },
);
