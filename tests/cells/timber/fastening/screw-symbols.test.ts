/**
 * The symbols of the screw map as they stand on paper, at the widths of a phone and beside the fields: none lies on another
 * or on a number, and every screw of the table is found. Distances are measured on the sheet, apart from how they were made.
 */
import { expect, test } from 'vitest';
import { lists, starters, type Table } from '../../../../src/boat';
import { screwMap } from '../../../../src/cells/timber/fastening/screw-map';
import { type Drawing, type Shape, type Sheet, textSlab } from '../../../../src/drawing';
import { type Slab, type Stroke, within } from '../../../../src/drawing/set-out/slab';
import { fitted } from '../../../../src/page/picture/fitted';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { tryCell } from '../../try-cell';

const widths = [330, 430];

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['no chine', withoutChines],
];

/** Everything that may be screwed on. */
function joints(table: Table): readonly Readonly<Record<string, string>>[] {
  const { chines, panels } = lists(table);
  return [
    ...chines.map(({ id }) => ({ fastened: 'plate', chine: id })),
    ...panels.map(({ id }) => ({ fastened: 'skin', member: id })),
    { fastened: 'keelson' },
  ];
}

/** What crowds a joint. */
const crowded: readonly Readonly<Record<string, string>>[] = [
  { gussetLeg: '300 mm', rows: '3' },
  { faces: 'one', rows: '2', rowGap: '15 mm', pitch: '25 mm' },
  { moulded: '60 mm', screwClear: '20 mm' },
  { fastened: 'skin', pitch: '50 mm' },
];

type At = readonly [number, number];

const around = (ring: readonly At[]): Stroke[] =>
  ring.map((from, i) => [...from, ...ring[(i + 1) % ring.length]!]);

const round = ([x, y]: At, radius: number): Stroke[] =>
  around(
    Array.from({ length: 24 }, (_, i): At => [
      x + radius * Math.cos((i * Math.PI) / 12),
      y + radius * Math.sin((i * Math.PI) / 12),
    ]),
  );

/** Each symbol as strokes on paper: strokes that meet or lie in one another when the drawing is made belong together. */
function symbolsOn(drawing: Drawing, { scale, origin }: Sheet): Stroke[][] {
  const on = ([x, y]: At): At => [origin[0] + scale * x, origin[1] - scale * y];
  const shown = drawing.shapes.filter(
    (shape) => shape.layer === 'screws' && shape.shape !== 'label' && !('pen' in shape && isTie(shape.pen)),
  );
  const symbols: { last: Shape['shape']; at: At; strokes: Stroke[] }[] = [];
  for (const shape of shown) {
    const before = symbols.at(-1);
    if (shape.shape === 'circle') {
      symbols.push({ last: 'circle', at: on(shape.at), strokes: round(on(shape.at), shape.radius * scale) });
    } else if (shape.shape === 'area') {
      before!.strokes.push(...around(shape.rings[0]!.map(on))); // a dot follows its screw
    } else if (shape.shape === 'line') {
      const [a, b] = shape.points.map((point) => on(point)) as [At, At];
      // Two lines after one another are a cross, or a shank and its head.
      if (before?.last === 'line' && before.strokes.length === 1) before.strokes.push([...a, ...b]);
      else symbols.push({ last: 'line', at: a, strokes: [[...a, ...b]] });
    }
  }
  return symbols.map(({ strokes }) => strokes);
}

const isTie = (pen: string) => pen === 'thin' || pen === 'dimension';

const offStroke = ([x1, y1, x2, y2]: Stroke, x: number, y: number): number => {
  const squared = (x2 - x1) ** 2 + (y2 - y1) ** 2 || 1;
  const share = Math.min(1, Math.max(0, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / squared));
  return Math.hypot(x - x1 - share * (x2 - x1), y - y1 - share * (y2 - y1));
};

const cross = (a: Stroke, b: Stroke): boolean => {
  const turn = ([x1, y1, x2, y2]: Stroke, x: number, y: number) =>
    (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
  return turn(a, b[0], b[1]) * turn(a, b[2], b[3]) < 0 && turn(b, a[0], a[1]) * turn(b, a[2], a[3]) < 0;
};

const apart = (a: Stroke, b: Stroke): number =>
  cross(a, b)
    ? 0
    : Math.min(
        offStroke(a, b[0], b[1]),
        offStroke(a, b[2], b[3]),
        offStroke(b, a[0], a[1]),
        offStroke(b, a[2], a[3]),
      );

/** px */
const gap = (a: readonly Stroke[], b: readonly Stroke[]) =>
  Math.min(...a.flatMap((one) => b.map((other) => apart(one, other))));

function faults(drawing: Drawing, width: number): string[] {
  const { sheet } = fitted(Math.max(350, 0.9 * width), drawing, { width, units: 'metric' });
  const symbols = symbolsOn(drawing, sheet);
  const texts = sheet.marks.flatMap((mark): { said: string; slab: Slab }[] => {
    const slab = mark.kind === 'text' ? textSlab(mark) : null;
    return slab && mark.kind === 'text' ? [{ said: mark.lines.join(' '), slab }] : [];
  });
  return [
    ...symbols.flatMap((a, i) =>
      symbols.slice(i + 1).flatMap((b) => (gap(a, b) > 0.4 ? [] : [`symbol ${i + 1} meets another`])),
    ),
    ...symbols.flatMap((strokes, i) =>
      texts.flatMap(({ said, slab }) =>
        strokes.some((stroke) => within(slab, stroke, -0.5)) ? [`"${said}" on symbol ${i + 1}`] : [],
      ),
    ),
  ];
}

/** Numbers at the screws, and those that the rows under the drawing name. */
function found({ shapes }: Drawing): Set<number> {
  const numbers = shapes.flatMap((shape): number[] => {
    if (shape.shape === 'label') return [Number(shape.text)];
    const rows = shape.shape === 'note' && /Numbers along each row: ([^.]*)\./.exec(shape.text)?.[1];
    if (!rows) return [];
    return rows.split(/[,;] /).flatMap((run) => {
      const [from, to] = run.split(' to ').map(Number);
      return Array.from({ length: (to ?? from!) - from! + 1 }, (_, i) => from! + i);
    });
  });
  return new Set(numbers);
}

function prove(asked: readonly Readonly<Record<string, string>>[], table: Table): string[] {
  return asked.flatMap((entries) => {
    const tried = tryCell(screwMap, entries, table);
    const { drawing } = tried;
    if (!drawing) return [`${JSON.stringify(entries)}: not drawn`];
    const all = Array.from({ length: tried.number('placed') }, (_, i) => i + 1);
    const said = found(drawing);
    return [
      ...all.filter((number) => !said.has(number)).map((number) => `screw ${number} is not found`),
      ...[...said].filter((number) => number > all.length).map((number) => `no screw ${number} is there`),
      ...widths.flatMap((width) => faults(drawing, width).map((fault) => `${width} px: ${fault}`)),
    ].map((fault) => `${JSON.stringify(entries)}: ${fault}`);
  });
}

test.each(boats)(
  '%s: no symbol on another or under a text, and each screw of the table is found',
  (_, table) => expect(prove(joints(table), table)).toStrictEqual([]),
);

test('the same where joints are crowded', () => expect(prove(crowded, withTwoChines)).toStrictEqual([]));

test('one ring for each screw that stands, none where one was', () => {
  const tried = tryCell(screwMap, { moulded: '60 mm', screwClear: '20 mm' });
  const { drawing } = tried;
  const rings = drawing!.shapes.filter(({ shape, layer }) => shape === 'circle' && layer === 'screws');
  expect(rings).toHaveLength(tried.number('placed'));
  expect(tried.number('dropped')).toBeGreaterThan(0);
});
