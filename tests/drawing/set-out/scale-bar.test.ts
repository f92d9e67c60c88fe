import { expect, test } from 'vitest';
import { scaleBar } from '../../../src/drawing/set-out/scale-bar';

test('is the longest round length that fits', () => {
  expect(scaleBar(1, 120, 'metric')).toMatchObject({ length: 100, text: '100 mm', width: 100 });
  expect(scaleBar(0.1, 120, 'metric')).toMatchObject({ length: 1000, text: '1 m', width: 100 });
  expect(scaleBar(400, 120, 'metric')).toMatchObject({ length: 0.2, text: '0.2 mm' });
  expect(scaleBar(0.05, 120, 'metric')).toMatchObject({ length: 2000, text: '2 m' });
  expect(scaleBar(1, 320, 'inch')?.text).toBe('1 ft');
  expect(scaleBar(1, 320, 'inch')?.length).toBeCloseTo(304.8, 9);
  expect(scaleBar(1, 300, 'inch')?.text).toBe('6 in');
  expect(scaleBar(1, 300, 'inch')?.length).toBeCloseTo(152.4, 9);
  expect(scaleBar(20, 120, 'inch')?.text).toBe('1/8 in');
  expect(scaleBar(20, 120, 'inch')?.length).toBeCloseTo(3.175, 9);
});

test('is divided into parts of a round length', () => {
  for (const units of ['metric', 'inch'] as const) {
    for (let scale = 0.005; scale < 40; scale *= 1.3) {
      const bar = scaleBar(scale, 120, units);
      const part = (bar?.length ?? 0) / (bar?.parts ?? 1) / (units === 'inch' ? 25.4 : 1);
      // Whole powers of ten times 1, 2, 2.5 or 5; inches in halves down to 32nds.
      const round = units === 'metric' ? (part / 10 ** Math.floor(Math.log10(part) + 1e-9)) * 4 : part * 32;
      expect(Math.abs(round - Math.round(round))).toBeLessThan(1e-6);
    }
  }
});

test('is left out where no length is short enough', () => {
  expect(scaleBar(20_000, 120, 'metric')).toBeNull();
  expect(scaleBar(Number.MAX_VALUE, 120, 'inch')).toBeNull();
});
