import { describe, expect, test } from 'vitest';
import { dim, label, rect, type Shape, type TextShape } from '../../../src/drawing';
import { berth, settings, slabAt, type Paper } from '../../../src/drawing/set-out/berth';
import { collisionsOf } from '../../../src/drawing/set-out/disturbance';
import { mapGround } from '../../../src/drawing/set-out/ground';
import { giveWay, seatAll, type Seat, type Seating } from '../../../src/drawing/set-out/seating';

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
