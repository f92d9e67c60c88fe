import { expect, test, vi } from 'vitest';
import { longLines } from '../../../src/cells/shape/long-line';
import { fairRun, missWhenLifted, oddOneOut } from '../../../src/kernel';
import { inRoot } from '../../tools/root.mjs';
import { besideEnd, detection, fairnessPage, falseAlarms, namedAt, tried } from './detection';
import { chance, randomHull } from './random-hulls';

// Hundreds of hulls a test, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

test.each([
  [12, 0.01, 0.95],
  [9, 0.02, 0.9],
  [7, 0.05, 0.9],
])('%i stations, %d m out at a frame: named first in %d of the hulls or more', (stations, error, least) => {
  expect(detection(stations, error, false).first).toBeGreaterThanOrEqual(least);
});

test.each([
  [12, 0.01],
  [9, 0.02],
  [7, 0.05],
])('%i stations, %d m out beside an end: named, or named as nearly as likely', (stations, error) => {
  const { told, misled } = besideEnd(stations, error);
  expect(told).toBeGreaterThanOrEqual(0.95);
  expect(misled).toBeLessThan(0.04);
});

test.each(tried.map(({ stations }) => stations))('%i stations: few false alarms', (stations) => {
  expect(falseAlarms(stations)).toBeLessThan(0.05);
});

test('what is said to show does: twice as much is named, a third of it is not', () => {
  expect(namedAt(7, 2)).toBeGreaterThan(0.9);
  expect(namedAt(12, 2)).toBeGreaterThan(0.9);
  expect(namedAt(7, 0.33)).toBeLessThan(0.05);
  expect(namedAt(12, 0.33)).toBeLessThan(0.05);
});

test('lifting one duck at a time finds far fewer of them', () => {
  const next = chance(3);
  let [byRun, byLifting] = [0, 0];
  for (let k = 0; k < 100; k++) {
    const hull = randomHull(next, 7);
    const line = longLines(hull).find(({ edge, view }) => edge.name === 'sheer' && view === 'plan')!;
    const index = 1 + Math.floor(next() * 5);
    const values = line.values.map((value, i) => (i === index ? value - 0.05 : value));
    const misses = line.x.map((_, i) => Math.abs(missWhenLifted(line.x, values, i)));
    if (misses.indexOf(Math.max(...misses.slice(1, -1))) === index) byLifting++;
    if (oddest(line.x, values) === index) byRun++;
  }
  expect(byRun).toBeGreaterThan(90);
  expect(byLifting).toBeLessThan(60);
});

function oddest(x: readonly number[], values: readonly number[]): number {
  return oddOneOut(fairRun(x, values, 0.0004)).index;
}

test('docs/fairness.md tells what this finds today', async () => {
  await expect(fairnessPage()).toMatchFileSnapshot(inRoot('docs/fairness.md'));
});
