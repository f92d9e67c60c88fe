import { describe, expect, test } from 'vitest';
import { collisions, type LineShape, type NoteShape, setOut } from '../../src/drawing';
import { fullLinesPlan, reduced } from '../../src/drawing/lines-plan';
import type { FullLines, PlanEdge, PlanStation } from '../../src/drawing/lines-plan-places';

/** A box 4 m long, 1 m broad and 0.5 m deep that stands `up` above its base line. */
function boxPlan(up = 0, stations = 5, name: (i: number) => string = (i) => `${i}`): FullLines {
  const edge = (label: string, y: number, z: number): PlanEdge => ({
    name: label,
    label,
    points: [
      [0, y, z + up],
      [4, y, z + up],
    ],
  });
  const station = (i: number): PlanStation => {
    const x = (4 * i) / (stations - 1);
    return {
      name: name(i),
      x,
      section: {
        name: `frame${i}`,
        points: [
          [x, 0, up],
          [x, 0.5, up],
          [x, 0.5, 0.5 + up],
        ],
      },
    };
  };
  return {
    title: 'A box',
    says: 'A box.',
    heading: 'A box: lines plan',
    edges: [edge('keel', 0, 0), edge('chine', 0.5, 0), edge('sheer', 0.5, 0.5)],
    stations: Array.from({ length: stations }, (_, i) => station(i)),
    waterlines: [{ name: 'DWL', at: 0.2 + up, lines: [edge('', 0.5, 0.2).points], design: true }],
    buttocks: [{ name: 'B 1', at: 0.25, lines: [edge('', 0.25, 0).points] }],
    amidships: 2,
    notes: [],
  };
}

const linesOf = (plan: FullLines) =>
  fullLinesPlan(plan).shapes.filter((shape): shape is LineShape => shape.shape === 'line');
const notesOf = (plan: FullLines) =>
  fullLinesPlan(plan).shapes.filter((shape): shape is NoteShape => shape.shape === 'note');
const noteAt = (plan: FullLines, text: string) => notesOf(plan).find((one) => one.text === text)?.at;

describe('a box', () => {
  test('is drawn to scale, the body plan twice as large, forebody to the right', () => {
    const sections = linesOf(boxPlan()).filter(
      ({ part, points }) => part?.startsWith('frame') && points.length === 3,
    );
    const sides = sections.map(({ part, points }) => [part, Math.round(points[1]![0] - points[0]![0])]);
    // 0.5 m twice as large; frame 2 stands amidships and counts as forward.
    expect(sides).toStrictEqual([
      ['frame0', -1000],
      ['frame1', -1000],
      ['frame2', 1000],
      ['frame3', 1000],
      ['frame4', 1000],
    ]);
    const sheers = linesOf(boxPlan()).filter(({ part }) => part === 'sheer');
    expect(sheers[0]!.points).toStrictEqual([
      [0, 500],
      [4000, 500],
    ]);
  });

  test('has its names clear of each other and of its lines, on a phone and at a desk', () => {
    for (const stations of [3, 5, 12, 40]) {
      const plan = boxPlan(0.1, stations, (i) =>
        i === 0 ? 'stern transom' : i === stations - 1 ? 'bow transom' : `${i}`,
      );
      for (const width of [340, 700]) {
        expect(collisions(setOut(fullLinesPlan(plan), { width }))).toStrictEqual([]);
      }
    }
  });

  test('names its ends above and its frames below; one that would lie on its neighbour’s is left out', () => {
    const named = boxPlan(0, 21, (i) => (i === 0 ? 'transom' : `${i}`));
    const [transom, last, first] = ['transom', '20', '1'].map((name) => noteAt(named, name)!);
    expect(transom![1]).toBeGreaterThan(500);
    expect(last![1]).toBe(transom![1]);
    expect(first![1]).toBeLessThan(transom![1]);
    expect(noteAt(named, '2')).toBeUndefined();
    expect(noteAt(named, '3')).toBeDefined();
  });

  test('shows the base line where it is near, and leaves it out where it is far', () => {
    const levels = (plan: FullLines) =>
      linesOf(plan).filter(({ pen, points: [a, b] }) => pen === 'thin' && a![1] === 0 && b![1] === 0);
    expect(levels(boxPlan(0.1))).toHaveLength(1);
    expect(levels(boxPlan(-0.1))).toHaveLength(1);
    expect(levels(boxPlan(30))).toHaveLength(0);
  });

  test('names every waterline, buttock, chine and sheer, however small the sheet', () => {
    const plan = fullLinesPlan(boxPlan());
    for (const width of [320, 700]) {
      const { marks, key } = setOut(plan, { width });
      const written = marks.flatMap((mark) => (mark.kind === 'text' ? mark.lines : []));
      expect(written).toStrictEqual(expect.arrayContaining(['chine', 'sheer', 'DWL', 'B 1', '1', '2', '3']));
      expect(key).toStrictEqual([]);
    }
  });

  test('its grid is lighter than the hull, and waterlines and buttocks have pens of their own', () => {
    const pens = new Set(
      linesOf(boxPlan()).map(({ pen, part }) => `${part === undefined ? 'grid' : 'hull'} ${pen}`),
    );
    expect([...pens].toSorted()).toStrictEqual([
      'grid buttock',
      'grid centre',
      'grid design',

      'grid grid',
      'grid thin',
      'hull visible',
    ]);
  });

  test('fans the names of waterlines that lie close together, in their order', () => {
    const plan = boxPlan();
    const close = [0.2, 0.21, 0.22, 0.35].map((at, i) => ({ name: `WL ${i}`, at, lines: [] }));
    const places = close.map(({ name }) => noteAt({ ...plan, waterlines: close }, name)![1]);
    expect(places.toSorted((a, b) => a - b)).toStrictEqual(places);
    const apart = places.slice(1).map((y, i) => y - places[i]!);
    // A row of text is 0.077 of the hull's length, 4 m; between two of them there is air.
    expect(Math.min(...apart)).toBeCloseTo(1.15 * 0.077 * 4000, 6);
    // As far above as below where they would be.
    expect(places.reduce((sum, y) => sum + y, 0)).toBeCloseTo(1000 * (0.2 + 0.21 + 0.22 + 0.35), 6);
  });

  test('on a phone too every fanned name stands where it is put, clear of its neighbours and of its own leader', () => {
    const waterlines = [0.1, 0.2, 0.22, 0.3, 0.4].map((at, i) => ({ name: `WL ${i}`, at, lines: [] }));
    const plan = fullLinesPlan({ ...boxPlan(0.1), waterlines });
    const moved: string[] = [];
    for (const width of [290, 310, 340]) {
      const { marks, origin, scale } = setOut(plan, { width });
      for (const [of, shape] of plan.shapes.entries()) {
        if (shape.shape !== 'note' || !shape.at || !/^(WL|B) /u.test(shape.text)) continue;
        const text = marks.find((one) => one.kind === 'text' && one.of === of);
        if (text?.kind !== 'text') throw new Error(`${shape.text} is not on the sheet`);
        const aside = text.x - (origin[0] + scale * shape.at[0]);
        const below = text.y - (origin[1] - scale * shape.at[1]);
        // A note is centred on its place: its foot lies within half its height below.
        if (Math.abs(aside) > 1 || Math.abs(below) > text.size / 2)
          moved.push(`${shape.text} at ${width}: ${aside}, ${below}`);
      }
    }
    expect(moved).toStrictEqual([]);
  });

  test('reduced ten times, is a tenth as large in every view', () => {
    const whole = linesOf(boxPlan(0.1)).filter(({ part }) => part !== undefined);
    const small = linesOf({ ...reduced(boxPlan(0.1), 10), row: 30.8 }).filter(
      ({ part }) => part !== undefined,
    );
    expect(small).toHaveLength(whole.length);
    for (const [i, { points }] of small.entries()) {
      for (const [k, [x, y]] of points.entries()) {
        expect(x).toBeCloseTo(whole[i]!.points[k]![0] / 10, 9);
        expect(y).toBeCloseTo(whole[i]!.points[k]![1] / 10, 9);
      }
    }
  });
});
