// The names on a full lines plan: of its views, stations, edges, waterlines and buttocks, each clear of its neighbours.

import { label, line, mm, note } from './drawing';
import {
  type FullLines,
  GAPS,
  onSheet,
  type ViewPlace,
  type ViewPlaces,
  type PlanCut,
  type PlanEdge,
  type PlanStation,
  type Spatial,
} from './lines-plan-places';
import type { Point, Shape } from './shapes';

/** Mean width of a letter, in rows. */
const LETTER = 0.5;

/** What each view is, and the head of the sheet. */
export function headings(of: FullLines, { profile, plan, body }: ViewPlaces, row: number): Shape[] {
  const { left, right, top, bottom } = profile.box;
  const middle = (left + right) / 2;
  const foot = body.at[1] + body.box.bottom - 2.65 * row;
  const outward = Math.max(body.box.right, -body.box.left);
  return [
    note(of.heading, { at: [middle, top + GAPS.head * row] }),
    note('Profile', { at: [middle, bottom - 2.35 * row] }),
    note('Half-breadth plan', { at: [middle, plan.at[1] + plan.box.bottom - 2.4 * row] }),
    note('aft', { at: [body.at[0] - outward, foot] }),
    note('forward', { at: [body.at[0] + outward, foot] }),
    note(body.times === 1 ? 'Body plan' : 'Body plan, twice as large', { at: [body.at[0], foot - row] }),
  ];
}

/** The ends above, inward, where their long names take no room from the frames' nor from the hull; each section at its sheer. */
export function stationNames(of: FullLines, { profile, body }: ViewPlaces, row: number): Shape[] {
  const { left, right, top, bottom } = profile.box;
  const half = (name: string) => (LETTER * name.length * row) / 2;
  const ends = [...of.stations.slice(0, 1), ...of.stations.slice(1).slice(-1)];
  return [
    ...ends.map(({ name }, i) =>
      note(name, { at: [i === 0 ? left + half(name) : right - half(name), top + 1.2 * row] }),
    ),
    ...frameRow(of.stations.slice(1, -1), row).map(({ name, x }) =>
      note(name, { at: [mm(x), bottom - 1.25 * row] }),
    ),
    ...of.stations.flatMap((station) => sectionName(station, of.amidships, body, ends.includes(station))),
  ];
}

/** The sheer over the half-breadth plan and the chines under it, near their after ends, where nothing else is named. */
export function edgeNames({ edges }: FullLines, { plan }: ViewPlaces, row: number): Shape[] {
  const sheer = edges.at(-1);
  if (!sheer) return [];
  const at = (points: PlanEdge['points']): Point => {
    const [x, y] = points[Math.floor(points.length / 5)]!; // an edge has points
    return onSheet(plan, mm(x), mm(y));
  };
  const foot = at(sheer.points);
  const over = plan.at[1] + plan.box.top + 0.3 * row;
  const low = plan.at[1] + plan.box.bottom - 1.25 * row;
  const chines = edges.slice(1, -1);
  const widest = Math.max(0, ...chines.map(({ label: name }) => LETTER * name.length * row));
  const beside = spread(chines.map(({ points }) => at(points)[0]), widest + 0.3 * row); // prettier-ignore
  return [
    line([foot, [foot[0], over]], { pen: 'thin' }),
    note(sheer.label, { at: [foot[0], over + 0.5 * row] }),
    ...chines.flatMap(({ label: name, points }, i) => {
      const from = at(points);
      return [
        line([from, [from[0], plan.at[1] + plan.box.bottom], [beside[i]!, low + 0.8 * row]], { pen: 'thin' }), // prettier-ignore
        note(name, { at: [beside[i]!, low] }),
      ];
    }),
  ];
}

/**
 * Every waterline beside the profile and every buttock under the body plan, fanned out where they lie too close to be
 * named at their own ends; and where there is room for it, again in the other views, straight or curved.
 */
export function cutNames(
  of: FullLines,
  { profile, plan, body }: ViewPlaces,
  past: number,
  row: number,
): Shape[] {
  const again = true;
  const half = (name: string) => (LETTER * name.length * row) / 2;
  const levels = spread(of.waterlines.map(({ at }) => profile.at[1] + mm(at)), 1.15 * row); // prettier-ignore
  const widest = Math.max(0, ...of.buttocks.map(({ name }) => 2 * half(name)));
  const offs = spread(of.buttocks.map(({ at }) => body.at[0] + body.times * mm(at)), widest + 0.3 * row); // prettier-ignore
  const right = profile.box.right + past;
  const under = body.at[1] + body.box.bottom - past;
  return [
    ...of.waterlines.flatMap(({ name, at }, i) => [
      line([[right, profile.at[1] + mm(at)], [right + 0.8 * row, levels[i]!]], { pen: 'thin' }), // prettier-ignore
      note(name, { at: [right + 1.5 * row + half(name), levels[i]!] }),
    ]),
    ...of.buttocks.flatMap(({ name, at }, i) => [
      line([[body.at[0] + body.times * mm(at), under], [offs[i]!, under - 0.5 * row]], { pen: 'thin' }), // prettier-ignore
      note(name, { at: [offs[i]!, under - 1.25 * row] }),
    ]),
    ...of.waterlines.flatMap((cut) => {
      const fore = farthest(cut, 0);
      return [
        label([body.at[0] + body.box.right + past, body.at[1] + body.times * mm(cut.at)], cut.name, {
          toward: 'e',
          again,
        }),
        ...(fore ? [label(onSheet(plan, mm(fore[0]), mm(fore[1])), cut.name, { toward: 'se', again })] : []),
      ];
    }),
    ...of.buttocks.flatMap((cut) => {
      const high = farthest(cut, 2);
      return [
        label([body.at[0] - body.times * mm(cut.at), under], cut.name, { toward: 's', again }),
        label([plan.at[0] + plan.box.right + past, plan.at[1] + mm(cut.at)], cut.name, {
          toward: 'e',
          again,
        }),
        ...(high
          ? [label(onSheet(profile, mm(high[0]), mm(high[2])), cut.name, { toward: 'n', again })]
          : []),
      ];
    }),
  ];
}

/** Places at least so far apart, each as near to its own as it may be; in the order given. */
function spread(places: readonly number[], apart: number): readonly number[] {
  const order = places.map((_, i) => i).toSorted((a, b) => places[a]! - places[b]!); // indices of the list
  // Neighbours too close are pooled, and stand evenly about the middle of where they would be.
  const pools: { readonly of: readonly number[]; readonly middle: number }[] = [];
  for (const i of order) {
    let pool = { of: [i], middle: places[i]! };
    for (let last = pools.at(-1); last; last = pools.at(-1)) {
      const needed = (apart * (last.of.length + pool.of.length)) / 2;
      if (pool.middle - last.middle >= needed) break;
      pools.pop();
      const all = [...last.of, ...pool.of];
      pool = { of: all, middle: all.reduce((sum, k) => sum + places[k]!, 0) / all.length };
    }
    pools.push(pool);
  }
  const made = [...places];
  for (const { of, middle } of pools)
    of.forEach((i, k) => (made[i] = middle + apart * (k - (of.length - 1) / 2)));
  return made;
}

/** The place of a cut that lies farthest along an axis. */
const farthest = ({ lines }: PlanCut, axis: 0 | 2): Spatial | null =>
  lines.flat().reduce<Spatial | null>((far, p) => (far && far[axis] >= p[axis] ? far : p), null);

/** As many names of frames as can stand beside each other, from aft forward. */
function frameRow(frames: readonly PlanStation[], row: number): readonly PlanStation[] {
  const half = ({ name }: PlanStation) => (LETTER * name.length * row) / 2;
  return frames.reduce<PlanStation[]>((kept, one) => {
    const last = kept.at(-1);
    const clear = !last || mm(one.x - last.x) > half(one) + half(last) + 0.3 * row;
    return clear ? [...kept, one] : kept;
  }, []);
}

/** The name of a section at its sheer, outside the body plan. */
function sectionName(
  { name, section }: PlanStation,
  amidships: number,
  body: ViewPlace,
  again: boolean,
): Shape[] {
  const sheer = section.points.at(-1);
  if (!sheer || sheer[1] === 0) return [];
  const side = sheer[0] >= amidships ? 1 : -1;
  const at = onSheet(body, side * mm(sheer[1]), mm(sheer[2]));
  return [label(at, name, { toward: side > 0 ? 'ne' : 'nw', again })];
}
