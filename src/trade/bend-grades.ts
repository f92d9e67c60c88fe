/** How a shop grades a bend: by the radius over the thickness of what is bent. */

const PRACTICE = 'common practice, no source';

/**
 * From so many thicknesses of radius on a bend is easy; below, it is tight: clamps stand closer, and a joint keeps
 * away from where the edge bends hardest. Under it come ordinary stock (from 150), picked stock (from 100), and then layers or
 * steam.
 */
export const easyBend = { value: 200, source: `over 200 easy: ${PRACTICE}` } as const;
