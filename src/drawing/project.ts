// Views of a hull: lines in space projected to profile, half-breadth plan and body plan,
// and the three laid out on one sheet to one scale.

import type { View } from '../kernel';
import { centreLine, line, mm, note } from './drawing';
import { extents } from './flatten';
import type { Box, Drawing, Pen, Point, Shape } from './shapes';

/** A line of the hull in metres: x forward, y half-breadth to port, z up. Its name is the part it lights up. */
export interface SpaceLine {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number, z: number])[];
  readonly pen?: Pen;
}

export type { View } from '../kernel';

type Spatial = SpaceLine['points'][number];

/**
 * The lines as seen from the side (bow to the right), from above (half-breadth upward), or
 * from the ends: forward of `amidships` (metres; by default the middle of the lines) to the
 * right of the centreline, abaft it to the left, as body plans are drawn. A line that runs
 * past amidships is drawn on both sides. `at` moves the view on the sheet, mm.
 */
export function view(
  lines: readonly SpaceLine[],
  which: View,
  { amidships = middle(lines), at = [0, 0] }: { readonly amidships?: number; readonly at?: Point } = {},
): Shape[] {
  const seen = (points: readonly Spatial[], project: (p: Spatial) => Point): Point[] =>
    points.map((p) => {
      const [right, up] = project(p);
      return [at[0] + mm(right), at[1] + mm(up)];
    });
  return lines.flatMap(({ name, points, pen = 'visible' }) => {
    const drawn = (part: readonly Spatial[], project: (p: Spatial) => Point): Shape[] =>
      part.length < 2 ? [] : [line(seen(part, project), { pen, part: name })];
    switch (which) {
      case 'profile':
        return drawn(points, ([x, , z]) => [x, z]);
      case 'plan':
        return drawn(points, ([x, y]) => [x, y]);
      case 'body':
        return [
          ...beyond(points, amidships, 1).flatMap((part) => drawn(part, ([, y, z]) => [y, z])),
          ...beyond(points, amidships, -1).flatMap((part) => drawn(part, ([, y, z]) => [-y, z])),
        ];
    }
  });
}

function middle(lines: readonly SpaceLine[]): number {
  const xs = lines.flatMap((l) => l.points.map(([x]) => x));
  return xs.length === 0 ? 0 : (Math.min(...xs) + Math.max(...xs)) / 2;
}

/** The pieces of a line forward (1) or abaft (-1) of a station; what stands right on it counts as forward. */
function beyond(points: readonly Spatial[], station: number, way: 1 | -1): Spatial[][] {
  const pieces: Spatial[][] = [];
  let piece: Spatial[] = [];
  let last: Spatial | null = null;
  const inside = ([x]: Spatial): boolean => (way === 1 ? x >= station : x < station);
  for (const point of points) {
    if (last && inside(last) !== inside(point)) {
      const share = (station - last[0]) / (point[0] - last[0]);
      const cut: Spatial = [
        station,
        last[1] + share * (point[1] - last[1]),
        last[2] + share * (point[2] - last[2]),
      ];
      piece.push(cut);
      if (inside(last)) {
        pieces.push(piece);
        piece = [];
      }
    }
    if (inside(point)) piece.push(point);
    last = point;
  }
  return [...pieces, piece].filter((p) => p.length > 1);
}

interface PlanOptions {
  readonly title: string;
  readonly says: string;
  /** Wide: body plan beside the profile; tall: all three below each other, for a narrow page. */
  readonly form?: 'wide' | 'tall';
  /** Where the body plan changes sides, metres. */
  readonly amidships?: number;
}

/**
 * Profile, half-breadth plan and body plan on one sheet at one scale: the plan lies under the
 * profile with the same stations, the body plan beside it on the same base line (wide) or
 * below both (tall).
 */
export const linesPlan = (lines: readonly SpaceLine[], options: PlanOptions): Drawing =>
  arranged(lines, options, true);

/** The same three views in lighter pens and without their names, to be set out small, without bar and caption. */
export const thumbnail = (lines: readonly SpaceLine[], options: PlanOptions): Drawing =>
  arranged(
    lines.map((l) => ({ ...l, pen: l.pen === 'outline' ? 'visible' : 'thin' })),
    options,
    false,
  );

function arranged(
  lines: readonly SpaceLine[],
  { title, says, form = 'wide', amidships = middle(lines) }: PlanOptions,
  named: boolean,
): Drawing {
  const box = (which: View): Box => extents({ title, says, shapes: view(lines, which, { amidships }) });
  const profile = box('profile');
  const plan = box('plan');
  const body = box('body');
  // The gaps follow the hull's own size, so that the arrangement looks alike for any boat.
  const gap = (form === 'wide' ? 0.06 : 0.08) * (profile.right - profile.left);
  const planAt: Point = [0, profile.bottom - gap - plan.top];
  const bodyAt: Point =
    form === 'wide'
      ? [profile.right + gap - body.left, 0]
      : [(profile.left + profile.right) / 2, planAt[1] + Math.min(0, plan.bottom) - gap - body.top];

  const base: Shape[] = [
    centreLine([profile.left, planAt[1]], [profile.right, planAt[1]]),
    centreLine([bodyAt[0], bodyAt[1] + Math.min(0, body.bottom)], [bodyAt[0], bodyAt[1] + body.top]),
  ];
  const above: Point = [bodyAt[0], bodyAt[1] + body.top + 0.4 * gap];
  const beside: Point = [
    (profile.left + bodyAt[0] + body.left) / 2,
    bodyAt[1] + (body.bottom + body.top) / 2,
  ];
  const name = (text: string, at: Point): Shape => note(text, { at });
  const names: Shape[] = named
    ? [
        name('Profile', [(profile.left + profile.right) / 2, profile.top + 0.4 * gap]),
        name('Half-breadth', [(profile.left + profile.right) / 2, planAt[1] - 0.4 * gap]),
        name('Body plan', form === 'wide' ? above : beside),
      ]
    : [];
  return {
    title,
    says,
    shapes: [
      ...base,
      ...view(lines, 'profile'),
      ...view(lines, 'plan', { at: planAt }),
      ...view(lines, 'body', { amidships, at: bodyAt }),
      ...names,
    ],
  };
}
