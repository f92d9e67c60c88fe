/** A number read wrong: what mends it is weighed before it is tried, and stands in both versions after. */
import { expect, test } from 'vitest';
import { cell, isFocused, openNotebook, reads, row, step, undoAll, unfold } from './steps';

test('a number read wrong', async () => {
  const page = await openNotebook('misread');
  await page.locator('.boat-pick').selectOption('ferry-dory-misread');

  await step('is pointed to from another line, and one key shows its own', async () => {
    await row(page, 'fair.edge').locator('select').selectOption('chine');
    const fair = cell(page, 'fair');
    await reads(fair.locator('.turn-to'), /^The number to look at first: frame 2, sheer in plan/);
    await fair.getByRole('button', { name: /^Show that line/ }).click();
    await expect.poll(() => fair.locator('.turn-to').count()).toBe(0);
    expect(await row(page, 'fair.edge').locator('select').inputValue()).toBe('sheer');
    await reads(
      fair.locator('.in-words'),
      /^In plan the sheer stands about 5\d(\.\d)? mm too far in at frame 2/,
    );
    await undoAll(page);
  });

  await step('what mends it is weighed before it is tried, and stands in both versions after', async () => {
    const fair = cell(page, 'fair');
    // The key beside what is amiss leads to them.
    await fair.getByRole('button', { name: /changes? to try…$/ }).click();
    await expect.poll(() => isFocused(fair.locator('.fold.changes > summary'))).toBe(true);
    const first = fair.locator('.try-this').first();
    await reads(first.locator('p').first(), /^Frame 2, sheer: 5\d(\.\d)? mm outboard$/);
    const flare = first.locator('tr', { hasText: 'Flare of the side at frame 2' }).locator('td');
    const [before, after] = await flare.allInnerTexts();
    await reads(first.locator('thead'), /now\s*then/);
    await first.getByRole('button', { name: /^Look at it beside the first/ }).click();
    await reads(first.locator('thead'), /kept\s*trying/);
    expect((await flare.allInnerTexts()).slice(0, 2)).toStrictEqual([before, after]);
    // The table of form says the same of both versions.
    await unfold(cell(page, 'lines'), 'form by station');
    const frame2 = cell(page, 'lines').locator('.cell-table tbody tr', { hasText: 'frame 2' });
    await reads(frame2.locator('td', { hasText: after! }), new RegExp(`^${after}\\s*Kept:\\s*${before}$`));
  });
});
