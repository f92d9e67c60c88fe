import DxfReader, {
  type IArcEntity,
  type ICircleEntity,
  type ILwpolylineEntity,
  type ITextEntity,
} from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { arc, circle, dim, drawing, hatch, label, line, mark, note, type Point } from '../../../src/drawing';
import { fullSizeFiles } from '../../../src/drawing/export/full-size';
import { inked } from '../../../src/drawing/export/full-size-ink';
import { flattenPath } from '../../../src/drawing/export/full-size-path';
import { ansi } from '../../../src/drawing/export/pdf-text';
import { MARGIN, OVERLAP, PAPERS, shows, tile } from '../../../src/drawing/export/tiles';
import { type Clip, readPdf, type ReadPage } from '../read-pdf';

/** A line of a metre, level or plumb, with nothing else as thick. */
const metre = (to: Point) =>
  drawing({
    title: 'A metre (straight)',
    says: 'One line.',
    shapes: [line([[0, 0], to], { pen: 'outline', part: 'keelson' })],
  });
const level = metre([1000, 0]);
const plumb = metre([0, 1000]);
const HEAVY = 0.35;

const PAPER_NAMES = ['A4', 'Letter'] as const;

/** Where the crosses stand on a sheet: its net, to which neighbours are joined. */
function net({ strokes }: ReadPage): Clip {
  const window = strokes.find(({ clip }) => clip)?.clip;
  if (!window) throw new Error('the sheet has no window');
  const crosses = strokes.flatMap(({ points, clip, width }) => {
    const [a, b] = points;
    if (clip || width > 0.2 || points.length !== 2 || !a || !b) return [];
    return Math.abs(Math.hypot(b[0] - a[0], b[1] - a[1]) - 6) < 1e-3
      ? [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const]
      : [];
  });
  const inside = crosses.filter(
    ([x, y]) =>
      x > window.left - 0.01 && x < window.right + 0.01 && y > window.bottom - 0.01 && y < window.top + 0.01,
  );
  expect(inside.length).toBeGreaterThanOrEqual(8);
  const xs = inside.map(([x]) => x);
  const ys = inside.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** What of the heavy line is neither trimmed off a sheet nor shown by the neighbour that lies over it. */
function lengthWithin(page: ReadPage, axis: 0 | 1): number {
  const bounds = net(page);
  const window = page.strokes.find(({ clip }) => clip)!.clip!;
  // The strip beyond the net is a neighbour's where there is one; at the outside it is the sheet's own.
  const laidOver = page.texts.some((text) =>
    new RegExp(`^${axis === 0 ? 'column' : 'row'} .*lies`).test(text),
  );
  const low = axis === 0 ? bounds.left : bounds.bottom;
  const high = axis === 0 ? (laidOver ? bounds.right : window.right) : laidOver ? bounds.top : window.top;
  return page.strokes
    .filter(({ width, clip }) => clip && Math.abs(width - HEAVY) < 1e-6)
    .reduce((sum, { points }) => {
      const along = points.map((point) => point[axis]);
      return sum + Math.max(0, Math.min(high, Math.max(...along)) - Math.max(low, Math.min(...along)));
    }, 0);
}

describe('printed sheets', () => {
  test.each(PAPER_NAMES)('a line of a metre measures a metre across sheets of %s', async (paper) => {
    for (const [made, axis] of [
      [level, 0],
      [plumb, 1],
    ] as const) {
      const { pages } = await readPdf(fullSizeFiles([made], { paper }).pdf);
      const sheets = pages.slice(1); // the first shows how they are joined
      expect(sheets.length).toBeGreaterThan(3);
      for (const sheet of sheets) {
        const { clip } = sheet.strokes.find((stroke) => stroke.clip)!;
        expect(clip!.right - net(sheet).right).toBeCloseTo(10, 2);
        expect(clip!.top - net(sheet).top).toBeCloseTo(10, 2);
      }
      const measured = sheets.reduce((sum, page) => sum + lengthWithin(page, axis), 0);
      expect(Math.abs(measured - 1000)).toBeLessThan(0.1);
    }
  });

  test.each(PAPER_NAMES)('a sheet of %s is a sheet of that paper', async (paper) => {
    const { pages, title } = await readPdf(fullSizeFiles([level], { paper }).pdf);
    expect(title).toBe('A metre (straight)');
    for (const { width, height } of pages) {
      const [short, long] = [width, height].toSorted((a, b) => a - b) as [number, number];
      expect(short).toBeCloseTo(paper === 'A4' ? 210 : 8.5 * 25.4, 2);
      expect(long).toBeCloseTo(paper === 'A4' ? 297 : 11 * 25.4, 2);
    }
  });

  test('every sheet has a bar of 100 mm, its place and its name', async () => {
    const { pages } = await readPdf(fullSizeFiles([level], { paper: 'A4' }).pdf);
    pages.forEach((page, i) => {
      const bars = page.strokes.filter(({ points, clip }) => {
        const xs = points.map(([x]) => x);
        return !clip && points.length === 5 && Math.abs(Math.max(...xs) - Math.min(...xs) - 100) < 0.01;
      });
      expect(bars).toHaveLength(1);
      expect(page.texts.join(' ')).toContain('100 mm = 3 15/16 in');
      expect(page.texts).toContain('A metre (straight)');
      const place = i === 0 ? 'Print every sheet' : `sheet ${i} of ${pages.length - 1}`;
      expect(page.texts.join(' ')).toContain(place);
    });
    expect(pages[0]!.texts.join(' ')).toMatch(/Print every sheet at 100 %/);
  });

  test('neighbours show the same 10 mm: a stroke in the overlap stands on both sheets', async () => {
    const of = inked(level);
    const { tiles, step, width } = tile(of, 'A4');
    const [a, b] = tiles.filter(({ printed }) => printed);
    expect(b!.window.left - a!.window.left).toBeCloseTo(step[0], 9);
    expect(a!.window.right - b!.window.left).toBeCloseTo(OVERLAP, 9);
    expect(a!.window.right - a!.window.left).toBeCloseTo(width - 2 * MARGIN.side, 9);
  });

  test('tiles cover all of a drawing, and every printed one shows some of it', () => {
    const shapes = [
      circle([700, 500], 300),
      line([
        [0, 0],
        [1400, 900],
      ]),
      dim([0, 0], [1400, 0], '1400 mm'),
    ];
    const of = inked(drawing({ title: 'Round', says: 'Round.', shapes }));
    for (const paper of PAPER_NAMES) {
      const { tiles, columns, rows } = tile(of, paper);
      const windows = tiles.map(({ window }) => window);
      expect(tiles).toHaveLength(columns * rows);
      expect(Math.min(...windows.map(({ left }) => left))).toBeLessThanOrEqual(0);
      expect(Math.min(...windows.map(({ bottom }) => bottom))).toBeLessThanOrEqual(0);
      expect(Math.max(...windows.map(({ right }) => right))).toBeGreaterThanOrEqual(of.width);
      expect(Math.max(...windows.map(({ top }) => top))).toBeGreaterThanOrEqual(of.height);
      const strokes = of.ink.filter((ink) => ink.ink !== 'text');
      const blank = tiles.filter(({ printed }) => !printed);
      expect(blank.filter(({ window }) => strokes.some((ink) => shows(window, ink)))).toStrictEqual([]);
    }
  });

  test('sheets that hang together over a blank one only are printed with it', () => {
    const apart = [
      line([
        [0, 0],
        [50, 0],
      ]),
      line([
        [1500, 0],
        [1550, 0],
      ]),
    ];
    const { tiles } = tile(inked(drawing({ title: 'Apart', says: 'Two.', shapes: apart })), 'A4');
    expect(tiles.length).toBeGreaterThan(4);
    expect(tiles.every(({ printed }) => printed)).toBe(true);
  });

  test('a small drawing takes one sheet and no joining sheet', async () => {
    const small = drawing({ title: 'Small', says: 'Small.', shapes: [circle([0, 0], 40)] });
    const { pages } = await readPdf(fullSizeFiles([small], { paper: 'Letter' }).pdf);
    expect(pages).toHaveLength(1);
    const [round] = pages[0]!.strokes.filter(({ clip, points }) => clip && points.length > 8);
    const xs = round!.points.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(80, 1);
  });

  test('paper is upright: the table holds width before height', () => {
    for (const [width, height] of Object.values(PAPERS)) expect(width).toBeLessThan(height);
  });
});

describe('texts of a PDF', () => {
  test('brackets, degrees and fractions are read back', async () => {
    const words = 'hole (1/2 in) \\ 30°, 5⅝″ − ½';
    const made = drawing({
      title: 'Words',
      says: 'Words.',
      shapes: [circle([0, 0], 20), label([20, 0], words)],
    });
    const { pages } = await readPdf(fullSizeFiles([made], { paper: 'A4' }).pdf);
    expect(pages[0]!.texts.join(' ')).toContain('hole (1/2 in)');
    expect(pages[0]!.texts.join(' ')).toContain('5 5/8"');
  });
  test.each([
    ['Ω', '?'],
    ['ŝ', 's'],
    ['é', 'é'],
    ['a\nb', 'a b'],
    ['’', '\u0092'],
    ['日', '?'],
    ['→', '->'],
  ])('%j is written %j', (given, wanted) => {
    expect(ansi(given)).toBe(wanted);
  });
});

/** Both read the arc `A` commands of SVG; this one by walking round the circle. */
describe('paths', () => {
  test('quarter circles turn as SVG has them', () => {
    // From the top of a circle to its right, y down: clockwise on paper.
    const [stroke] = flattenPath('M0 -100A100 100 0 0 1 100 0');
    const middle = stroke![Math.floor(stroke!.length / 2)]!;
    expect(Math.hypot(...middle)).toBeCloseTo(100, 9);
    expect(middle[0]).toBeGreaterThan(50);
    expect(middle[1]).toBeLessThan(-50);
    const [other] = flattenPath('M0 -100A100 100 0 1 0 100 0');
    expect(Math.min(...other!.map(([x]) => x))).toBeCloseTo(-100, 1);
    expect(Math.max(...other!.map(([, y]) => y))).toBeCloseTo(100, 1);
  });
  test('a closed path ends where it began', () => {
    expect(flattenPath('M0 0L10 0L10 10Z')).toStrictEqual([
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 0],
      ],
    ]);
  });
});

describe('DXF', () => {
  const made = drawing({
    title: 'Parts',
    says: 'Parts.',
    shapes: [
      line(
        [
          [0, 0],
          [1000, 0],
        ],
        { part: 'keelson', pen: 'outline' },
      ),
      circle([300, 200], 40, { part: 'frame3' }),
      arc([600, 200], 50, 0.2, 2, { part: 'frame3' }),
      hatch(
        [
          [0, 300],
          [100, 300],
          [100, 400],
        ],
        'ply',
        { layer: 'gusset/2' },
      ),
      line(
        [
          [0, 500],
          [10, 500],
        ],
        { pen: 'hidden', part: 'side' },
      ),
      mark([20, 20]),
      dim([0, 0], [1000, 0], '1000 mm'),
      note('one note'),
    ],
  });
  const parsed = new DxfReader().parseSync(fullSizeFiles([made, made], { paper: 'A4' }).dxf)!;
  const on = (layer: string) => parsed.entities.filter((entity) => entity.layer === layer);
  const spans = (entity: unknown) => {
    const xs = (entity as ILwpolylineEntity).vertices.map(({ x }) => x);
    return Math.max(...xs) - Math.min(...xs);
  };

  test('is in millimetres', () => {
    expect(parsed.header['$INSUNITS']).toBe(4);
  });
  test('has layers by part, dashed ones beside them, and names without forbidden signs', () => {
    const names = Object.keys(parsed.tables.layer.layers);
    expect(names).toStrictEqual(
      expect.arrayContaining(['keelson', 'frame3', 'gusset 2', 'side hidden', 'texts', 'dimensions']),
    );
    expect(names.filter((name) => /[<>/\\":;?*|=]/.test(name))).toStrictEqual([]);
  });
  test('holds each drawing once, side by side, at full size', () => {
    const lines = on('keelson');
    expect(lines.map(spans)).toStrictEqual([1000, 1000]);
    const lefts = lines.map((entity) =>
      Math.min(...(entity as ILwpolylineEntity).vertices.map(({ x }) => x)),
    );
    expect(lefts[1]! - lefts[0]!).toBeGreaterThan(1000);
  });
  test('keeps circles and arcs exact, and their places', () => {
    const circles = parsed.entities.filter(({ type }) => type === 'CIRCLE') as ICircleEntity[];
    const arcs = parsed.entities.filter(({ type }) => type === 'ARC') as IArcEntity[];
    expect(circles.map(({ radius }) => radius)).toStrictEqual([40, 40]);
    expect(arcs[0]!.center.x - circles[0]!.center.x).toBeCloseTo(300, 5);
    expect(arcs[0]!.startAngle).toBeCloseTo(0.2, 6);
    expect(arcs[0]!.endAngle).toBeCloseTo(2, 6);
    const start = Math.min(...(on('keelson')[0] as ILwpolylineEntity).vertices.map(({ x }) => x));
    expect(circles[0]!.center.x - start).toBeCloseTo(300, 2);
  });
  test('holds the texts', () => {
    const texts = parsed.entities.filter(({ type }) => type === 'TEXT') as ITextEntity[];
    expect(texts.map(({ text }) => text)).toStrictEqual(expect.arrayContaining(['1000 mm', 'one note']));
    expect(texts.every(({ textHeight }) => textHeight > 2)).toBe(true);
  });
  test('an empty list is a file that can be read', () => {
    expect(new DxfReader().parseSync(fullSizeFiles([], { paper: 'A4' }).dxf)!.entities).toStrictEqual([]);
  });
});

describe('SVG', () => {
  /** The points of a path's data, as another reads them: by the numbers alone, there being only M and L. */
  const points = (d: string) =>
    [...d.matchAll(/[ML](\S+) (\S+?)(?=[ML]|$)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  const heavy = (svg: string) =>
    [...svg.matchAll(/<path ([^>]*stroke-width="0.35"[^>]*)\/>/g)].flatMap(([, attrs = '']) => {
      const [, d = ''] = /d="([^"]*)"/.exec(attrs) ?? [];
      return [points(d)];
    });

  test('tiles are as large as the paper, in mm, each with a window', () => {
    const { svg } = fullSizeFiles([level], { paper: 'Letter' });
    expect(svg.length).toBeGreaterThan(4);
    for (const [i, one] of svg.entries()) {
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(one) ?? [];
      expect([Number(width), Number(height)].toSorted((a, b) => a - b)).toStrictEqual([215.9, 279.4]);
      expect(one).toContain(`viewBox="0 0 ${width} ${height}"`);
      expect(one.includes('clip-path="url(#window)"')).toBe(i > 0);
    }
  });
  test('on a tile a millimetre is a unit: the line of a metre runs on beyond the window, uncut', () => {
    const { svg } = fullSizeFiles([level], { paper: 'A4' });
    for (const tileFile of svg.slice(1)) {
      const [[from, to] = []] = heavy(tileFile);
      expect(Math.abs(to![0] - from![0] - 1000)).toBeLessThan(0.01);
    }
  });
  test('the whole holds the line once, with the name of its part', () => {
    const { whole } = fullSizeFiles([level], { paper: 'A4' });
    const [run, ...more] = heavy(whole);
    expect(more).toStrictEqual([]);
    expect(Math.abs(run![1]![0] - run![0]![0] - 1000)).toBeLessThan(0.01);
    expect(whole).toContain('data-part="keelson"');
  });
});
