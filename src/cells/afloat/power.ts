/** Power: how fast a motor drives her, what it burns, the rough pitch of its propeller, and the shaft that fits her transom. */
import { isIssue } from '../../measure';
import { HORSEPOWER } from '../../measure/si';
import { type Chart, defineCell, type OnHand } from '../form/define';
import { firstOf } from '../form/in-words';
import { powerInputs } from './power-inputs';
import { powerSteps, type PowerValues } from './power-steps';
import { CUSTOM } from '../../trade/sources';

export const power = defineCell({
  id: 'power',
  stage: 'afloat',
  title: 'Speed, fuel and propeller',
  question: 'How fast will this motor drive her, what does it burn, and does its shaft fit?',
  inputs: powerInputs,
  groups: {
    'Shaft and propeller': ['shaftHeight', 'revs', 'gear', 'slipLeast', 'slipMost'],
    'What it burns': ['burnLeast', 'burnMost'],
  },
  steps: powerSteps,
  answers: [
    { of: 'slowest', label: 'speed, at the least', from: 'full throttle, flat water, all aboard' },
    { of: 'fastest', label: 'at the most', from: 'clean bottom, light and well trimmed' },
    { of: 'fuelMost', label: 'fuel in an hour', from: 'at the most, full throttle' },
  ],
  inWords: [
    firstOf(
      [
        {
          when: 'motorPower <= 0 hp',
          says: 'Without a motor nothing drives her here.',
        },
        {
          when: 'planes == 1',
          says: 'She planes: {slowest} to {fastest}.',
        },
        {
          when: 'pushing <= hullSpeed',
          says: 'She pushes water, at {slowest} or so.',
        },
      ],
      'She is past her hull speed of {hullSpeed} and does not plane yet: no rule holds well between. About {toPlane} lifts her on the plane.',
    ),
    {
      when: 'motorPower <= 0 hp or (planes == 0 and pushing <= hullSpeed)',
      says: '{enough} brings her to {hullSpeed}, her hull speed.',
    },
    {
      when: 'motorPower > 0 hp',
      says: 'Two thirds of the tank last {hours} at full throttle, {miles} nautical miles. A propeller of {pitchLeast} to {pitchMost} pitch is where to begin.',
    },
    'Her transom fits the class of {shaft}.',
  ],
  warnings: [
    {
      when: 'plate > 1 in',
      says: 'The motor’s plate hangs {plateOff} above the bottom: the propeller draws air. A longer shaft, or cut the transom down.',
      limit: `level with the bottom to 1 in (25 mm) above it; ${CUSTOM}; the motor’s sheet holds`,
      weight: 'mind',
    },
    {
      when: 'plate < -1 in',
      says: 'The motor’s plate hangs {plateOff} below the bottom: it drags and throws spray. A shorter shaft, or a higher transom.',
      limit: `level with the bottom; more than 1 in (25 mm) below it drags: ${CUSTOM}; the motor’s sheet holds`,
      weight: 'mind',
    },
    {
      when: 'slipMost < slipLeast',
      says: 'The most slip, {slipMost}, is less than the least, {slipLeast}: exchange them.',
      limit: 'the meaning of the two words',
      weight: 'mind',
    },
  ],
  cautions: [
    'How strong a motor she may carry is for the capacity rule and the law of the place, not for this cell. Wear the stop cord, and look behind before you start it.',
    'Rules of thumb, a fifth off either way: hull, trim, weed and sea all tell. The motor maker’s sheet and his propeller table outrank them; for a boat that matters ask a naval architect.',
    'The right propeller lets the motor just reach its rated turns with all aboard. Try two before you buy one.',
    'A 20 hp motor of short shaft wants about 15 in (381 mm) of transom, plumb. Measure the motor in hand before you saw.',
  ],
  sources: [
    {
      text: 'Speed pushing water, and planing after Crouch with 150 and 190: Dave Gerr, Propeller Handbook (1989)',
      known: 'from memory',
    },
    {
      text: 'Where planing begins: D. Radojčić et al., Polish Maritime Research 2(82) (2014)',
      known: 'published',
    },
    {
      text: 'Hull speed of 1.34 times the root of the length in feet, fuel by the horsepower, slip, a third of the tank kept, height classes: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['transom'],
  chart: speedChart,
});

const PLACES = 25;

/** Speed against power, at the least and at the most. */
function speedChart(v: PowerValues, on: OnHand<PowerValues>): Chart {
  const most = Math.max(2 * v.motorPower, 10 * HORSEPOWER);
  const swept = Array.from({ length: PLACES }, (_, at) => (most * at) / (PLACES - 1)).flatMap(
    (motorPower) => {
      const there = on.with({ motorPower });
      return isIssue(there) ? [] : [there];
    },
  );
  const line = (of: 'slowest' | 'fastest') => swept.map((there) => [there.motorPower, there[of]] as const);
  return {
    title: 'Speed against power',
    says: `How fast she is with more power or less; she planes from about ${on.say(v.toPlane, 'power')}.`,
    x: { label: 'Power', kind: 'power' },
    y: { label: 'Speed', kind: 'speed' },
    lines: [
      { name: 'at the least', points: line('slowest'), as: 'line' },
      { name: 'at the most', points: line('fastest'), as: 'line' },
    ],
    points: [{ x: v.motorPower, y: v.slowest, label: 'this motor' }],
  };
}
