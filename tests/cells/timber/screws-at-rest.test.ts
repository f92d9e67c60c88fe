/** What the cells about screws say of a boat as she comes: nothing that a builder following custom would not change. */
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { butt } from '../../../src/cells/timber/joints/butt';
import { fasten } from '../../../src/cells/timber/fastening/fasten';
import { screwCount } from '../../../src/cells/timber/fastening/screw-count';
import { screwMap } from '../../../src/cells/timber/fastening/screw-map';
import { screwStrength } from '../../../src/cells/timber/fastening/screw-strength';
import { plainShown } from '../../../src/measure';
import { tryCell } from '../try-cell';

const feet = { ...plainShown, length: 'feet', mass: 'lb' } as const;

describe.each(starters)('$id', ({ table }) => {
  test.each([butt, fasten, screwCount, screwMap, screwStrength].map((cell) => [cell.id, cell] as const))(
    '%s is at rest, in millimetres and in inches',
    (_, cell) => {
      const said = [plainShown, feet].flatMap((shown) =>
        tryCell(cell, {}, table, shown).warnings.map(({ says }) => says),
      );
      expect(said).toStrictEqual([]);
    },
  );
});

test.each([
  // As *Quick answers* places them.
  [
    butt,
    { thickness: '9 mm', jointLength: '450 mm', bay: '600 mm', siding: '19 mm', framePosition: '2.4 m' },
  ],
  [
    fasten,
    { length: '4.2 m', topThickness: '9 mm', depth: '38 mm', face: '38 mm', species: 'douglasFirCoast' },
  ],
  [
    screwStrength,
    {
      diameter: '0.164 in',
      rootDiameter: '0.131 in',
      threadLength: '23 mm',
      mainLength: '26 mm',
      sideLength: '9 mm',
      species: 'douglasFirCoast',
    },
  ],
] as const)('%# is at rest without a boat', (cell, entries) => {
  expect(tryCell(cell, entries).warnings.map(({ says }) => says)).toStrictEqual([]);
});
