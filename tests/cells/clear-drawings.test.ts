/**
 * No text of any drawing lies on another or on a thin line, or leaves its sheet, and each that stands in the key below
 * is tied to its place by its number: every cell on every starter and some odd
 * boats, in millimetres and in inches, as wide as a phone gives, as the column gives, and on a card.
 */
import { expect, test } from 'vitest';
import { starters, type Table } from '../../src/boat';
import type { Cell } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { collisions, type Drawing, LEAST_TEXT, overlay, setOut, type SetOut } from '../../src/drawing';
import { plainShown, type Shown } from '../../src/measure';
import { withOtherNames, withoutChines, withTwoChines } from './odd-boats';
import { tryCell } from './try-cell';

const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['no chine', withoutChines],
  ['two chines', withTwoChines],
  ['other names', withOtherNames],
];
const inches: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };

const VERSIONS = ', two versions';

/** The sheets a drawing is seen on, px: a phone of 390, beside the inputs or over the column at 1280, a card's 190 mm. */
function sheetsFor({ wide = false, tall = false }: Cell): readonly SetOut[] {
  const maxHeight = wide ? (tall ? 1000 : 640) : 420;
  return [
    { width: 324, maxHeight },
    { width: wide ? 610 : 330, maxHeight },
    { width: 497, maxHeight: 360, text: LEAST_TEXT },
  ];
}

/** What stands in the way of a text on any of the sheets. One drawing is set out once, however many boats have it. */
function clear(drawing: Drawing, cell: Cell, of: string, seen: Set<string>): string[] {
  const all = seen.size;
  if (seen.add(JSON.stringify(drawing)).size === all) return [];
  return sheetsFor(cell).flatMap((options) => {
    const sheet = setOut(drawing, options);
    // Where two versions lie over each other there may be no room left even for a number.
    const bare = of.endsWith(VERSIONS) ? [] : sheet.key.filter(({ number }) => number === 0);
    return [
      ...collisions(sheet).map(
        ({ what, a }) => `${of}, ${options.width} px: ${what}: ${a.lines.join(' / ')}`,
      ),
      ...bare.map(({ text }) => `${of}, ${options.width} px: nowhere on the drawing: ${text}`),
    ];
  });
}

test.each(cells.filter(({ draw }) => draw).map((cell) => [cell.id, cell] as const))(
  '%s has its texts clear on every boat',
  { timeout: 120_000 },
  (_, cell) => {
    const seen = new Set<string>();
    const found = boats.flatMap(([id, table]) => {
      const [metric, inch] = [plainShown, inches].map((shown) => tryCell(cell, {}, table, shown).drawing);
      return [
        ...(metric ? clear(metric, cell, id, seen) : []),
        ...(inch ? clear(inch, cell, `${id} in inches`, seen) : []),
        ...(metric && inch ? clear(overlay(metric, inch), cell, `${id}${VERSIONS}`, seen) : []),
      ];
    });
    expect(found).toStrictEqual([]);
  },
);
