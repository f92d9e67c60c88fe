/** On which side of its line the wood of a station stands, and the boat's own word on it. */
import type { Declared } from './quantity';

/** Answers to how the frames stand. */
export const stands = [
  { id: 'custom', label: 'as is the custom' },
  { id: 'forward', label: 'forward of their lines' },
  { id: 'aft', label: 'aft of their lines' },
] as const;

/** `frame.stands`: settled once, for the patterns, the jig and the joints of the long timbers. */
export const frameStands: readonly Declared[] = [
  {
    name: 'frame.stands',
    kind: 'choice',
    label: 'Frames stand',
    meaning: 'side of its line on which every frame stands',
    source:
      'by custom forward of the line before the widest frame, aft of it behind, where the bevel only takes wood off',
    preset: 'custom',
    options: stands,
  },
];
