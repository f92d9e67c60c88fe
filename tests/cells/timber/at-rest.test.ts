/** What the cells about screws say of a boat as she comes: nothing that a builder following custom would not change. */
import { describe, expect, test } from 'vitest';
import { starters } from '../../../src/boat';
import { butt } from '../../../src/cells/timber/butt';
import { fasten } from '../../../src/cells/timber/fasten';
import { screwCount } from '../../../src/cells/timber/screw-count';
import { screwMap } from '../../../src/cells/timber/screw-map';
import { screwStrength } from '../../../src/cells/timber/screw-strength';
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
