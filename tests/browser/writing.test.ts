/** Writing in the page, on a phone: a sentence and a cell, by keys and by letters, kept, taken back, and saved as it was written. */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { violations } from './axe';
import { answer, isFocused, openNotebook, press, reads, step, tooWide } from './steps';

const kept = (page: Page) =>
  page.evaluate(() => {
    const { notebooks } = JSON.parse(localStorage.getItem('battenbook boat') ?? '{}') as {
      notebooks?: Record<string, { text: string }>;
    };
    return notebooks?.['keel-day']?.text;
  });
const keeps = (page: Page, text: string | undefined) => expect.poll(() => kept(page)).toBe(text);
const key = (page: Page, at: number, name: string) =>
  page.locator(`[data-at="${at}"] > .piece-keys [data-key="${name}"]`);
const field = (page: Page) => page.locator('.piece-editor textarea');

const head = '---\ntitle: Keel day\n---\n';
const cell = '```cell scarf\n```\n';

test('a notebook is begun and written on a phone', async () => {
  const page = await openNotebook('scarf-and-resin', { width: 360, touch: true });

  await step(
    'it begins with its title, and its first sentence is kept however the page is left',
    async () => {
      await page.locator('.contents summary').first().click();
      await press(page, 'Begin a notebook');
      await page.keyboard.type('Keel day');
      await page.keyboard.press('Enter');
      await expect.poll(() => isFocused(field(page))).toBe(true);
      await page.keyboard.type('Mark the **taper** on the board.');
      await page.reload();
      await page.locator('.own-notebook').waitFor();
      await keeps(page, `${head}\nMark the **taper** on the board.\n`);
    },
  );

  await step(
    'a cell is placed by a word of the trade, doubled under a name of its own, and moved',
    async () => {
      await press(page, 'Write in it');
      await key(page, 0, 'add').click();
      await page.keyboard.type('splice');
      await page.locator('.finder [aria-selected="true"]', { hasText: 'cell' }).waitFor();
      await page.keyboard.press('Enter');
      await expect.poll(() => isFocused(key(page, 1, 'change'))).toBe(true);
      await reads(answer(page, 'scarf.taper'), /mm/);
      await key(page, 1, 'double').click();
      await expect.poll(() => isFocused(key(page, 2, 'change'))).toBe(true);
      await key(page, 2, 'up').press('Enter');
      await expect.poll(() => isFocused(key(page, 1, 'up'))).toBe(true);
      await keeps(
        page,
        `${head}\nMark the **taper** on the board.\n\n\`\`\`cell scarf as scarf2\n\`\`\`\n\n${cell}`,
      );
      await reads(answer(page, 'scarf2.taper'), /mm/);
      expect(await tooWide(page)).toBe(0);
      const sizes = await page
        .locator(':is(.piece-keys, .own-notebook) button')
        .evaluateAll((all) =>
          all.map((one) => one.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
        );
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(43.5);
      expect(await violations(page, { without: ['.cell'] })).toStrictEqual([]);
    },
  );

  await step('a block that is not closed yet leaves alone what stands below it', async () => {
    await key(page, 0, 'change').click();
    await field(page).fill('```try Flatter');
    await reads(page.locator('.piece-editor .says'), /^This block is not closed/);
    await keeps(page, `${head}\n\`\`\`try Flatter\n\`\`\`\n\n\`\`\`cell scarf as scarf2\n\`\`\`\n\n${cell}`);
    await reads(answer(page, 'scarf2.taper'), /mm/);
    await page.keyboard.press('Escape');
    await expect.poll(() => isFocused(key(page, 0, 'change'))).toBe(true);
    await press(page, 'Undo');
    await reads(page.locator('[data-at="0"]'), /^Mark the taper on the board/);
  });

  await step('its text is shown above the page, and what is wrong is told at its line', async () => {
    await press(page, 'Its text beside it');
    const text = page.locator('.text-side textarea');
    const now = await text.inputValue();
    await text.fill(now.replace('on the board', 'at `= scarf.tapr`'));
    await reads(page.locator('.text-side .says'), /Something can’t be used on line 5/);
    await page.locator('.text-side .jump').click();
    await reads(page.locator('.at-line'), 'Line 5 of 12');
    await reads(page.locator('.caret-here'), /Line 5: there is no quantity "scarf\.tapr"/);
    expect(await tooWide(page)).toBe(0);
    expect(await violations(page, { without: ['.cell'] })).toStrictEqual([]);
    await press(page, 'Undo');
    await expect.poll(() => text.inputValue()).toBe(now);
  });

  await step('it is saved to the letter, and Undo takes back all of it', async () => {
    const download = page.waitForEvent('download');
    await press(page, 'Save it to a file');
    await keeps(page, await readFile(await (await download).path(), 'utf8'));
    for (const text of [
      `${head}\nMark the **taper** on the board.\n\n${cell}\n\`\`\`cell scarf as scarf2\n\`\`\`\n`,
      `${head}\nMark the **taper** on the board.\n\n${cell}`,
      `${head}\nMark the **taper** on the board.\n`,
      head,
      undefined,
    ]) {
      await press(page, 'Undo');
      await keeps(page, text);
    }
  });
});
