/** Battens worth a look beside the one in hand: as thick as the bend and the ducks allow, stiff enough, turned over. */
import type { Offer, OnHand } from '../form/define';
import type { BattenValues } from './batten-steps';

/** Battens are planed to the half millimetre. */
const STEP = 0.0005;

export function battenOffers(
  { thickness, width, thickest, thickestHeld, thinnest }: BattenValues,
  { say }: Pick<OnHand, 'say'>,
): readonly Offer[] {
  const thick = (metres: number, label: string): Offer => ({
    label: `${label}: ${say(metres, 'length')}`,
    changes: { '{self}.thickness': inMm(metres) },
  });
  const most = Math.floor(Math.min(thickest, thickestHeld) / STEP) * STEP;
  const least = Math.ceil(thinnest / STEP) * STEP;
  const held = thickest > thickestHeld;
  return [
    ...(most >= LEAST && Math.abs(most - thickness) > STEP / 2
      ? [thick(most, held ? 'As thick as the ducks hold' : 'As thick as the bend allows')]
      : []),
    ...(thickness < thinnest && least <= MOST ? [thick(least, 'Stiff enough not to follow the hand')] : []),
    ...(Math.abs(width - thickness) > STEP / 2 && width <= MOST && thickness >= 2 * LEAST
      ? [
          {
            label: `Turned over: bent across its ${say(width, 'length')}`,
            changes: { '{self}.thickness': inMm(width), '{self}.width': inMm(thickness) },
          },
        ]
      : []),
  ];
}

/** What the two fields take, m. */
const LEAST = 0.001;
const MOST = 0.1;

const inMm = (metres: number) => `${+(metres * 1000).toFixed(4)} mm`;
