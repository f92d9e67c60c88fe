/** Ways in which yards quote boards, and how a price in one of them gets to its field from another's. */
import type { KindId } from '../../measure';
import type { Declared, Given } from './quantity';

export const priceWays = [
  { id: 'volume', label: 'by volume', kind: 'timberPrice' },
  { id: 'length', label: 'per foot or metre', kind: 'pricePerLength' },
  { id: 'each', label: 'per board', kind: 'money' },
] as const satisfies readonly { id: string; label: string; kind: KindId }[];

/** What the choice between them is called. */
export const PRICES = 'Wood is priced';

/** For a field of this kind: the other kinds, and where each is asked. */
export const pricedOtherwise = (kind: KindId): NonNullable<Given['otherwise']> =>
  priceWays
    .filter((way) => way.kind !== kind)
    .map((way) => ({ kind: way.kind, says: `choose “${way.label}” under “${PRICES}”` }));

/** For what counts where the yard quotes in one of these ways. */
export const pricedBy = (
  ...under: readonly (typeof priceWays)[number]['id'][]
): NonNullable<Declared['asked']> => ({
  by: 'shop.quoted',
  under,
});
