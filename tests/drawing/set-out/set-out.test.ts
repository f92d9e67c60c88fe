import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  collisions,
  dim,
  drawing,
  extents,
  hatch,
  label,
  line,
  LEAST_TEXT,
  note,
  overlay,
  rect,
  setOut,
  textSlab,
  type Drawing,
  type PlacedPath,
  type PlacedText,
  type Point,
  type Sheet,
} from '../../../src/drawing';
import { isFootNote } from '../../../src/drawing/shapes';
import { bend, crowded, limber, lines, scarf } from '../demonstrations';
import { anyDrawing } from '../random';

const demonstrations: readonly (readonly [name: string, drawing: Drawing])[] = [
  ['scarf', scarf()],
  ['limber', limber()],
  ['bend', bend()],
  ['lines', lines()],
  ['lines of the punt', lines('creek-punt')],
  ['crowded', crowded()],
  ['overlay', overlay(scarf(), scarf(19, 10))],
];

/** Property tests set out hundreds of drawings; on a busy machine that takes a while. */
const LONG = 60_000;

const texts = (sheet: Sheet): PlacedText[] => sheet.marks.filter((m) => m.kind === 'text');
/** What is drawn and how it is read, as it stands below. */
const under = (sheet: Sheet): string =>
  texts(sheet)
    .flatMap(({ className, lines }) => (className === 'caption-text' ? lines : []))
    .join(' ');
const paths = (sheet: Sheet): PlacedPath[] => sheet.marks.filter((m) => m.kind === 'path');
const withText = (sheet: Sheet, words: string): PlacedText | undefined =>
  texts(sheet).find((t) => t.lines.join(' ') === words);

/** All coordinates of a path, whatever its commands; of an arc only its end. */
const coordinates = (d: string): Point[] =>
  Array.from(d.matchAll(/([ML]|A\S+ \S+ \S+ \S+ \S+ )(-?[\d.]+) (-?[\d.]+)/g), (m): Point => [
    Number(m[2]),
    Number(m[3]),
  ]);

describe('texts find room', () => {
  test.each(demonstrations)('on the %s drawing at all usual widths', (_, drawn) => {
    for (let width = 320; width <= 1000; width += 20) {
      expect(collisions(setOut(drawn, { width, maxHeight: width === 320 ? 420 : 480 }))).toEqual([]);
    }
  });

  test(
    'on random drawings, from empty to crowded',
    () => {
      fc.assert(
        fc.property(
          anyDrawing,
          fc.integer({ min: 320, max: 900 }),
          fc.integer({ min: 100, max: 600 }),
          (drawn, width, maxHeight) => {
            const sheet = setOut(drawn, { width, maxHeight });
            expect(collisions(sheet)).toEqual([]);
            const broken = sheet.marks.filter((mark) =>
              mark.kind === 'path'
                ? /NaN|Infinity|undefined/.test(mark.d)
                : ![mark.x, mark.y, mark.turn].every(Number.isFinite),
            );
            expect(broken).toEqual([]);
          },
        ),
        { numRuns: 200, seed: 7 },
      );
    },
    LONG,
  );

  test('and while a slider moves, each sheet made like the last', () => {
    let last: Sheet | null = null;
    for (let slope = 6; slope < 14; slope += 0.1) {
      last = setOut(scarf(19, slope), { width: 340, ...(last ? { like: last } : {}) });
      expect(collisions(last)).toEqual([]);
    }
  });

  test(
    'at a fixed scale, where the sheet takes what it needs',
    () => {
      fc.assert(
        fc.property(anyDrawing, (drawn) => {
          const sheet = setOut(drawn, { width: 340, scale: 0.7 });
          expect(sheet.scale).toBe(0.7);
          expect(collisions(sheet)).toEqual([]);
        }),
        { numRuns: 60, seed: 8 },
      );
    },
    LONG,
  );

  test(
    'or go to the key, and none is lost',
    () => {
      fc.assert(
        fc.property(anyDrawing, fc.integer({ min: 320, max: 700 }), (drawn, width) => {
          const sheet = setOut(drawn, { width });
          const keyed = sheet.key.map((k) => k.text);
          drawn.shapes.forEach((shape, of) => {
            if (!('text' in shape) || shape.text.trim() === '') return;
            const placed = texts(sheet).find((t) => t.of === of);
            const bare = (s: string): string => s.replaceAll(/\s/g, '');
            const whole = placed !== undefined && bare(placed.lines.join('')) === bare(shape.text);
            const isUnder = isFootNote(shape) && bare(under(sheet)).includes(bare(shape.text));
            expect(whole || isUnder || keyed.includes(shape.text)).toBe(true);
          });
        }),
        { numRuns: 100, seed: 9 },
      );
    },
    LONG,
  );

  test('each number on the drawing stands once in the key, in the order of the shapes', () => {
    const sheet = setOut(crowded(), { width: 340 });
    const numbers = texts(sheet).flatMap((t) => (t.className === 'number-text' ? t.lines : []));
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers).toEqual(sheet.key.filter((k) => k.number > 0).map((k) => String(k.number)));
    expect(numbers).toEqual(numbers.map((_, i) => String(i + 1)));
    const lines = texts(sheet).filter((t) => t.className === 'key-text' && t.lines.length > 0);
    expect(lines.map((t) => t.lines.join(' '))).toEqual(
      sheet.key.map((k) => (k.number > 0 ? `${k.number}: ${k.text}` : k.text)),
    );
  });

  test('labels give way before dimensions', () => {
    const { key } = setOut(crowded(), { width: 340 });
    expect(key.length).toBeGreaterThan(0);
    for (const { text } of key) expect(text).toMatch(/^screw/);
  });

  test('the typical drawings need no key, on a phone or beside the text', () => {
    for (const [name, drawn] of demonstrations) {
      if (name === 'crowded') continue;
      for (const width of [340, 700]) expect(setOut(drawn, { width }).key).toEqual([]);
    }
  });

  test('no text is smaller than can be read on a screen, whatever is asked for', () => {
    for (const width of [340, 700]) {
      for (const t of texts(setOut(crowded(), { width, text: 9 }))) {
        expect(t.size).toBeGreaterThanOrEqual(LEAST_TEXT);
      }
    }
    expect(LEAST_TEXT).toBe(13);
  });
});

describe('geometry is true to scale', () => {
  const cross = drawing({
    title: 'Cross',
    says: 'A cross of 1000 mm.',
    shapes: [
      line(
        [
          [0, 0],
          [1000, 0],
        ],
        { part: 'across' },
      ),
      line(
        [
          [500, -500],
          [500, 500],
        ],
        { part: 'up' },
      ),
      dim([0, 0], [1000, 0], '1000 mm', { side: 'below' }),
      label([500, 500], 'top'),
    ],
  });
  const ends = (sheet: Sheet, part: string): Point[] =>
    coordinates(paths(sheet).find((p) => p.part === part)?.d ?? '');

  test.each([320, 340, 512, 700, 1000])('1000 mm both ways at %i px wide', (width) => {
    const sheet = setOut(cross, { width });
    const [a, b] = ends(sheet, 'across');
    const [c, d] = ends(sheet, 'up');
    // Coordinates are rounded to 0.01 px, so a length is good to 0.01 px.
    expect(b![0] - a![0]).toBeCloseTo(1000 * sheet.scale, 1);
    expect(a![1]).toBe(b![1]);
    expect(c![1] - d![1]).toBeCloseTo(1000 * sheet.scale, 1);
    expect(c![0]).toBe(d![0]);
  });

  test('a full-size sheet has 96 px to the inch', () => {
    const sheet = setOut(cross, { width: 300, scale: 96 / 25.4 });
    const [a, b] = ends(sheet, 'across');
    expect(b![0] - a![0]).toBeCloseTo((1000 / 25.4) * 96, 1);
    expect(sheet.width).toBeGreaterThan(b![0] - a![0]);
  });

  test('the origin maps drawing to paper, y up to y down', () => {
    const sheet = setOut(cross, { width: 500 });
    const [from, to] = ends(sheet, 'up');
    expect(from![0]).toBeCloseTo(sheet.origin[0] + 500 * sheet.scale, 1);
    expect(from![1]).toBeCloseTo(sheet.origin[1] + 500 * sheet.scale, 1);
    expect(to![1]).toBeCloseTo(sheet.origin[1] - 500 * sheet.scale, 1);
  });

  test('twice the drawing, half the scale', () => {
    const twice: Drawing = {
      ...cross,
      shapes: [
        line(
          [
            [0, 0],
            [2000, 0],
          ],
          { part: 'across' },
        ),
        line(
          [
            [1000, -1000],
            [1000, 1000],
          ],
          { part: 'up' },
        ),
        dim([0, 0], [2000, 0], '1000 mm', { side: 'below' }),
        label([1000, 1000], 'top'),
      ],
    };
    const [once, double] = [setOut(cross, { width: 600 }), setOut(twice, { width: 600 })];
    expect(double.scale).toBeCloseTo(once.scale / 2, 12);
  });

  test(
    'all geometry lies on the sheet',
    () => {
      fc.assert(
        fc.property(anyDrawing, fc.integer({ min: 320, max: 900 }), (drawn, width) => {
          const sheet = setOut(drawn, { width });
          expect(sheet.width).toBe(width);
          for (const path of paths(sheet)) {
            for (const [x, y] of coordinates(path.d)) {
              if (path.className === 'pen-dimension' || path.className === 'arrowhead') continue;
              expect(x).toBeGreaterThanOrEqual(-4.1);
              expect(x).toBeLessThanOrEqual(width + 4.1);
              expect(y).toBeGreaterThanOrEqual(-4.1);
              expect(y).toBeLessThanOrEqual(sheet.height + 4.1);
            }
          }
        }),
        { numRuns: 100, seed: 10 },
      );
    },
    LONG,
  );

  test('extents to keep in sight hold the scale while the part changes', () => {
    const part = (length: number): Drawing => ({
      ...drawing({ title: 't', says: 's', shapes: [rect(0, 0, length, 50)] }),
      keepIn: { left: 0, right: 800, bottom: 0, top: 100 },
    });
    const scales = [100, 300, 799].map((length) => setOut(part(length), { width: 600 }).scale);
    expect(new Set(scales).size).toBe(1);
    expect(setOut(part(1600), { width: 600 }).scale).toBeLessThan(scales[0]!);
  });

  test('a drawing of nothing, of one point and of one flat line are sheets too', () => {
    for (const shapes of [
      [],
      [label([5, 5], 'here')],
      [
        line([
          [0, 3],
          [10, 3],
        ]),
      ],
    ]) {
      const sheet = setOut(drawing({ title: 't', says: 's', shapes }), { width: 340 });
      expect(Number.isFinite(sheet.scale) && sheet.scale > 0).toBe(true);
      expect(Number.isFinite(sheet.height) && sheet.height > 0).toBe(true);
      expect(collisions(sheet)).toEqual([]);
    }
  });
});

describe('dimensions are drafted', () => {
  const box = (d: ReturnType<typeof dim>): Drawing =>
    drawing({ title: 't', says: 's', shapes: [rect(0, 0, 400, 200), d] });

  /** The text's centre in drawing mm. */
  const centre = (sheet: Sheet, words: string): Point => {
    const slab = textSlab(withText(sheet, words)!)!;
    return [(slab.x - sheet.origin[0]) / sheet.scale, (sheet.origin[1] - slab.y) / sheet.scale];
  };

  test.each([
    ['above', [0, 200], [400, 200], 0],
    ['below', [0, 0], [400, 0], 0],
    ['left', [0, 0], [0, 200], -90],
    ['right', [400, 0], [400, 200], -90],
  ] as const)(
    'on the %s side, its text along its line and on its outer or upper side',
    (side, from, to, turn) => {
      const sheet = setOut(box(dim(from, to, '88 mm', { side })), { width: 700 });
      const placed = withText(sheet, '88 mm')!;
      expect(placed.turn).toBe(turn);
      const [x, y] = centre(sheet, '88 mm');
      const along = side === 'above' || side === 'below' ? x - 200 : y - 100;
      const out = { above: y - 200, below: -y, left: -x, right: x - 400 }[side];
      expect(along).toBeCloseTo(0, 0);
      expect(out).toBeGreaterThan(0);
      expect(out).toBeLessThan(45 / sheet.scale);
    },
  );

  test('the dimension line is as long as what it measures, with a head at each end', () => {
    const sheet = setOut(box(dim([0, 0], [400, 0], '400 mm', { side: 'below' })), { width: 700 });
    const own = paths(sheet).filter((p) => p.of === 1);
    const [from, to] = coordinates(own[0]!.d);
    expect(to![0] - from![0]).toBeCloseTo(400 * sheet.scale, 1);
    const tips = own
      .find((p) => p.className === 'arrowhead')!
      .d.split('Z')
      .filter(Boolean)
      .map((head) => coordinates(head)[0]!);
    expect(tips).toEqual([from, to]);
  });

  test('horizontal and vertical runs measure only their own part of a slant', () => {
    for (const [run, axis] of [
      ['horizontal', 0],
      ['vertical', 1],
    ] as const) {
      const sheet = setOut(
        box(dim([0, 0], [400, 200], 'x mm', { run, side: run === 'horizontal' ? 'below' : 'right' })),
        { width: 700 },
      );
      const [from, to] = coordinates(paths(sheet).find((p) => p.of === 1)!.d);
      expect(Math.abs(to![axis] - from![axis])).toBeCloseTo((axis === 0 ? 400 : 200) * sheet.scale, 1);
      expect(from![1 - axis]).toBeCloseTo(to![1 - axis]!, 6);
    }
  });

  test('a short one has its arrows turned round and its text beside it', () => {
    const sheet = setOut(box(dim([100, 0], [104, 0], '4 mm', { side: 'below' })), { width: 700 });
    const heads = paths(sheet).find((p) => p.of === 1 && p.className === 'arrowhead')!;
    const [tip, barb] = coordinates(heads.d.split('Z')[0]!);
    // The first head's barbs lie outside, to the left of its tip.
    expect(barb![0]).toBeLessThan(tip![0]);
  });

  test('the short one stands inside the long one', () => {
    const sheet = setOut(
      drawing({
        title: 't',
        says: 's',
        shapes: [
          rect(0, 0, 400, 200),
          dim([0, 0], [400, 0], '400 mm', { side: 'below' }),
          dim([100, 0], [300, 0], '200 mm', { side: 'below' }),
        ],
      }),
      { width: 700 },
    );
    expect(centre(sheet, '200 mm')[1]).toBeGreaterThan(centre(sheet, '400 mm')[1]);
  });

  test('a level asked for is kept where nothing is in the way', () => {
    const y = (level: number): number =>
      centre(
        setOut(box(dim([0, 0], [400, 0], '400 mm', { side: 'below', level })), { width: 700 }),
        '400 mm',
      )[1];
    expect(y(1)).toBeLessThan(y(0));
    expect(y(2)).toBeLessThan(y(1));
  });
});

describe('the sheet', () => {
  test('has the same primitives in the same order while a slider moves', () => {
    const kinds = (sheet: Sheet): string[] =>
      sheet.marks.map((m) => `${m.kind} ${m.of} ${m.kind === 'path' ? m.className : ''}`);
    // On a scarf shorter than its board is wide part of the width is drawn, without its dimension.
    const first = kinds(setOut(scarf(19, 8), { width: 340 }));
    for (const slope of [8.5, 10, 12, 16])
      expect(kinds(setOut(scarf(19, slope), { width: 340 }))).toEqual(first);
  });

  test('keeps texts where they are while little changes', () => {
    const before = setOut(limber(), { width: 340 });
    const after = setOut(limber(), { width: 340, like: before });
    expect(after.marks).toEqual(before.marks);
  });

  test('takes no guide from a sheet of another width or of other shapes', () => {
    const narrow = setOut(limber(), { width: 340 });
    expect(setOut(limber(), { width: 700, like: narrow })).toEqual(setOut(limber(), { width: 700 }));
    expect(setOut(scarf(), { width: 340, like: narrow })).toEqual(setOut(scarf(), { width: 340 }));
  });

  test('says what it shows, has a scale bar of the stated length, and carries notes', () => {
    const sheet = setOut(crowded(), { width: 700 });
    // What is drawn, and its notes; its numbers stand in it, and in words where it is not seen.
    expect(under(sheet)).toBe(
      `${crowded().title}. All screws of silicon bronze, holes bored before the frame is set up.`,
    );
    expect(sheet.says).toBe(
      `All screws of silicon bronze, holes bored before the frame is set up. ${crowded().says}`,
    );
    const bar = coordinates(paths(sheet).find((p) => p.className === 'pen-thin')!.d).map(([x]) => x);
    const words = texts(sheet)
      .find((t) => t.className === 'bar-text')!
      .lines.join();
    expect(words).toMatch(/^\d+ mm$/);
    expect(Math.max(...bar) - Math.min(...bar)).toBeCloseTo(parseInt(words, 10) * sheet.scale, 1);
  });

  test('can do without bar and caption', () => {
    const sheet = setOut(scarf(), { width: 340, bar: false, caption: false });
    const classes = sheet.marks.map((m) => m.className);
    for (const gone of ['bar-text', 'bar-solid', 'caption-text']) expect(classes).not.toContain(gone);
  });

  test('hands the hull part on to each primitive of a shape', () => {
    const sheet = setOut(limber(), { width: 340 });
    expect(new Set(sheet.marks.map((m) => m.part))).toEqual(new Set(['frame3', 'keelson', undefined]));
  });

  test('fills a height asked for', () => {
    const sheet = setOut(scarf(), { width: 700, height: 400, bar: false, caption: false });
    expect(sheet.height).toBeGreaterThanOrEqual(400);
    const ys = paths(sheet).flatMap((p) => coordinates(p.d).map(([, y]) => y));
    // The drawing stands in the middle of it.
    expect((Math.min(...ys) + Math.max(...ys)) / 2).toBeGreaterThan(150);
  });

  test('leaves hatching out under its texts', () => {
    const sheet = setOut(
      drawing({
        title: 't',
        says: 's',
        shapes: [
          hatch([
            [0, 0],
            [400, 0],
            [400, 300],
            [0, 300],
          ]),
          note('frame 3', { at: [200, 150] }),
        ],
      }),
      { width: 500 },
    );
    const slab = textSlab(withText(sheet, 'frame 3')!)!;
    const hatching = coordinates(paths(sheet).find((p) => p.className === 'hatch-cedar')!.d);
    expect(hatching.length).toBeGreaterThan(100);
    for (const [x, y] of hatching) {
      expect(Math.abs(x - slab.x) > slab.halfWidth || Math.abs(y - slab.y) > slab.halfHeight).toBe(true);
    }
  });

  test('is no wider than its extents ask at a fixed scale', () => {
    const drawn = scarf();
    const { left, right } = extents(drawn);
    const sheet = setOut(drawn, { width: 1, scale: 2 });
    expect(sheet.width).toBeGreaterThan(2 * (right - left));
    expect(sheet.width).toBeLessThan(2 * (right - left) + 150);
  });
});

describe('a name that stands elsewhere too', () => {
  // Closely ruled, and too high to be named over or under its edge from the middle.
  const field = Array.from({ length: 26 }, (_, i) => rect(4 * i, 0, 0, 60));
  const named = label([100, 30], 'a name', { toward: 'e', again: true });

  test('asks for no margin and stands in no key: it is left out where there is no room close by', () => {
    const without = setOut(drawing({ title: 't', says: 's', shapes: field }), { width: 300 });
    const withIt = setOut(drawing({ title: 't', says: 's', shapes: [...field, named] }), { width: 300 });
    expect(withIt.scale).toBe(without.scale);
    expect(withIt.key).toStrictEqual([]);
    expect(wordsOn(withIt)).not.toContain('a name');
  });

  test('stands there where there is room', () => {
    const roomy = [...field, note('far out to the right', { at: [180, 5] }), named];
    expect(wordsOn(setOut(drawing({ title: 't', says: 's', shapes: roomy }), { width: 500 }))).toContain(
      'a name',
    );
  });
});

const wordsOn = ({ marks }: Sheet) => marks.flatMap((mark) => (mark.kind === 'text' ? mark.lines : []));
