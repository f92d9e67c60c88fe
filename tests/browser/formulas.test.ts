/** A formula of one's own, in a notebook and at the bench: used by its name, amiss at its place, taken back, found, covered. */
import { expect, test } from 'vitest';
import { violations } from './axe';
import { atRest, fieldNumber, openNotebook, press, reads, reload, step, tooWide } from './steps';

test('lines are worked out where they stand, mended where they are amiss, and used elsewhere by their names', async () => {
  const page = await openNotebook('formula-day', { width: 360 });
  const formula = page.locator('#cell-keelDay');
  const told = (name: string) => page.locator(`[data-quantity="${name}"]`).first();
  const lines = formula.getByRole('textbox', { name: /^Lines/ });

  await step('its results stand in the block, in the text and in a cell that takes one', async () => {
    await reads(told('keelDay.boardDepth'), /18 mm/);
    await reads(told('keelDay.taper'), /144 mm/);
    await reads(page.locator('.prose > p').first(), /9\.06 lb\/ft/);
    expect(await fieldNumber(page, 'dayScarf.thickness')).toBe(18);
  });

  await step('a line that is amiss is told at its place, and leads there; the others go on', async () => {
    await formula.getByRole('button', { name: 'Change the lines' }).click();
    const before = await lines.inputValue();
    await lines.fill(before.replace('8 * boardDepth', '8 * boardDepth + 2 kg'));
    await reads(told('keelDay.taper'), /Can't add a mass to a length\..*Line 3, character 9/s);
    await reads(told('keelDay.boardDepth'), /18 mm/);
    await formula.getByRole('button', { name: 'Line 3, character 9' }).click();
    const selected = await lines.evaluate((area: HTMLTextAreaElement) =>
      area.value.slice(area.selectionStart, area.selectionEnd),
    );
    expect(selected).toBe('8 * boardDepth + 2 kg');
    expect(await tooWide(page)).toBe(0);
    expect(await violations(page, { within: '#cell-keelDay' })).toStrictEqual([]);
  });

  await step(
    'what is typed goes to the cell at once, is there after a reload, and is undone in one step',
    async () => {
      await lines.fill('boardDepth = 2 * keelson.thickness\nlong = 3 m');
      await reads(told('keelDay.boardDepth'), /36 mm/);
      await expect.poll(() => fieldNumber(page, 'dayScarf.thickness')).toBe(36);
      await formula.getByRole('button', { name: 'Done' }).click();
      await atRest(page);
      await reload(page);
      await reads(told('keelDay.boardDepth'), /36 mm/);
      await press(page, 'Undo');
      await press(page, 'Undo');
      await reads(told('keelDay.boardDepth'), /18 mm/);
    },
  );

  await step(
    'a sum at the bench is written from More, by names that are looked for, and is found',
    async () => {
      await page.locator('.desk summary').click();
      await press(page, 'A formula of your own');
      const mine = page.locator('#cell-mine');
      const own = mine.getByRole('textbox', { name: /^Lines/ });
      await own.fill('half = ');
      await mine.locator('summary', { hasText: 'Names of numbers' }).click();
      await mine.getByRole('textbox', { name: /^What it is/ }).fill('length hull all');
      await mine.getByRole('button', { name: /^hull\.length/ }).click();
      await own.press('End');
      await own.pressSequentially(' / 2 | half of her');
      await reads(told('mine.half'), /Half of her.*2680 mm/s);
      expect(await violations(page, { within: '.mine-sheet' })).toStrictEqual([]);
      await page.getByRole('button', { name: 'Close your own formulas' }).click();
      await press(page, 'Find');
      await page.getByRole('combobox', { name: 'A word of the trade' }).fill('half of her');
      await page
        .getByRole('option', { name: /Half of her/ })
        .first()
        .click();
      await reads(told('mine.half'), /2680 mm/);
    },
  );
});
