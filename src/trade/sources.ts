/** What is cited in many places, each called in one way. */

/** What follows from lengths and angles alone. */
export const GEOMETRY = 'geometry';
/** What the trade does, and nobody has published. */
export const CUSTOM = 'common practice, no source';
export const SUM = 'the sum of its parts';
export const NDS = 'National Design Specification for Wood Construction (2018)';
