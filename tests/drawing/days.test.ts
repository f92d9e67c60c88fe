import { describe, expect, test } from 'vitest';
import { barsOverDays, collisions, type DayBar, drawing, overlay, setOut } from '../../src/drawing';
import { textSlab } from '../../src/drawing/set-out/collisions';
import type { Shape } from '../../src/drawing/shapes';

const span = { from: 0, to: 7 * 24, dawn: 7, dusk: 19 };
const days = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const bar = (name: string, from: number, to: number): DayBar => ({
  name,
  stretches: [{ from, to, fill: 'resin' }],
});
const laid = (bars: readonly DayBar[], over = span) => barsOverDays(bars, over, (day) => days[day % 7]!);
/** Left and right end of every area drawn with this pen, in hours. */
const stretches = (shapes: readonly Shape[], pen: 'thin' | 'none', hour: number) =>
  shapes.flatMap((shape) => {
    if (shape.shape !== 'area' || shape.pen !== pen) return [];
    const xs = shape.rings[0]!.map(([x]) => x / hour);
    return [[Math.round(Math.min(...xs) * 1e6) / 1e6, Math.round(Math.max(...xs) * 1e6) / 1e6]];
  });
const texts = (shapes: readonly Shape[]) => shapes.flatMap((shape) => ('text' in shape ? [shape.text] : []));

describe('bars over days', () => {
  // An hour by a bar of ten.
  const ten = laid([bar('ten', 10, 20)]).flatMap((shape) =>
    shape.shape === 'area' && shape.pen === 'thin' ? [shape.rings[0]!.map(([x]) => x)] : [],
  )[0]!;
  const hour = (Math.max(...ten) - Math.min(...ten)) / 10;

  test('a bar lies over its hours, cut where the days end', () => {
    expect(stretches(laid([bar('a', 10, 20), bar('b', 160, 200)]), 'thin', hour)).toStrictEqual([
      [10, 20],
      [160, 168],
    ]);
    expect(stretches(laid([bar('never', 200, 300)]), 'thin', hour)).toStrictEqual([]);
  });

  test('nights are shaded from dusk to dawn, those at the ends in part', () => {
    const nights = stretches(laid([bar('a', 10, 20)]), 'none', hour);
    expect(nights[0]).toStrictEqual([0, 7]);
    expect(nights[1]).toStrictEqual([19, 31]);
    expect(nights.at(-1)).toStrictEqual([163, 168]);
    expect(nights).toHaveLength(8);
    const short = laid([bar('a', 10, 20)], { ...span, dusk: 1, dawn: 4 });
    expect(stretches(short, 'none', hour)[0]).toStrictEqual([1, 4]);
  });

  test('an hour is as long in a plan of three weeks, so that two versions lie on one another', () => {
    expect(stretches(laid([bar('a', 10, 20)], { ...span, to: 21 * 24 }), 'thin', hour)).toStrictEqual([
      [10, 20],
    ]);
  });

  test('names every day of a week, and some of many; every job, and of many the first of a kind', () => {
    expect(texts(laid([bar('a', 10, 20)])).slice(0, 7)).toStrictEqual(days);
    const many = Array.from({ length: 20 }, (_, i) => bar(`coat ${i + 1}`, 24 * i, 24 * i + 10));
    const long = texts(laid(many, { ...span, to: 21 * 24 }));
    expect(long.filter((text) => text.startsWith('coat'))).toStrictEqual(['coat 1']);
    expect(long.filter((text) => days.includes(text)).length).toBeLessThan(15);
  });

  test('a name stays in the row of its bar, on the narrowest sheet too', () => {
    // Every other bar ends where the next begins, so that there is no room beside some.
    const bars = Array.from({ length: 12 }, (_, i) =>
      bar(i % 2 ? `sanding ${i}` : `cloth, coat ${i}`, 11 * i, 11 * i + 30),
    );
    const names = new Set(bars.map(({ name }) => name));
    const one = drawing({ title: 'Coats', says: 'Coats.', shapes: [laid(bars)], toScale: false });
    for (const width of [300, 340, 420, 700]) {
      const { marks, origin, scale } = setOut(one, { width });
      const off = marks.flatMap((mark) => {
        const shape = mark.of === null ? undefined : one.shapes[mark.of];
        if (mark.kind !== 'text' || shape?.shape !== 'note' || !shape.at) return [];
        return names.has(shape.text) ? [textSlab(mark)!.y - (origin[1] - scale * shape.at[1])] : [];
      });
      expect(off).toHaveLength(bars.length);
      expect(Math.max(...off.map(Math.abs))).toBeLessThan(2);
    }
  });

  test('no text lies on another, and no scale bar stands below, in two versions either', () => {
    const bars = Array.from({ length: 9 }, (_, i) => bar(`fill coat ${i + 1}`, 16 * i, 16 * i + 14));
    const one = drawing({ title: 'Coats', says: 'Coats.', shapes: [laid(bars)], toScale: false });
    const other = drawing({ title: 'Coats', says: 'Coats.', shapes: [laid(bars.slice(1))], toScale: false });
    for (const width of [300, 420, 700])
      for (const both of [one, overlay(one, other)]) {
        const sheet = setOut(both, { width });
        expect(collisions(sheet)).toStrictEqual([]);
        expect(sheet.marks.filter(({ className }) => className === 'bar-text')).toStrictEqual([]);
      }
  });
});
