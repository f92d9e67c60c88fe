/** What a wood's kind means to a screw, by the ids of the timber table. */

/** Of broad-leaved trees; all others of the table bear needles. Botany, no table. */
export const hardwoods: readonly string[] = [
  'whiteAsh',
  'whiteOak',
  'redOak',
  'darkRedMeranti',
  'lightRedMeranti',
  'yellowMeranti',
  'spanishCedar',
  'teak',
  'africanMahogany',
  'trueMahogany',
  'iroko',
  'okoume',
];

/**
 * Woods that split more easily than most.
 *
 * Douglas-fir and spruce: EN 1995-1-1 (2004), 8.3.1.2(7), from memory; oak and larch: common practice, no source.
 */
export const splitting: readonly string[] = [
  'douglasFirCoast',
  'douglasFirInterior',
  'sitkaSpruce',
  'whiteSpruce',
  'westernLarch',
  'whiteOak',
  'redOak',
];

/** A comparison for a formula: true where the choice called `species` is one of these. */
export const speciesIsOneOf = (ids: readonly string[]): string =>
  `(${ids.map((id) => `species == "${id}"`).join(' or ')})`;
