/** Whether plywood takes a bend and a twist, by two published tables and a strain. */
import { edgeStrain, radiusAtAngle } from '../../kernel';
import { type Grain, leastBendRadius, type LeastRadius, pickedBendRadius } from '../../trade/plywood-bend';
import type { PanelBend } from '../hull/panel-bends';

/** Least radii of a sheet with its face grain along the curve and across it, m. */
export interface Radii {
  readonly along: number;
  readonly across: number;
}

/** One layer of the skin, and how its face grain lies to the panel's straight edge. */
export interface PlyLayer {
  readonly thickness: number;
  readonly grain: Grain;
  /** By the table of common panels, and by that of picked ones: see plywood-bend.ts. */
  readonly common: Radii;
  readonly picked: Radii;
  /** Share of a table's bend that is made use of, up to 1. */
  readonly allowed: number;
}

/** What a place takes of what a table allows: the bend's part, the twist's, and both. 1 is all. */
export interface Taken {
  readonly bend: number;
  readonly twist: number;
  readonly both: number;
}

/**
 * Bends: a common panel takes it. Marginal: one table lets it bend and the other doesn't, or knows nothing of it: a
 * picked sheet may take it. Refuses: no table lets it. Untabled: none speaks of this thickness.
 */
export type Verdict = 'bends' | 'marginal' | 'refuses' | 'untabled';

export interface Judged {
  /** By the table of common panels; of a thickness outside it at most, or at least, as its radius is. */
  readonly common: Taken;
  /** By the table of picked ones. */
  readonly picked: Taken;
  readonly verdict: Verdict;
}

/**
 * Judges one place of a panel.
 *
 * The bend is held against the least radius at the angle between its axis and the face grain. The twist is held, as a
 * strain of the edges, against the strain that the same table allows in a bend along the grain; the two strains add up,
 * for both stretch the same face. No limit of twist was found published: this yardstick is derived.
 */
export function judge(place: Pick<PanelBend, 'bend' | 'axis' | 'twist'>, sheet: PlyLayer): Judged {
  const common = by(place, sheet, sheet.common, leastBendRadius(sheet.thickness, 'along').panel);
  // Soaked panels are listed in the thicknesses of the dry ones.
  const picked = by(place, sheet, sheet.picked, pickedBendRadius(sheet.thickness, 'along', 'dry').panel);
  return { common: common.taken, picked: picked.taken, verdict: verdictOf(common.says, picked.says) };
}

type Says = 'yes' | 'no' | 'nothing';

function by(
  { bend: curvature, axis, twist: turn }: Parameters<typeof judge>[0],
  { thickness, grain, allowed }: PlyLayer,
  { along, across }: Radii,
  panel: LeastRadius['panel'],
): { readonly taken: Taken; readonly says: Says } {
  const toGrain = grain === 'along' ? axis : Math.PI / 2 - axis;
  const bend = curvature * radiusAtAngle(along, across, toGrain);
  const twist = edgeStrain(turn) / (thickness / (2 * along));
  const both = bend + twist;
  // Thinner than the table, its radius is enough and no more is known; thicker, it is too little.
  const within = both <= allowed;
  const silent = within ? 'thicker' : 'thinner';
  const says = panel === silent ? 'nothing' : within ? 'yes' : 'no';
  return { taken: { bend, twist, both }, says };
}

function verdictOf(common: Says, picked: Says): Verdict {
  if (common === 'nothing' && picked === 'nothing') return 'untabled';
  if (common === 'yes') return picked === 'no' ? 'marginal' : 'bends';
  return picked === 'yes' ? 'marginal' : 'refuses';
}

const ORDER: readonly Verdict[] = ['bends', 'marginal', 'untabled', 'refuses'];

/** The worst that is said of any place. */
export const worstOf = (of: readonly Pick<Judged, 'verdict'>[]): Verdict =>
  ORDER[Math.max(...of.map(({ verdict }) => ORDER.indexOf(verdict)))]!; // one of the four
