/** One cell at the bench: read at arm's length, worked with gloves on, on a phone and on a laptop. */
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { violations } from './axe';
import { onePage } from './harness';
import { answers, cell, openNotebook, turnTo } from './steps';

/** A key for a gloved thumb, and a figure that can be read from the bench, px. */
const KEY = 76;
const FIGURE = 40;

const dialog = (page: Page) => page.locator('.at-bench[open]');
const lay = async (page: Page, name: string) => {
  await cell(page, name)
    .getByRole('button', { name: /^At the bench/ })
    .click();
  await dialog(page).locator('.answer').first().waitFor();
};
const press = async (page: Page, ...keys: string[]) => {
  for (const key of keys) await dialog(page).getByRole('button', { name: key, exact: true }).click();
};

/** What is too small, or wider than the screen, as it stands. */
const amiss = (page: Page): Promise<string[]> =>
  dialog(page).evaluate(
    (at, [key, figure]) => {
      const seen = (one: Element) => one.checkVisibility();
      const keys = [...at.querySelectorAll('button:not(.jump)')].filter(seen).filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width < key - 0.5 || height < key - 0.5;
      });
      const figures = [...at.querySelectorAll('.figure b, .bench-mark dd, #bench-entry')]
        .filter(seen)
        .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < figure);
      const wide = [at, ...at.querySelectorAll('*')].filter(
        (one) =>
          seen(one) && one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX !== 'visible',
      );
      return [...keys, ...figures, ...wide].map((one) => one.outerHTML.slice(0, 100));
    },
    [KEY, FIGURE] as const,
  );

/** All cells are made of the same few parts: on a laptop one notebook of them is enough. */
const places = [
  { width: 360, height: 640, notebooks: ['fair-lines', 'frames-standing-true', 'bend-join-fasten'] },
  { width: 1280, height: 800, notebooks: ['fair-lines'] },
] as const;

describe.each(places)('every cell at $width x $height', ({ width, height, notebooks }) => {
  const page = onePage({
    width,
    height,
    touch: width < 500,
    reducedMotion: 'reduce',
    storage: { 'battenbook dress': 'sun' },
  });

  test.each(notebooks)('keys, figures and width: %s', async (notebook) => {
    await turnTo(page(), notebook);
    const names = await page()
      .locator('.cell[data-cell]')
      .evaluateAll((cells) => cells.map((one) => (one as HTMLElement).dataset['cell'] ?? ''));
    expect(names.length).toBeGreaterThan(3);
    const found: string[] = [];
    for (const name of names) {
      await lay(page(), name);
      const look = async (at: string) =>
        found.push(...(await amiss(page())).map((what) => `${name}, ${at}: ${what}`));
      await look('numbers');
      const first = dialog(page()).locator('.bench-number').first();
      if ((await first.count()) > 0) {
        await first.click();
        await dialog(page()).locator('.bench-field').waitFor();
        await look('a number');
        await press(page(), 'Done');
      }
      const marks = dialog(page()).locator('.bench-to-marks');
      if ((await marks.count()) > 0) {
        await marks.click();
        await look('marks');
        await press(page(), 'Done');
      }
      await press(page(), 'Close');
      await dialog(page()).waitFor({ state: 'detached' });
    }
    expect(found).toStrictEqual([]);
  });

  test('axe finds nothing', async () => {
    await turnTo(page(), 'bend-join-fasten');
    await lay(page(), 'bend');
    expect(await violations(page(), '.at-bench')).toStrictEqual([]);
    await dialog(page()).locator('.bench-number').nth(1).click();
    expect(await violations(page(), '.at-bench')).toStrictEqual([]);
    await press(page(), 'Done', 'Close');
  });
});

test('a scarf is worked out with the keypad, in marks of the tape, and the notebook has it', async () => {
  const page = await openNotebook('quick-scarf', { width: 390, height: 844, touch: true, small: true });
  await page.locator('.unit-pick').selectOption('ft-in 1/16, lb');
  await lay(page, 'quickScarf');
  await dialog(page)
    .getByRole('button', { name: /^Thickness/ })
    .click();
  await press(page, '1', '1/2', '1/4');
  expect(await page.locator('#bench-entry').inputValue()).toBe('1 3/4');
  // At 1 in 8 the taper is eight thicknesses: 14 in.
  const taper = dialog(page).locator('.answer').first().locator('.figure b');
  expect(await taper.textContent()).toMatch(/14 in|1' 2"/);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await dialog(page).waitFor({ state: 'detached' });
  expect((await answers(page, 'quickScarf'))[0]).toMatch(/14 in|1' 2"/);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('At the bench');
});

test('what can’t be read is said and stays, and Next comes only when it is mended', async () => {
  const page = await openNotebook('quick-scarf', { width: 1280, height: 800, small: true });
  await lay(page, 'quickScarf');
  await dialog(page)
    .getByRole('button', { name: /^Thickness/ })
    .click();
  await page.keyboard.type('2 fat boards');
  await page.keyboard.press('Enter');
  expect(await page.locator('.bench-says').textContent()).not.toBe('');
  expect(await page.locator('#bench-entry').inputValue()).toBe('2 fat boards');
  await page.locator('#bench-entry').fill('20 mm');
  await page.keyboard.press('Enter');
  expect(await page.locator('.bench-field').getAttribute('aria-label')).not.toMatch(/^Thickness/);
});

describe('the screen', () => {
  const withLock = (answer: 'kept' | 'refused') =>
    openNotebook('quick-scarf', {
      small: true,
      before: async (page) => {
        await page.addInitScript((gives) => {
          const at = globalThis as unknown as { locks: number };
          at.locks = 0;
          const request = () => {
            if (gives === 'refused') return Promise.reject(new DOMException('battery', 'NotAllowedError'));
            at.locks += 1;
            return Promise.resolve({ release: () => Promise.resolve((at.locks -= 1)) });
          };
          Object.defineProperty(navigator, 'wakeLock', { value: { request } });
        }, answer);
      },
    });
  const locks = (page: Page) => page.evaluate(() => (globalThis as unknown as { locks: number }).locks);

  test('is kept awake while the cell lies there, and no longer', async () => {
    const page = await withLock('kept');
    await page
      .locator('.cell[data-cell]')
      .first()
      .getByRole('button', { name: /^At the bench/ })
      .click();
    await page.waitForFunction(() => (globalThis as unknown as { locks: number }).locks === 1);
    expect(await dialog(page).locator('.bench-awake').count()).toBe(0);
    await press(page, 'Close');
    await page.waitForFunction(() => (globalThis as unknown as { locks: number }).locks === 0);
    expect(await locks(page)).toBe(0);
  });

  test('where the browser refuses, it is said', async () => {
    const page = await withLock('refused');
    await page
      .locator('.cell[data-cell]')
      .first()
      .getByRole('button', { name: /^At the bench/ })
      .click();
    const told = dialog(page).locator('.bench-awake');
    await told.waitFor();
    expect(await told.textContent()).toMatch(/won’t keep the screen awake/);
  });
});
