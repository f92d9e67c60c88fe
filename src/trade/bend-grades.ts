/** How a shop grades a bend: by the radius over the thickness of what is bent. */

import { hardwoods } from './fastening-woods';

const PRACTICE = 'common practice, no source';

/**
 * From so many thicknesses of radius on a bend is easy; below, it is tight: clamps stand closer, and a joint keeps
 * away from where the edge bends hardest. Under it come ordinary stock (from 150), picked stock (from 100), and then layers or
 * steam.
 */
export const easyBend = { value: 200, source: `over 200 easy: ${PRACTICE}` } as const;

const southernPines: readonly string[] = ['loblollyPine', 'shortleafPine', 'longleafPine', 'slashPine'];

const LAYERS =
  'from memory: National Design Specification 5.3.8, glued laminated timber: t/R at most 1/100 in hardwood and southern pine, 1/125 in other softwood';

/** Least radius of a layer over its thickness, in glued laminated timber of this wood. */
export const layerRatio = (timber: string) => ({
  value: hardwoods.includes(timber) || southernPines.includes(timber) ? 100 : 125,
  source: LAYERS,
});
