/** A price of another kind than the field's is refused with the way to where that kind is asked. */
import { expect, test } from 'vitest';
import { countsNow, demoBoat, shopGroups } from '../../src/boat';
import { boards } from '../../src/cells/timber/wood/boards';
import { laminate } from '../../src/cells/timber/bending/laminate';
import { plainShown, type Shown } from '../../src/measure';
import { tryCell } from './try-cell';

const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };

const fields = [
  [boards, 'Wood is priced', { volume: 'priceA', length: 'perLengthA', each: 'eachA' }],
  [laminate, 'Wood is priced', { volume: 'price', length: 'perLength', each: 'each' }],
] as const;
const typed = { volume: '1500/m³', length: '0.89/ft', each: '6.49 each' } as const;
const labels = { volume: 'by volume', length: 'per foot or metre', each: 'per board' } as const;
const ways = ['volume', 'length', 'each'] as const;

const cases = fields.flatMap(([cell, choice, keys]) =>
  ways.map((asked) => [cell.id, labels[asked], { cell, choice, keys, asked }] as const),
);

test.each(cases)('%s, asked %s', (_, _asked, { cell, choice, keys, asked }) => {
  for (const said of ways) {
    const tried = tryCell(cell, { quoted: asked, [keys[asked]]: typed[said] });
    const way = said === asked ? '' : `; choose “${labels[said]}” under “${choice}”`;
    expect(tried.issues[keys[asked]]?.replace(/^.*?(?=; choose|$)/, '') ?? '').toBe(way);
  }
});

test('so it is in the field of the boat, which *boards* shows', () => {
  const { issues } = tryCell(boards, { 'shop.priceA': '6.49 each' });
  expect(issues['priceA']).toMatch(/choose “per board” under “Wood is priced”$/);
});

test.each(fields)(
  '%#: what is asked nowhere is refused without a way, a bare number is taken',
  (cell, _, keys) => {
    for (const shown of [plainShown, feet]) {
      const of = (text: string) => tryCell(cell, { quoted: 'volume', [keys.volume]: text }, demoBoat, shown);
      expect(of('20/kg').issues[keys.volume]).toMatch(/"20\/kg" is a price per mass$/);
      expect(of('plenty').issues[keys.volume]).not.toContain('choose');
      expect(of('6.49').issues[keys.volume]).toBeUndefined();
      expect(of('$5').issues[keys.volume]).toContain('choose “per board”');
    }
  },
);

test.each(ways)('priced %s, the shop’s sheet asks for what the cells ask for, and nothing else', (way) => {
  const prices = Object.values(shopGroups)
    .flat()
    .filter(({ asked }) => asked);
  const inSheet = prices.filter((one) => countsNow(one, () => way)).map(({ name }) => name);
  const inCells = [boards, laminate].flatMap((cell) =>
    Object.values(cell.inputs)
      .filter(
        ({ when = '' }) =>
          when === `quoted == "${way}"` || (way !== 'volume' && when === WHERE_SECTION_COUNTS),
      )
      .flatMap(({ from = '' }) => from),
  );
  // A choice beside the prices that is not known yet hides none of them.
  expect(prices.filter((one) => countsNow(one, () => ({ issue: 'none' })))).toStrictEqual(prices);
  expect(new Set(inCells.filter((name) => !name.startsWith('shop.length')))).toStrictEqual(new Set(inSheet));
});
const WHERE_SECTION_COUNTS = 'quoted != "volume"';
