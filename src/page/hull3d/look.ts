/**
 * From where the hull is seen: round her, above her, and how near. Seen without perspective, as a plan is drawn, so
 * that a view from the side is the profile itself. Both the still picture and the one to turn go by this.
 */
import { add, dot, scale, type Vec3 } from '../../kernel';

export interface Viewpoint {
  /** Round the hull, rad: 0 from ahead, a right angle from port, half a turn from astern. */
  readonly turn: number;
  /** Above level, rad; a right angle from straight above. */
  readonly lift: number;
  /** 1 shows the whole hull from every side; 2 shows it twice as large. */
  readonly near: number;
}

/** Right and up on the picture, and out of it towards the eye; unit, in the hull's axes. */
export interface LookAxes {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toward: Vec3;
}

const degree = Math.PI / 180;
const STEEPEST = Math.PI / 2;
export const NEAREST = 8;
export const FARTHEST = 0.5;

const look = (turn: number, lift: number): Viewpoint => ({
  turn: turn * degree,
  lift: lift * degree,
  near: 1,
});

export const threeQuarter = look(-48, 24);

/** Seen from above the bow lies to the right, as in a half-breadth plan. */
export const namedLooks: readonly { readonly words: string; readonly look: Viewpoint }[] = [
  { words: 'Three-quarter', look: threeQuarter },
  { words: 'From port', look: look(90, 0) },
  { words: 'From starboard', look: look(-90, 0) },
  { words: 'From ahead', look: look(0, 0) },
  { words: 'From astern', look: look(180, 0) },
  { words: 'From above', look: look(-90, 90) },
];

export function axesOfLook({ turn, lift }: Viewpoint): LookAxes {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [level, rise] = [Math.cos(lift), Math.sin(lift)];
  return { right: [-s, c, 0], up: [-rise * c, -rise * s, level], toward: [level * c, level * s, rise] };
}

/** The same look at a hull that lies over to port by this angle, rad: her axes go with her. */
export function atHeel(axes: LookAxes, heel: number): LookAxes {
  const [c, s] = [Math.cos(heel), Math.sin(heel)];
  const leant = ([x, y, z]: Vec3): Vec3 => [x, y * c - z * s, y * s + z * c];
  return { right: leant(axes.right), up: leant(axes.up), toward: leant(axes.toward) };
}

/** How she lies, in words; nothing while she is upright. */
export function heelInWords(heel: number): string {
  const degrees = Math.round(heel / degree);
  if (degrees === 0) return '';
  return `, lying ${Math.abs(degrees)}° over to ${degrees > 0 ? 'port' : 'starboard'}`;
}

/** The look of an eye that is in this direction from the hull's middle. */
export function lookFrom([x, y, z]: Vec3, near: number): Viewpoint {
  return { turn: Math.atan2(y, x), lift: Math.atan2(z, Math.hypot(x, y)), near };
}

/** A point as seen: to the right, up, and towards the eye, m. */
export const seen = ({ right, up, toward }: LookAxes, point: Vec3): Vec3 => [
  dot(point, right),
  dot(point, up),
  dot(point, toward),
];

/** A direction given as it is seen, in the hull's axes. */
export const unseen = ({ right, up, toward }: LookAxes, [x, y, z]: Vec3): Vec3 =>
  add(add(scale(right, x), scale(up, y)), scale(toward, z));

/** The hull turned as if by hand: her near side to the right and downward, rad. */
export function turned(from: Viewpoint, right: number, down: number): Viewpoint {
  const turn = from.turn - right;
  const whole = 2 * Math.PI;
  return {
    ...from,
    turn: turn - whole * Math.round(turn / whole),
    lift: Math.max(-STEEPEST, Math.min(STEEPEST, from.lift + down)),
  };
}

export function nearer(from: Viewpoint, times: number): Viewpoint {
  return { ...from, near: Math.max(FARTHEST, Math.min(NEAREST, from.near * times)) };
}

/** Eighths of a turn, from ahead by port. */
const quarters = [
  'ahead',
  'the port bow',
  'port',
  'the port quarter',
  'astern',
  'the starboard quarter',
  'starboard',
  'the starboard bow',
];

/** Where the eye is, in words: `seen from the starboard bow, 24° above level`. */
export function seenFrom({ turn, lift, near }: Viewpoint): string {
  const degrees = Math.round(lift / degree);
  const large = Math.abs(near - 1) < 0.01 ? '' : `, ${near.toFixed(1)} times as large`;
  if (degrees >= 88) return `seen from straight above${large}`;
  if (degrees <= -88) return `seen from straight below${large}`;
  const eighth = ((Math.round(turn / (45 * degree)) % 8) + 8) % 8;
  const height = degrees === 0 ? 'level' : `${Math.abs(degrees)}° ${degrees > 0 ? 'above' : 'below'} level`;
  return `seen from ${quarters[eighth]!}, ${height}${large}`; // eight quarters
}
