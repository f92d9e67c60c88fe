import { describe, expect, test } from 'vitest';
import { angleDim, dim, label, line, note, rect, type Shape, type TextShape } from '../../../src/drawing';
import { angleBerths } from '../../../src/drawing/set-out/angle-berths';
import { berth, settings, slabAt, type Paper } from '../../../src/drawing/set-out/berth';
import { collisionsOf } from '../../../src/drawing/set-out/disturbance';
import { mapGround } from '../../../src/drawing/set-out/ground';
import { giveWay, seatAll, type Seat, type Seating } from '../../../src/drawing/set-out/seating';
import { tiedBerths } from '../../../src/drawing/set-out/tied-berths';

const paper: Paper = { scale: 1, origin: [100, 200], left: 100, top: 100, right: 300, bottom: 200, size: 13 };
const edges = { left: 6, right: 394, firm: true };
const seating: Omit<Seating, 'ground'> = { paper, edges, loyalty: 0 };
/** The same, over what these shapes draw. */
const over = (shapes: readonly Shape[]): Seating => ({ ...seating, ground: mapGround(shapes, paper) });
const part = rect(0, 0, 200, 100);

/** A text put down at a place by force. */
function seated(shape: TextShape, of: number, x: number, y: number): Seat {
  const ways = settings(shape.text, paper.size, 200);
  const setting = ways[0]!;
  return {
    shape,
    of,
    ways,
    manner: 'full',
    choice: 0,
    berth: berth({ cost: 0, floor: 0, setting, slab: slabAt(x, y, setting), strokes: [] }),
  };
}

const long = dim([0, 0], [200, 0], '200 mm and a long remark');
const short = label([50, 50], 'rib');

describe('giving way', () => {
  test('is for the label before the dimension, however short it is', () => {
    const seats = [seated(long, 0, 200, 250), seated(short, 1, 210, 255)];
    giveWay(seats, over([long, short]));
    expect(seats.map((s) => s.manner)).toEqual(['full', 'numbered']);
  });

  test('is for the longer of two labels', () => {
    const wordy = label([50, 50], 'a rib of oak');
    const seats = [seated(short, 0, 200, 250), seated(wordy, 1, 210, 255)];
    giveWay(seats, over([short, wordy]));
    expect(seats.map((s) => s.manner)).toEqual(['full', 'numbered']);
  });

  test('is for a text off the sheet, and for none that is well', () => {
    const seats = [seated(long, 0, 200, 250), seated(short, 1, 2, 50)];
    giveWay(seats, over([long, short]));
    expect(seats.map((s) => s.manner)).toEqual(['full', 'numbered']);
    for (const { berth: taken } of seats)
      expect(collisionsOf(taken, seats, edges, mapGround([long, short], paper))).toBe(0);
  });
});

describe('a number that finds no room where its text would lie', () => {
  // Thin lines so close that nothing can stand among them.
  const bars = Array.from({ length: 21 }, (_, i) =>
    line(
      [
        [10 * i, 0],
        [10 * i, 100],
      ],
      { pen: 'dimension' },
    ),
  );

  test('stands aside, on a leader from that place', () => {
    const within = note('heartwood', { at: [100, 50] });
    const seat = seated(within, 0, 200, 150);
    giveWay([seat], over([...bars, within]));
    expect(seat.manner).toBe('numbered');
    const { berth: taken } = seat;
    expect(collisionsOf(taken, [seat], edges, mapGround(bars, paper))).toBe(0);
    expect(taken.strokes.at(-1)?.slice(0, 2)).toStrictEqual([200, 150]);
    expect(taken.dot).toStrictEqual([200, 150]);
  });

  test('leaves an angle its arc, and begins on it', () => {
    const bevel = angleDim([100, 50], 0, Math.PI / 2, '90°');
    const [near] = angleBerths(bevel, paper, settings(bevel.text, paper.size, 200));
    const all = [...tiedBerths(bevel, near!, paper)];
    expect(all.length).toBeGreaterThan(50);
    const [fromX, fromY] = near!.strokes[0]!;
    const radius = Math.hypot(fromX - 200, fromY - 150);
    for (const { strokes, heads } of all) {
      expect(heads).toStrictEqual(near!.heads);
      expect(strokes.slice(0, -1)).toStrictEqual(near!.strokes);
      const [x, y] = strokes.at(-1)!;
      expect(Math.abs(Math.hypot(x - 200, y - 150) - radius)).toBeLessThan(0.5);
    }
  });
});

describe('seating', () => {
  test('starts from the choices given and leaves them only for something better', () => {
    const shapes = [part, short];
    const fresh = seatAll(shapes, over(shapes))[0]!;
    const other = fresh.choice + 1;
    const loyal = seatAll(shapes, { ...over(shapes), loyalty: 5, before: new Map([[1, other]]) })[0]!;
    expect(loyal.choice).toBe(other);
    const free = seatAll(shapes, { ...over(shapes), before: new Map([[1, other]]) })[0]!;
    expect(free.berth.cost).toBeLessThanOrEqual(loyal.berth.cost);
    expect(free.choice).toBe(fresh.choice);
  });

  test('sets a text of the key as a number from the beginning', () => {
    const [seat] = seatAll([part, short], { ...over([part, short]), keyed: new Set([1]) });
    expect(seat?.manner).toBe('numbered');
    expect(seat?.berth.setting.ringed).toBe(true);
  });

  test('keeps labels off outlines where they can be', () => {
    // The point lies 10 px under the upper edge: the text goes well inside or well outside.
    const near = label([100, 90], 'under the edge', { toward: 'n' });
    const slab = seatAll([part, near], over([part, near]))[0]!.berth.slab!;
    expect(Math.abs(slab.y - paper.top)).toBeGreaterThan(slab.halfHeight);
  });
});
