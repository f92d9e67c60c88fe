/** The curve that a board is bent to: an edge of the boat, a radius, or a chord and its rise. */
import { choice, input, step } from '../../form/define';
import { bentStock } from './bent-stock';

const CHORD = 'curve == "chord"';

/** Asked first, so that what is looked at below is known. */
export const curveInputs = {
  curve: choice('The curve', {
    options: [
      { id: 'edge', label: 'edge of the boat', ofBoat: true },
      { id: 'own', label: 'your own radius' },
      { id: 'chord', label: 'chord and its rise' },
    ],
    preset: 'edge',
    note: 'of an edge the tightest place counts; a radius typed below holds in any case',
  }),
  along: { ...bentStock.along, when: 'curve == "edge"' },
  radius: {
    ...bentStock.radius,
    fromBy: { choice: 'curve', links: { own: '', chord: '{self}.chordRadius' } },
  },
  chord: input('length', 'Chord', {
    preset: '2 m',
    presetInch: '6 ft',
    min: '20 mm',
    max: '50 m',
    step: '50 mm',
    note: 'straight across the curve, from end to end',
    when: CHORD,
  }),
  chordRise: input('length', 'Rise of the chord', {
    preset: '250 mm',
    presetInch: '10 in',
    min: '1 mm',
    max: '20 m',
    step: '5 mm',
    note: 'from the middle of the chord square out to the curve; to the middle of the thickness',
    when: CHORD,
  }),
};

export const curveSteps = {
  chordRadius: step(
    'length',
    'chord^2 / (8 * chordRise) + chordRise / 2',
    'radius of the circle through both ends of the chord and the top of its rise',
    'geometry: half the chord squared is the rise times the rest of the diameter',
  ),
  chordArc: step(
    'length',
    '4 * chordRadius * atan(2 * chordRise / chord) / rad',
    'length of that circle from end to end of the chord',
    'geometry',
  ),
};
