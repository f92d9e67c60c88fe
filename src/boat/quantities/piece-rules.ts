/**
 * What the builder settles of the pieces of long timbers: rules that their joints are held to, and part by part the
 * boards they are laid in. What follows is in piece-plan-quantities.ts.
 */
import { longParts } from '../joinery/long-parts';
import type { Declared } from './quantity';
import { roundPreset } from './round-preset';

const PRACTICE = 'common practice, no source';
const PIECES = 'common practice';

type Words = Pick<Declared, 'name' | 'kind' | 'label' | 'meaning' | 'source'>;

const declare = (
  words: Words & Pick<Declared, 'brief' | 'withoutBoat'>,
  preset: string,
  [min, max, step]: readonly [min: string, max: string, step: string],
): Declared => ({ ...words, ...roundPreset(words.kind, preset), min, max, step });

const SLOPES = ['4', '20', '1'] as const;

export const pieceRules: readonly Declared[] = [
  declare(
    {
      name: 'pieces.slope',
      kind: 'slope',
      label: 'Slope of the scarfs',
      meaning: 'slope of the scarfs in long timbers',
      source: `1 in 8 to 12 for keel, chine and rail: ${PIECES}`,
    },
    '8',
    SLOPES,
  ),
  declare(
    {
      name: 'pieces.panelSlope',
      kind: 'slope',
      label: 'Slope of the scarfs in plywood',
      meaning: 'slope of the scarfs in plywood',
      source: 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10: typically 1 in 8',
    },
    '8',
    SLOPES,
  ),
  declare(
    {
      name: 'pieces.sparSlope',
      kind: 'slope',
      label: 'Slope of the scarfs in spars',
      meaning: 'slope of the scarfs in spars',
      source: `1 in 12 for spars: ${PIECES}`,
    },
    '12',
    SLOPES,
  ),
  declare(
    {
      name: 'pieces.trim',
      kind: 'length',
      label: 'Left to trim, both ends together',
      meaning: 'length left on each long timber for trimming',
      source: `${PIECES}: a thumb’s length at each end`,
    },
    '50 mm',
    ['0 mm', '1 m', '10 mm'],
  ),
  declare(
    {
      name: 'pieces.least',
      kind: 'length',
      label: 'Shortest piece worth a scarf',
      meaning: 'shortest piece worth a scarf',
      source: `${PIECES}: a joint in every bay is one too many`,
    },
    '600 mm',
    ['50 mm', '3 m', '50 mm'],
  ),
  declare(
    {
      name: 'pieces.more',
      kind: 'count',
      label: 'Extra pieces allowed',
      meaning: 'pieces beyond the fewest that a side may have',
      source: `on a side, where that keeps joints clear; ${PRACTICE}`,
    },
    '1',
    ['0', '3', '1'],
  ),
  declare(
    {
      name: 'pieces.hardShare',
      kind: 'share',
      label: 'Hard from, of the hardest bend',
      meaning: 'share of the hardest bend from which a stretch bends hard',
      source: `three quarters: ${PRACTICE}`,
    },
    '75 %',
    ['10 %', '100 %', '5 %'],
  ),
  declare(
    {
      name: 'pieces.frameClearance',
      kind: 'length',
      label: 'Clearance to a frame',
      meaning: 'joints clear of a frame by',
      source: `room for a clamp; ${PRACTICE}`,
    },
    '25 mm',
    ['0 mm', '500 mm', '10 mm'],
  ),
];

/** Each follows the plan of pieces until the builder settles another. */
export const pieceEntries: readonly Declared[] = longParts.flatMap(({ id, label }) => {
  const one = `${label.charAt(0).toUpperCase()}${label.slice(1)}`;
  const first = (side: 'port' | 'starboard', withoutBoat: string) =>
    declare(
      {
        name: `${id}.${side}First`,
        kind: 'length',
        label: `${one}: first board to ${side}`,
        brief: `First board to ${side}`,
        meaning: `first board to ${side}, ${label}`,
        source: 'the best pattern found; from its after end, taper and trimming included',
        withoutBoat,
      },
      `${id}.${side}Best`,
      ['10 mm', '100 m', '10 mm'],
    );
  return [
    declare(
      {
        name: `${id}.stagger`,
        kind: 'length',
        label: `${one}: joints of a pair at least apart`,
        brief: 'Joints of a pair apart, at least',
        meaning: `joints of a pair at least apart, ${label}`,
        source: `600 mm (24 in) or 24 thicknesses: ${PRACTICE}`,
        withoutBoat: '600 mm',
      },
      `${id}.usualStagger`,
      ['0 mm', '6 m', '50 mm'],
    ),
    declare(
      {
        name: `${id}.boardLength`,
        kind: 'stockLength',
        label: `${one}: length of its boards`,
        brief: 'Length of one board',
        meaning: `length of one board, ${label}`,
        source: 'the shortest sold by which the joints stand clear in the fewest pieces',
        withoutBoat: '2.4 m',
      },
      `${id}.boardBest`,
      ['300 mm', '12 m', '0.3 m'],
    ),
    first('port', '2.4 m'),
    first('starboard', '1.8 m'),
  ];
});
