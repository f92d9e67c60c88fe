/** Cure through days and nights: the doubling rule added up, against sums by hand and a closed form. */
import { cure } from '../../src/cells/finish/cure';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const HOUR = 3600;
/** Hours from a coat's laying until it is tack-free, or can be sanded. */
const of = (key: 'tackTime' | 'sandTimeOff', entries: Record<string, string>) =>
  tryCell(cure, { stops: '-10 °C', factor: '2', ...entries }).number(key) / HOUR;
const halfDays = { told: 'steady', dayFrom: '7 h', dayTo: '19 h' };
const RULE = 'epoxy makers’ sheets: doubled for each 10 °C colder, halved for each 10 °C warmer';

const row = (more: Omit<Check, 'cell' | 'unit'>): Check => ({ cell: 'cure', unit: 'h', ...more });

export const rows: readonly Check[] = [
  row({
    id: 'C28c',
    what: 'time to sand in another warmth',
    input: '20 h at 25 °C, in steady 15 °C',
    expected: [40],
    tolerance: 0.01,
    source: RULE,
    known: 'published',
    obtain: () => [of('sandTimeOff', { air: '15 °C', cold: '15 °C', sandable: '20 h' })],
  }),
  row({
    id: 'C29c',
    what: 'time to tack-free in another warmth',
    input: '10 h at 25 °C, in steady 32 °C',
    expected: [6.156],
    tolerance: 0.005,
    source: RULE,
    known: 'published',
    obtain: () => [of('tackTime', { air: '32 °C', cold: '32 °C', tackFree: '10 h' })],
  }),
  row({
    id: 'C33',
    what: 'a day of 12 h at 15 °C and 12 h at 25 °C counts as 18 h at 25 °C',
    input: '18 h at 25 °C, begun at any hour',
    expected: [24, 24, 24],
    tolerance: 0.001,
    source: 'the doubling rule, hours added up by hand: 12 / 2 + 12',
    known: 'closed form',
    obtain: () =>
      ['8 h', '11.3 h', '17 h'].map((startHour) =>
        of('sandTimeOff', { ...halfDays, air: '25 °C', cold: '15 °C', sandable: '18 h', startHour }),
      ),
  }),
  row({
    id: 'C33a',
    what: 'days to full cure as a maker gives them',
    input: '5 days at 25 °C (77 °F), in 15 °C (59 °F)',
    expected: [240],
    tolerance: 0.05,
    source: 'a maker’s 5 days at 77 °F and 10 days at 59 °F, at second hand',
    known: 'published',
    obtain: () => [of('sandTimeOff', { air: '59 °F', cold: '59 °F', sandable: '5 d' })],
  }),
  row({
    id: 'C33b',
    what: 'a day that swings between 9 °C and 25 °C counts as 24 h × 2^(−0.8) × I₀(0.8 ln 2)',
    input: '14.8646 h at 25 °C',
    expected: [24],
    tolerance: 0.005,
    source: 'M. Abramowitz and I. Stegun, table 9.8: modified Bessel function, I₀(0.5545) = 1.0784',
    known: 'closed form',
    obtain: () => [
      of('sandTimeOff', {
        told: 'swinging',
        air: '25 °C',
        cold: '9 °C',
        sandable: `${24 * 2 ** -0.8 * (1 + 0.5545177 ** 2 / 4 + 0.5545177 ** 4 / 64 + 0.5545177 ** 6 / 2304)} h`,
      }),
    ],
  }),
];
