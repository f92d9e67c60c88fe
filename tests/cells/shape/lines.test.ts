import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, lists, offsetsOf, starters, type Table } from '../../../src/boat';
import { type Values } from '../../../src/cells';
import { fair } from '../../../src/cells/shape/fair';
import { lines } from '../../../src/cells/shape/lines';
import { afloatAt, heightsOf } from '../../../src/boat/hull/afloat';
import { portSkin } from '../../../src/boat/hull/port-skin';
import { collisions, type Drawing, extents, type LineShape, setOut } from '../../../src/drawing';
import { sectionBelow, type Vec3 } from '../../../src/kernel';
import { type KindId, plainShown, write } from '../../../src/measure';
import { box, coneSided, hullThrough, radians, veePrism, wedge } from '../../boat/shapes';
import '../../kernel/near';
import { withoutChines, withTwoChines } from '../odd-boats';
import { noted, provesItsDrawing } from '../proofs';
import { type Tried, tryCell } from '../try-cell';
import { tableThrough } from './table-through';
import { onHandAlone } from '../alone';

const boats = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['no chine', withoutChines] as const,
  ['two chines', withTwoChines] as const,
];
const hullOf = (table: Table): Hull => buildHull(offsetsOf(table));

/** The half-breadth or height of a cut at x, between its own points. */
function along(line: readonly Vec3[], x: number, axis: 1 | 2): number | null {
  for (const [i, b] of line.entries()) {
    const a = line[i - 1];
    if (!a || (a[0] - x) * (b[0] - x) > 0 || a[0] === b[0]) continue;
    return a[axis] + ((b[axis] - a[axis]) * (x - a[0])) / (b[0] - a[0]);
  }
  return null;
}

describe('a box 6 m by 2 m by 1 m floating 0.25 m deep (closed form)', () => {
  const tried = tryCell(
    lines,
    { by: 'draught', draught: '0.25 m', station: 'frame2' },
    tableThrough(box(6, 2, 1)),
  );
  test.each([
    ['length', 6],
    ['beam', 2],
    ['depth', 1],
    ['volume', 6 * 2 * 0.25],
    ['mass', 3000],
    ['waterlineLength', 6],
    ['waterlineBeam', 2],
    ['waterplane', 12],
    ['wetted', 12 + 16 * 0.25],
    ['greatest', 0.5],
    ['block', 1],
    ['prismatic', 1],
    // Bottom 6 by 1 and side 6 by 1, on each side.
    ['panelArea', 6],
    ['skinArea', 24],
    ['sinkage', 12 * 1000 * 0.01],
    ['freeboard', 0.75],
    ['flare', 0],
    ['deadrise', 0],
    ['waterBreadth', 1],
    ['sectionArea', 0.5],
    ['place', 3],
    // An upright transom is a section like any other.
    ['frame0.sectionArea', 0.5],
    ['frame4.sectionArea', 0.5],
  ])('%s', (key, want) => {
    // 1e-12: rounding in splines through points in line.
    expect(tried.number(key)).toBeNear(want, 1e-12, 1e-12);
  });
  test('sea water bears more, by its density', () => {
    const salt = tryCell(
      lines,
      { by: 'draught', draught: '0.25 m', density: '1025 kg/m3' },
      tableThrough(box(6, 2, 1)),
    );
    expect(salt.number('mass')).toBeNear(3075, 1e-12);
  });
});

describe('a vee section, deadrise atan(0.16/0.6), flare atan(0.2/0.44), under water to 0.25 m (polygon by hand)', () => {
  const vee = veePrism(4, 0.6, Math.atan2(0.16, 0.6), 0.44, Math.atan2(0.2, 0.44));
  const tried = tryCell(lines, { by: 'draught', draught: '0.25 m', station: 'frame1' }, tableThrough(vee));
  test('its half-breadth, area, volume and angles', () => {
    expect(tried.number('waterBreadth')).toBeNear(0.640909, 0, 1e-6);
    expect(tried.number('sectionArea')).toBeNear(0.207682, 0, 1e-6);
    expect(tried.number('volume')).toBeNear(4 * 0.2076818182, 0, 1e-9);
    expect(tried.number('prismatic')).toBeNear(1, 1e-12);
    expect(tried.number('deadrise')).toBeNear(radians(14.9314), 0, 1e-6);
    expect(tried.number('flare')).toBeNear(radians(24.444), 0, 1e-6);
  });
});

describe('cuts of the skin (closed form)', () => {
  test('a wedge’s waterline runs straight from the transom to the stem', () => {
    const [line = [], ...more] = portSkin(hullThrough(wedge(4, 1.2, 0.5))).cut(2, 0.2);
    expect(more).toHaveLength(0);
    for (const [x, y] of line) expect(y).toBeNear(0.6 * (1 - x / 4), 0, 1e-12);
    expect(line.map(([x]) => x).toSorted((a, b) => a - b)).toStrictEqual([
      expect.closeTo(0),
      expect.closeTo(4),
    ]);
  });
  test('a cone’s waterlines are circles whose radius grows with the height', () => {
    const of = { r1: 4, r2: 5, height: 0.8, half: 0.4, keelOffset: 3, stations: 9 };
    const hull = hullThrough(coneSided(of));
    for (const z of [0.2, 0.4, 0.6]) {
      const radius = of.r1 + ((of.r2 - of.r1) * z) / of.height;
      const [line = []] = portSkin(hull).cut(2, z);
      expect(line.length).toBeGreaterThan(10);
      for (const [x, y] of line) {
        // The edges are cubics through nine points of a circle: 0.1 mm on 4 m.
        expect(y).toBeNear(Math.sqrt(radius ** 2 - x ** 2) - of.keelOffset, 0, 1e-4);
      }
    }
  });
  test('a buttock in a vee bottom lies at its deadrise, level', () => {
    const [line = []] = portSkin(hullThrough(veePrism(4, 0.6, radians(15), 0.4, radians(20)))).cut(1, 0.3);
    for (const [, , z] of line) expect(z).toBeNear(0.3 * Math.tan(radians(15)), 1e-12);
    expect(Math.abs(line[0]![0] - line.at(-1)![0])).toBeNear(4, 1e-12);
  });
});

describe.each(boats)('%s', (_, table) => {
  const hull = hullOf(table);
  const skin = portSkin(hull);
  const { lowest } = heightsOf(hull);
  const water = lowest + hull.depth / 3;

  test('waterlines agree with half-breadths of sections through the closed body', () => {
    const [line = []] = skin.cut(2, water).toSorted((a, b) => b.length - a.length);
    const compared = hull.frames.filter(({ x }) => {
      const y = along(line, x, 1);
      if (y === null) return false;
      // Thinned to a 4000th of the length, and read between points: a 2000th.
      expect(y).toBeNear(sectionBelow(hull.body, x, water).halfBreadth, 0, hull.length / 2000);
      return true;
    });
    expect(compared.length).toBeGreaterThan(1);
  });

  test('buttocks agree with the sections that the body plan shows', () => {
    const off = hull.beam / 6;
    const compared = hull.frames.flatMap((station) => {
      const section = skin.section(station);
      const at = section.findIndex(([, y], i) => i > 0 && y >= off && section[i - 1]![1] < off);
      if (at < 0) return [];
      const [[, y0, z0], [, y1, z1]] = [section[at - 1]!, section[at]!];
      const height = z0 + ((z1 - z0) * (off - y0)) / (y1 - y0);
      const found = skin.cut(1, off).map((line) => along(line, station.x, 2));
      return found.flatMap((z) => (z === null ? [] : [Math.abs(z - height)]));
    });
    expect(compared.length).toBeGreaterThan(1);
    // 40 mm of thinned curve may rise steeply where the bottom turns up: a 1000th.
    expect(Math.max(...compared.toSorted((a, b) => a - b).slice(0, -1))).toBeLessThan(hull.length / 1000);
  });

  test('the curve of areas, summed by Simpson’s rule, holds the volume of the mesh', () => {
    const { areas, immersed } = afloatAt(hull, water);
    const step = areas[1]![0] - areas[0]![0];
    const sum = areas.reduce((total, [, area], i) => {
      const weight = i === 0 || i === areas.length - 1 ? 1 : i % 2 === 1 ? 4 : 2;
      return total + (weight * area * step) / 3;
    }, 0);
    // Simpson's rule on 64 bays loses some thousandths at the corners, over a raked transom and at a stem's foot.
    expect(sum).toBeNear(immersed.volume, 4e-3);
  });

  test('is drawn at every station without texts on each other, and says its form there', () => {
    const tried = tryCell(lines, {}, table);
    expect(tried.issues).toStrictEqual({});
    expect(noted(provesItsDrawing(tried.drawing))).toContain('DWL');
    const areas = hull.stations.map(({ name }) => tried.number(`${name}.sectionArea`));
    expect(Math.max(...areas)).toBeGreaterThan(0);
    expect(Math.max(...areas)).toBeLessThanOrEqual(tried.number('greatest') * 1.001);
  });
});

describe('the drawing', () => {
  const tried = tryCell(lines, { draught: '150 mm' });
  const drawn = linesOf(tried.drawing);
  const centre = drawn.filter(({ pen }) => pen === 'centre').find(({ points: [a, b] }) => a![1] === b![1])!;

  test('shows the design waterline straight in the profile, as high as the cell says', () => {
    const level = drawn.filter(({ pen, points }) => pen === 'design' && isLevel(points));
    expect(level.map(({ points }) => points[0]![1])).toContainEqual(
      expect.closeTo(1000 * tried.number('waterline'), 6),
    );
  });

  test('shows it curved in the half-breadth plan, as broad and as long as the cell says', () => {
    const curves = drawn.filter(
      ({ pen, points }) => pen === 'design' && points.length > 5 && !isLevel(points),
    );
    const inPlan = curves.map(({ points }) => {
      const offs = points.map(([, y]) => y - centre.points[0]![1]);
      const xs = points.map(([x]) => x);
      return [Math.max(...offs), Math.max(...xs) - Math.min(...xs)] as const;
    });
    const found = inPlan.find(([off]) => Math.abs(off - 500 * tried.number('waterlineBeam')) < 1);
    expect(found?.[1]).toBeNear(1000 * tried.number('waterlineLength'), 0, 2);
  });

  test('stands over the half-breadth plan with the same stations, the forebody to the right', () => {
    const box = extents({ title: '', says: '', shapes: drawn.filter(({ part }) => part === 'sheer') });
    expect(box.right - box.left).toBeNear(5360, 0, 1);
    const frames = drawn.filter(({ part }) => part === 'frame5' || part === 'frame1');
    const upright = drawn.find(({ pen, points: [a, b] }) => pen === 'centre' && a![0] === b![0])!
      .points[0]![0];
    const sides: Record<string, number> = Object.fromEntries(
      frames.map(({ part, points }) => [part ?? '', Math.sign(points.at(-1)![0] - upright)]),
    );
    expect(sides).toStrictEqual({ frame1: -1, frame5: 1 });
  });

  test('has as many waterlines and buttocks as are asked for', () => {
    const levels = (waterlines: string, buttocks: string) =>
      linesOf(tryCell(lines, { waterlines, buttocks }).drawing).length;
    // A waterline: straight in two views and curved in one. A buttock: straight in three places, curved in one.
    expect(levels('3', '0') - levels('0', '0')).toBeGreaterThanOrEqual(3 * 3);
    expect(levels('0', '2') - levels('0', '0')).toBeGreaterThanOrEqual(2 * 4);
  });
});

describe('warnings', () => {
  const weights = ({ warnings }: Tried) => warnings.map(({ warning }) => warning.weight);
  test('a waterline over the sheer is stopped, one over everything has a sentence', () => {
    expect(weights(tryCell(lines, { draught: '700 mm' }))).toContain('stop');
    expect(tryCell(lines, { draught: '700 mm' }).words).toContain('over the sheer');
    expect(tryCell(lines, { draught: '1.4 m' }).issues['waterlineLength']).toContain('smaller draught');
  });
  test('a deep stern is spoken of, a clear one not', () => {
    const launch = starters.find(({ id }) => id === 'vee-launch')!.table;
    expect(weights(tryCell(lines, { by: 'draught' }, launch))).toStrictEqual(['mind']);
    // Of a waterline that nobody has named nothing is warned.
    expect(weights(tryCell(lines, {}, launch))).toStrictEqual([]);
    expect(weights(tryCell(lines, { by: 'draught' }))).toStrictEqual([]);
  });
});

function linesOf(drawing: Drawing | undefined): LineShape[] {
  return (drawing?.shapes ?? []).filter((shape): shape is LineShape => shape.shape === 'line');
}

const isLevel = (points: LineShape['points']): boolean => points.every(([, y]) => y === points[0]![1]);

test('warns of a broad stern under water, and not of a sharp one', () => {
  const says = (table: Table) =>
    tryCell(lines, { by: 'draught', draught: '0.25 m' }, table)
      .warnings.map((warning) => warning.says)
      .join(' ');
  const broad = tableThrough(box(6, 2, 1));
  const sharp: Table = {
    ...broad,
    stations: broad.stations.map((station, i) =>
      i === 0 ? { ...station, points: station.points.map((point) => ({ ...point, y: 0 })) } : station,
    ),
  };
  expect(says(broad)).toContain('The after end of the bottom is 250 mm under water');
  expect(says(sharp)).not.toContain('The after end');
});

describe('the sheet for the wall', () => {
  const sheetOf = (table: Table, entries: Readonly<Record<string, string>> = {}) => {
    const values = tryCell(lines, entries, table).all as Values;
    const say = (value: number, kind: KindId) => write(value, kind, plainShown).text;
    return lines.patterns!.draw(values, onHandAlone(lines, values, hullOf(table), say))[0]!;
  };

  test.each(boats)('is %s at the scale that it states, with no text on another', (_, table) => {
    for (const [wall, by] of [
      ['10', 10],
      ['25', 25],
    ] as const) {
      const sheet = sheetOf(table, { wall });
      const heads = sheet.shapes.flatMap((shape) => (shape.shape === 'note' && shape.at ? [shape.text] : []));
      expect(heads).toContain(`${table.name}: lines plan, 1 : ${by}`);
      const sheer = extents({
        ...sheet,
        shapes: sheet.shapes.filter(
          (shape) => shape.shape === 'line' && shape.part === lists(table).edges.at(-1)!.id,
        ),
      });
      const x = hullOf(table)
        .edges.at(-1)!
        .polyline(49)
        .map(([at]) => at);
      expect(sheer.right - sheer.left).toBeNear((1000 * (Math.max(...x) - Math.min(...x))) / by, 1e-9);
      expect(tryCell(lines, { wall }, table).number('wallLength')).toBeNear(hullOf(table).length / by, 1e-12);
      const laid = setOut(sheet, { width: 0, scale: 96 / 25.4, text: 16, bar: false, caption: false });
      expect(collisions(laid)).toStrictEqual([]);
      expect(laid.key).toStrictEqual([]);
    }
  });
});

test('a bow that is a transom is called so, whatever the table calls the station', () => {
  const punt = starters.find(({ id }) => id === 'creek-punt')!.table;
  const named = (table: Table) =>
    tryCell(lines, {}, table).drawing!.shapes.flatMap((shape) =>
      shape.shape === 'note' ? [shape.text] : [],
    );
  expect(named(punt)).toContain('bow transom');
  const stations = punt.stations.map((station, i) =>
    i === punt.stations.length - 1 ? { ...station, name: 'stem' } : station,
  );
  expect(named({ ...punt, stations })).toContain('bow transom');
  expect(named(starters[0]!.table)).toContain('stem');
});

describe('draught and weight', () => {
  const answersOf = (tried: Tried) =>
    lines.answers
      .filter(({ when }) => when === undefined || tried.number('assumed') === 0)
      .map(({ of }) => of);

  test('leads with no displacement until draught or weight is known, and asks for them', () => {
    for (const { table } of starters) {
      const tried = tryCell(lines, {}, table);
      expect(tried.number('assumed')).toBe(1);
      expect(answersOf(tried)).toStrictEqual(['length']);
      expect(tried.words).toContain('Type the draught that the plan states, or what she weighs');
      expect(tried.words).not.toContain('displaces');
      for (const known of [{ by: 'weight' }, { by: 'draught' }, { draught: '101 mm' }]) {
        const asked = tryCell(lines, known, table);
        expect(answersOf(asked)).toStrictEqual(['length', 'mass', 'deep']);
        expect(asked.words).toContain('displaces');
      }
    }
  });

  test('the draught is the boat’s: fair floats her as deep', () => {
    const typed = { 'hull.draught': '163 mm' };
    expect(tryCell(lines, typed).number('deep')).toBeCloseTo(0.163, 12);
    expect(tryCell(fair, typed).number('draught')).toBeCloseTo(0.163, 12);
    expect(tryCell(fair).number('draught')).toBe(tryCell(lines).number('deep'));
  });

  test('until it is typed it follows her shape without a leap, whichever station is widest', () => {
    const wider = (y: number) =>
      tryCell(lines, { 'frame2.sheer.halfBreadth': `${y} mm` }).number('usualDraught');
    // Frame 3 is 865 mm out: beyond that frame 2, 2 mm less deep, becomes the widest.
    const depth = (y: number) => tryCell(lines, { 'frame2.sheer.halfBreadth': `${y} mm` }).number('depth');
    expect(depth(866)).not.toBeCloseTo(depth(864), 4);
    expect(wider(866)).toBeCloseTo(wider(864), 12);
    const up = (z: number) => tryCell(lines, { 'frame2.sheer.height': `${z} mm` }).number('usualDraught');
    expect(Math.abs(up(632) - up(631))).toBeLessThanOrEqual(0.00025 + 1e-12);
  });

  test('a box of 6 m by 2 m floats a twelfth of a metre deep at a tonne (closed form)', () => {
    // 1000 kg / (1000 kg/m3 x 6 m x 2 m).
    const tried = tryCell(lines, { by: 'weight', weight: '1 t' }, tableThrough(box(6, 2, 1)));
    expect(tried.number('deep')).toBeNear(1000 / 1000 / 12, 1e-5);
    expect(tried.number('mass')).toBeNear(1000, 1e-4);
    expect(
      tryCell(lines, { by: 'weight', weight: '13 t' }, tableThrough(box(6, 2, 1))).issues['deep'],
    ).toContain('so heavy');
  });

  test('a weight and the draught it gives are one: each found from the other', () => {
    for (const { table } of starters) {
      const mass = tryCell(lines, { draught: '140 mm' }, table).number('mass');
      const back = tryCell(lines, { by: 'weight', weight: `${mass} kg` }, table);
      expect(back.number('deep')).toBeNear(0.14, 0, 1e-5);
    }
  });

  test('the draught found may become the boat’s own', () => {
    const tried = tryCell(lines, { by: 'weight', weight: '300 kg' });
    const hand = onHandAlone(lines, {}, null, (value, kind) => write(value, kind, plainShown).text);
    const [offer] = lines.offers!(tried.all as unknown as Values, hand);
    expect(tryCell(lines, { 'hull.draught': offer!.changes['hull.draught']! }).number('mass')).toBeNear(
      300,
      2e-3,
    );
    expect(offer!.changes['{self}.by']).toBe('draught');
    expect(lines.offers!(tryCell(lines).all as unknown as Values, hand)).toStrictEqual([]);
  });
});
