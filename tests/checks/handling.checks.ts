/** Handling: shares of two supports and the lever, by statics. */
import { lift } from '../../src/cells/handling/lift';
import { trailer } from '../../src/cells/handling/trailer';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const trailed = (key: string, entries: Record<string, string>) => tryCell(trailer, entries).number(key);
const of = (key: string, entries: Record<string, string>) => tryCell(lift, entries).number(key);

export const rows: readonly Check[] = [
  {
    id: 'HL1',
    cell: 'lift',
    what: 'what two supports bear',
    input: '120 kg, supports at 0.8 and 3.8 m, centre of mass at 2.1 m',
    expected: [68, 52],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about either support',
    known: 'closed form',
    obtain: () => {
      // This end is the after one, so that the other lies 3.0 m forward of it.
      const slings = { mass: '120 kg', span: '3 m', centre: '1.7 m' };
      return [of('load', slings), of('stays', slings)];
    },
  },
  {
    id: 'HL2',
    cell: 'lift',
    what: 'push on a lever',
    input: '180 kg on an arm of 0.25 m, hands on one of 1.75 m',
    expected: [25.71],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about the block',
    known: 'closed form',
    obtain: () => [of('push', { mass: '180 kg', span: '2 m', centre: '2 m', lever: '2 m', short: '0.25 m' })],
  },
  {
    id: 'HL3',
    cell: 'trailer',
    what: 'weight on the ball',
    input: '1000 kg in all, 4.5 m from ball to axle, its centre 4.15 m from the ball',
    expected: [77.78],
    unit: 'kg',
    tolerance: 0.01,
    source: 'statics: moments about the axle',
    known: 'closed form',
    // All of it is boat but a kilogram of trailer that stands on its axle.
    obtain: () => [
      trailed('tongue', {
        boat: '1000 kg',
        balance: '2 m',
        behind: '1.65 m',
        ball: '4.5 m',
        empty: '1 kg',
        emptyTongue: '0 kg',
      }),
    ],
  },
  {
    id: 'HL4',
    cell: 'trailer',
    what: 'straps by length: bow against a stop, and free',
    input: '16 ft, 900 lb',
    expected: [2, 3],
    unit: '',
    tolerance: 0,
    source: '49 CFR 393.110',
    known: 'published',
    obtain: () =>
      ['stopped', 'free'].map((bow) => trailed('byLength', { long: '16 ft', boat: '900 lb', bow })),
  },
  {
    id: 'HL5',
    cell: 'trailer',
    what: 'hold forward, to a side and down',
    input: '900 lb',
    expected: [391.5, 225, 180],
    unit: 'lb',
    tolerance: 0.1,
    source: '49 CFR 393.102, at the working load limit',
    known: 'published',
    obtain: () =>
      ['holdForward', 'holdSide', 'holdDown'].map((key) => trailed(key, { boat: '900 lb' }) / 0.45359237),
  },
];
