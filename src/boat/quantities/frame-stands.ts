/** On which side of its line the wood of a station stands, and the boat's own word on it. */
import type { Given } from './quantity';

/** Answers to how the frames stand. */
export const stands = [
  { id: 'custom', label: 'as is the custom' },
  { id: 'forward', label: 'forward of their lines' },
  { id: 'aft', label: 'aft of their lines' },
] as const;

/** `frame.stands`: settled once, for the patterns, the jig and the joints of the long timbers. */
export const frameStands: readonly Given[] = [
  {
    name: 'frame.stands',
    kind: 'choice',
    meaning: 'side of its line on which every frame stands',
    source: 'custom: where the bevel only takes wood off',
    preset: 'custom',
    options: stands,
  },
];
