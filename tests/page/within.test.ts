import { expect, test } from 'vitest';
import { plainShown, type Shown } from '../../src/measure';
import { within } from '../../src/page/within';

const feet: Shown = { ...plainShown, length: 'feet' };
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('a tolerance is written in the units that are shown', () => {
  expect(plain(within('1/32 in', 'length', plainShown))).toBe('0.8 mm');
  expect(plain(within('1/8 in', 'length', plainShown))).toBe('3.2 mm');
  expect(plain(within('0.5 mm', 'length', plainShown))).toBe('0.5 mm');
  expect(plain(within('1 mm', 'length', { ...plainShown, length: 'inches' }))).toBe('0.039 in');
});

test('on a tape in fractions it is the largest half, quarter, eighth ... that is no looser', () => {
  const written = [
    '0.5 mm',
    '1 mm',
    '1.5 mm',
    '2 mm',
    '3 mm',
    '5 mm',
    '6 mm',
    '10 mm',
    '1/32 in',
    '1/8 in',
    '25 mm',
    '100 mm',
  ];
  expect(written.map((entry) => plain(within(entry, 'length', feet)))).toEqual([
    '1/64 in',
    '1/32 in',
    '1/16 in',
    '1/16 in',
    '1/8 in',
    '1/8 in',
    '1/4 in',
    '1/4 in',
    '1/32 in',
    '1/8 in',
    '1 in',
    '4 in',
  ]);
});

test('an angle keeps its figure, with the sign that the others have', () => {
  expect(within('0.5 deg', 'angle', feet)).toBe('0.5°');
  expect(within('0.05 deg', 'angle', plainShown)).toBe('0.05°');
});
