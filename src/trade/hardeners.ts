/** Hardeners of epoxy by their speed. The sheet of the hardener in hand outranks every figure here. */
import type { Cited, TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

const MIN = 60;
const HOUR = 3600;
const DAY = 24 * HOUR;

/** Pot life of 100 g at 25 °C (77 °F), s: of each range the shorter, so that no pot is taken for longer than it is. */
export const hardeners: TradeTable<'potLife' | 'tackFree' | 'sandable' | 'cured'> = {
  id: 'hardener',
  columns: {
    potLife: { kind: 'minutes', meaning: 'pot life of 100 g (3 1/2 oz) at 25 °C (77 °F)' },
    tackFree: { kind: 'time', meaning: 'time until tack-free at 25 °C (77 °F)' },
    sandable: { kind: 'time', meaning: 'time until it can be sanded at 25 °C (77 °F)' },
    cured: { kind: 'time', meaning: 'time until cured through at 25 °C (77 °F)' },
  },
  rows: [
    {
      id: 'fast',
      label: 'fast',
      cells: {
        potLife: practice(10 * MIN, '10 to 15 min, of which the shorter'),
        tackFree: practice(4 * HOUR, 'the middle of 3 to 5 h'),
        sandable: practice(18 * HOUR, 'the middle of 12 to 24 h'),
        cured: practice(5.5 * DAY, 'the middle of 4 to 7 days'),
      },
    },
    {
      id: 'medium',
      label: 'medium',
      cells: {
        potLife: practice(20 * MIN, '20 to 30 min, of which the shorter'),
        tackFree: practice(7 * HOUR, 'the middle of 5 to 9 h'),
        sandable: practice(24 * HOUR, 'a day'),
        cured: practice(6 * DAY, 'the middle of 5 to 7 days'),
      },
    },
    {
      id: 'slow',
      label: 'slow',
      cells: {
        potLife: practice(40 * MIN, '40 to 60 min, of which the shorter'),
        tackFree: practice(11.5 * HOUR, 'the middle of 9 to 14 h'),
        sandable: practice(36 * HOUR, 'a day and a half'),
        cured: practice(8 * DAY, 'the middle of 7 to 9 days'),
      },
    },
  ],
};

/** The one asked about until another is chosen. */
export const usualHardener = 'medium';
