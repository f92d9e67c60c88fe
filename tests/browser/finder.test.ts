/** The finder: opened by a key, worked from the keyboard or by a finger, it leads to what was found. */
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { violations } from './axe';
import { onePage, openPage } from './harness';
import { arrived, cell, field, isFocused, placeOf, row, step } from './steps';

const asked = (page: Page) => page.getByRole('combobox', { name: 'A word of the trade' });
const options = (page: Page) => page.getByRole('listbox').getByRole('option');
const chosen = (page: Page) => page.getByRole('listbox').getByRole('option', { selected: true });

/** What a screen reader is told to be chosen is what is seen to be. */
async function isTold(page: Page): Promise<void> {
  const id = await asked(page).getAttribute('aria-activedescendant');
  await expect.poll(() => chosen(page).getAttribute('id')).toBe(id);
}

describe('at a desk', () => {
  const open = onePage(placeOf('short-build', {}));

  test('a slash opens it, arrows choose, and Enter leads there with the focus', async () => {
    const page = open();
    await arrived(page);
    await page.keyboard.press('/');
    await expect.poll(() => isFocused(asked(page))).toBe(true);
    await step('before anything is typed, notebooks are offered', async () => {
      await expect
        .poll(() => options(page).allInnerTexts())
        .toContainEqual(expect.stringMatching(/^notebook/));
    });
    await page.keyboard.type('taper');
    await expect.poll(() => chosen(page).innerText()).toMatch(/^question\s+How long is the taper/);
    expect(await violations(page, { within: 'dialog' })).toStrictEqual([]);
    await step('arrows, Home and End go through the list and round its ends', async () => {
      const count = await options(page).count();
      expect(count).toBeGreaterThan(2);
      for (const [key, at] of [
        ['ArrowDown', 1],
        ['ArrowUp', 0],
        ['ArrowUp', count - 1],
        ['Home', 0],
        ['End', count - 1],
        ['ArrowDown', 0],
      ] as const) {
        await page.keyboard.press(key);
        await expect.poll(() => chosen(page).getAttribute('id')).toBe(`found-${at}`);
        await isTold(page);
      }
    });
    await page.keyboard.press('Enter');
    await expect.poll(() => isFocused(cell(page, 'scarf'))).toBe(true);
    expect(await asked(page).count()).toBe(0);
    expect(page.url()).toContain('#/short-build/cell-scarf');
  });

  test('a slash in a field is a slash there; Ctrl-K opens the finder from it, and Esc leads back', async () => {
    const page = open();
    const thickness = field(page, 'scarf.thickness');
    await thickness.focus();
    await page.keyboard.press('End');
    await page.keyboard.press('/');
    expect(await asked(page).count()).toBe(0);
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Control+k');
    await expect.poll(() => isFocused(asked(page))).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => isFocused(thickness)).toBe(true);
    expect(await asked(page).count()).toBe(0);
  });

  test('a field is found with the focus in it, also one in a group that is closed', async () => {
    const page = open();
    await page.keyboard.press('Control+k');
    await asked(page).fill('frame spacing');
    await page.keyboard.press('Enter');
    await expect.poll(() => isFocused(row(page, 'bend.bay'))).toBe(true);
    expect(await field(page, 'bend.bay').isVisible()).toBe(true);
  });

  test('what belongs to the boat is found in her own sheet', async () => {
    const page = open();
    await page.keyboard.press('Control+k');
    await asked(page).fill('rub rail width');
    await page.keyboard.press('Enter');
    const rail = page.locator('.boat-sheet').locator('[data-quantity="rubRail.width"]');
    await expect.poll(() => isFocused(rail)).toBe(true);
  });

  test('a cell of another notebook opens that notebook there; found last, it is offered first', async () => {
    const page = open();
    await page.keyboard.press('Control+k');
    await asked(page).fill('limber');
    await expect.poll(() => chosen(page).innerText()).toMatch(/keelson/i);
    await page.keyboard.press('Enter');
    await expect.poll(() => isFocused(cell(page, 'limber'))).toBe(true);
    await page.keyboard.press('/');
    await expect.poll(() => chosen(page).innerText()).toMatch(/limber/);
    await asked(page).fill('zzyzx');
    await expect
      .poll(() => page.getByRole('dialog').getByRole('status').innerText())
      .toMatch(/^Nothing is called/);
    await page.keyboard.press('Escape');
    await expect.poll(() => asked(page).count()).toBe(0);
  });
});

test('a cell far down stays at the top of the window while the cells above it fill in', async () => {
  const page = await openPage({ at: '#/the-build/cell-bend' });
  const top = async () => {
    await page.waitForFunction(() => !document.querySelector('.cell [aria-busy]'));
    const box = await cell(page, 'bend').boundingBox();
    return Math.round((box?.y ?? Infinity) / 100);
  };
  await step('from a fresh open', () => expect.poll(top).toBe(0));
  await step('from the other end of the notebook, by the cell’s bare name', async () => {
    // Where cells fill in above it meanwhile, Chromium moves the end of the key's glide down with them: it is pressed until it has led there.
    const pressed = async () => {
      await page.keyboard.press('Home');
      return page.evaluate(() => new Promise((end) => requestAnimationFrame(() => end(scrollY))));
    };
    await expect.poll(pressed).toBe(0);
    await page.evaluate(() => {
      location.hash = '#/the-build/bend';
    });
    await expect.poll(() => isFocused(cell(page, 'bend'))).toBe(true);
    await expect.poll(top).toBe(0);
  });
});

describe('on a phone', () => {
  const open = onePage({ ...placeOf('short-build', {}), width: 360, height: 740, touch: true });

  test('its key opens it over the whole window, and a tap leads there', async () => {
    const page = open();
    await arrived(page);
    await page.getByRole('button', { name: 'Find', exact: true }).tap();
    await expect.poll(() => isFocused(asked(page))).toBe(true);
    const box = await page.getByRole('dialog').boundingBox();
    expect(box).toMatchObject({ x: 0, y: 0, width: 360, height: 740 });
    await asked(page).fill('hardener');
    const heights = await options(page).evaluateAll((all) =>
      all.map((one) => one.getBoundingClientRect().height),
    );
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
    await options(page).filter({ hasText: 'How much resin and hardener' }).first().tap();
    await expect.poll(() => isFocused(cell(page, 'resin'))).toBe(true);
  });
});
