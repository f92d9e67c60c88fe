/** How a shop grades a bend: by the radius over the thickness of what is bent. */

import { hardwoods } from './fastening-woods';

const PRACTICE = 'common practice, no source';

/**
 * From so many thicknesses of radius on a bend is easy; below, it is tight: clamps stand closer, and a joint keeps
 * away from where the edge bends hardest. Under it come ordinary stock (from 150), picked stock (from 100), and then layers or
 * steam.
 */
export const easyBend = { value: 200, source: `over 200 easy: ${PRACTICE}` } as const;

/** Shares of the mean modulus of rupture that a bend may take, by how good the wood is. */
export const bendShares = { clear: 0.5, picked: 0.67, knotty: 0.33 } as const;

const perCent = (share: number) => `${Math.round(100 * share)} %`;

/** The same as entries and in words. Common practice, no source. */
export const bendShareTexts = {
  clear: perCent(bendShares.clear),
  picked: perCent(bendShares.picked),
  source: `common practice: ${perCent(bendShares.clear)} for clear, straight wood, up to ${perCent(bendShares.picked)} for picked wood bent slowly, ${perCent(bendShares.knotty)} with small knots`,
} as const;

const southernPines: readonly string[] = ['loblollyPine', 'shortleafPine', 'longleafPine', 'slashPine'];

const LAYERS =
  'from memory: National Design Specification 5.3.8, glued laminated timber: t/R at most 1/100 in hardwood and southern pine, 1/125 in other softwood';

/** Least radius of a layer over its thickness, in glued laminated timber of this wood. */
export const layerRatio = (timber: string) => ({
  value: hardwoods.includes(timber) || southernPines.includes(timber) ? 100 : 125,
  source: LAYERS,
});
