/** Which packs of up to three sizes cover a need at least cost, all purchases compared. */
import { cheapestPacks } from '../../../trade/packs';
import type { CellFunction } from '../../form/define';

/** How many of the pack in this place the cheapest purchase holds. */
const packsOf = (place: number, size: string): CellFunction => ({
  takes: ['volume', 'volume', 'money', 'volume', 'money', 'volume', 'money'],
  gives: 'count',
  how: `${size} packs in the cheapest purchase that covers the need`,
  run: (need, small = 0, smallPrice = 0, middle = 0, middlePrice = 0, large = 0, largePrice = 0) =>
    cheapestPacks(need ?? 0, [
      { holds: small, price: smallPrice },
      { holds: middle, price: middlePrice },
      { holds: large, price: largePrice },
    ]).counts[place] ?? 0,
});

/** Each takes the need, and then size and price of the small, the middle and the large pack. */
export const packFunctions = {
  smallPacks: packsOf(0, 'small'),
  middlePacks: packsOf(1, 'middle'),
  largePacks: packsOf(2, 'large'),
} satisfies Readonly<Record<string, CellFunction>>;
