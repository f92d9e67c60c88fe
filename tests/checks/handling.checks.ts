/** Handling: shares of two supports and the lever, by statics. */
import { lift } from '../../src/cells/handling/lift';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

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
];
