/** Hardeners of epoxy by their speed. The sheet of the hardener in hand outranks every figure here. */
import type { Cited, TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

const MIN = 60;

/** Pot life of 100 g at 25 °C (77 °F), s: of each range the shorter, so that no pot is taken for longer than it is. */
export const hardeners: TradeTable<'potLife'> = {
  id: 'hardener',
  columns: { potLife: { kind: 'minutes', meaning: 'pot life of 100 g (3 1/2 oz) at 25 °C (77 °F)' } },
  rows: [
    {
      id: 'fast',
      label: 'fast',
      cells: { potLife: practice(10 * MIN, '10 to 15 min, of which the shorter') },
    },
    {
      id: 'medium',
      label: 'medium',
      cells: { potLife: practice(20 * MIN, '20 to 30 min, of which the shorter') },
    },
    {
      id: 'slow',
      label: 'slow',
      cells: { potLife: practice(40 * MIN, '40 to 60 min, of which the shorter') },
    },
  ],
};

/** The one asked about until another is chosen. */
export const usualHardener = 'medium';
