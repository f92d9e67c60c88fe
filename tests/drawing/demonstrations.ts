// Drawings for the tests of setting out: the cells' own, on two boats, and two that no cell makes: a skiff whose lines are
// plain formulas, and a sheet with more texts than room.

import { starter, type Table } from '../../src/boat';
import type { Cell } from '../../src/cells';
import { limber as limberCell } from '../../src/cells/frames/limber';
import { lines as linesCell } from '../../src/cells/shape/lines';
import { bend as bendCell } from '../../src/cells/timber/bending/bend';
import { scarf as scarfCell } from '../../src/cells/timber/joints/scarf';
import { dim, type Drawing, drawing, label, mark, note, rectHatch, type SpaceLine } from '../../src/drawing';
import { tryCell } from '../cells/try-cell';

/** The two boats: one with a stem, one with a transom at both ends. */
export const boats = ['ferry-dory', 'creek-punt'] as const;
export type Boat = (typeof boats)[number];

const made = new Map<string, Drawing>();

/** A cell's drawing on one of the boats, with these entries. */
function drawn(cell: Cell, boat: Boat, entries: Readonly<Record<string, string>> = {}): Drawing {
  const key = JSON.stringify([cell.id, boat, entries]);
  const known = made.get(key) ?? tryCell(cell, entries, tableOf(boat)).drawing;
  if (!known) throw new Error(`${cell.id} draws nothing on ${boat}`);
  made.set(key, known);
  return known;
}

function tableOf(boat: Boat): Table {
  const table = starter(boat);
  if (!table) throw new Error(`there is no starter ${boat}`);
  return table;
}

export const scarf = (thickness = 19, slope = 8, boat: Boat = 'ferry-dory'): Drawing =>
  drawn(scarfCell, boat, { thickness: `${thickness} mm`, slope: `${slope}` });
export const limber = (boat: Boat = 'ferry-dory'): Drawing => drawn(limberCell, boat);
export const bend = (boat: Boat = 'ferry-dory'): Drawing => drawn(bendCell, boat);
export const lines = (boat: Boat = 'ferry-dory'): Drawing => drawn(linesCell, boat);

/** A flared skiff of our own, as edges and stations. */
export function skiffLines(): SpaceLine[] {
  const stations = [0, 0.8, 1.6, 2.4, 3.2, 4];
  const half = (x: number, most: number): number => most * (1 - ((x - 1.5) / 2.6) ** 2);
  const edge = (name: string, most: number, z: (x: number) => number): SpaceLine => ({
    name,
    pen: 'outline',
    points: Array.from({ length: 41 }, (_, i) => {
      const x = i / 10;
      return [x, Math.max(0, half(x, most)), z(x)] as const;
    }),
  });
  const chine = edge('chine', 0.55, (x) => 0.12 * ((x - 1.4) / 2.6) ** 2);
  const sheer = edge('sheer', 0.74, (x) => 0.46 + 0.2 * ((x - 1.4) / 2.6) ** 2);
  const keel: SpaceLine = { name: 'keel', pen: 'outline', points: chine.points.map(([x, , z]) => [x, 0, z]) };
  return [
    keel,
    chine,
    sheer,
    ...stations.map((x, i): SpaceLine => {
      const rank = Math.round(x * 10);
      return {
        name: `frame${i}`,
        points: [keel, chine, sheer].flatMap((l) => {
          const p = l.points[rank];
          return p ? [p] : [];
        }),
      };
    }),
  ];
}

/** More texts than room: some must go to the key. */
export const crowded = (): Drawing =>
  drawing({
    title: 'Screws at a frame head',
    says: 'Eight screws round the head of a frame.',
    shapes: [
      rectHatch(0, 0, 60, 200, 'cedar', { part: 'frame1' }),
      ...Array.from({ length: 8 }, (_, i) => [
        mark([30, 20 + 23 * i], { form: 'ring' }),
        label([30, 20 + 23 * i], `screw ${i + 1}, gauge 8, 38 mm, clear of the later saw cut`),
        dim([0, 0], [30, 20 + 23 * i], `${20 + 23 * i} mm`, { run: 'vertical', side: 'right' }),
      ]),
      note('All screws of silicon bronze, holes bored before the frame is set up.'),
    ],
  });
