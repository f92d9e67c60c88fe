import { describe, expect, test } from 'vitest';
import { plainShown, type Shown } from '../../src/measure';
import { lumberLengths, lumberShelf, screwLengths, screwShelf } from '../../src/trade/lengths-sold';

const INCH = 0.0254;
const inches: Shown = { ...plainShown, length: 'feet', fraction: 8 };
const decimal: Shown = { ...plainShown, length: 'inches' };

describe('screws', () => {
  test('are called by the length they are sold by, in the system chosen', () => {
    expect(screwShelf.called(0.025, plainShown)?.text).toBe('25 mm');
    expect(screwShelf.called(1.25 * INCH, inches)).toMatchObject({
      text: '1 1/4 in',
      spoken: '1 and 1/4 inches',
    });
    expect(screwShelf.called(0.625 * INCH, inches)).toMatchObject({
      text: '5/8 in',
      spoken: '5/8 of an inch',
    });
    expect(screwShelf.called(2 * INCH, decimal)?.text).toBe('2 in');
  });

  test('of the other system keep their own name: no 1 3/16 in for 30 mm, no 31.8 mm for 1 1/4 in', () => {
    expect(screwShelf.called(0.03, inches)?.text).toBe('30 mm');
    expect(screwShelf.called(1.25 * INCH, plainShown)?.text).toBe('1 1/4 in');
  });

  test('a length that nobody sells has no such name', () => {
    expect(screwShelf.called(0.027, plainShown)).toBeUndefined();
    expect(screwShelf.called((13 / 16) * INCH, inches)).toBeUndefined();
    expect(screwShelf.called((19 / 16) * INCH, inches)).toBeUndefined();
  });

  test('every length sold has one, by the eighth of an inch or the millimetre', () => {
    for (const length of screwLengths.inch)
      expect(screwShelf.called(length, inches)?.text).toMatch(/^(\d |\d(?= in)|)(\d\/[248] |(?<=\d) ?)?in$/);
    for (const length of screwLengths.metric)
      expect(screwShelf.called(length, plainShown)?.text).toMatch(/^\d+ mm$/);
  });
});

describe('lumber', () => {
  test('goes by feet in inches and by tenths of a metre in millimetres', () => {
    expect(lumberShelf.called(16 * 12 * INCH, inches)?.text).toBe('16 ft');
    expect(lumberShelf.called(4.8, plainShown)?.text).toBe('4.8 m');
    expect(lumberShelf.called(3, plainShown)?.text).toBe('3.0 m');
  });

  test('no metric length passes for one in feet', () => {
    expect(lumberShelf.called(4.8, inches)?.text).toBe('4.8 m');
    expect(lumberShelf.called(8 * 12 * INCH, plainShown)?.text).toBe('8 ft');
    const near = lumberLengths.metric.filter((metric) =>
      lumberLengths.inch.some((inch) => Math.abs(inch - metric) < 0.005),
    );
    expect(near).toEqual([]);
  });
});
