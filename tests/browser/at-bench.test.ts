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

/**
 * Lays every cell of the notebook at the bench, takes a number of it in hand and its marks, and tells what is too small
 * there, lies under something else or is wider than the screen. The keys are pressed inside the page, without a
 * question to it for each.
 */
const everyCell = (page: Page): Promise<{ names: string[]; found: string[] }> =>
  page.evaluate(
    async ([leastKey, leastFigure]) => {
      const until = async (holds: () => unknown) => {
        while (!holds()) await new Promise(requestAnimationFrame);
      };
      const inside = (place: string) => document.querySelector<HTMLElement>(`.at-bench[open] ${place}`);
      const keyIn = (place: string, words: string) =>
        [...document.querySelectorAll<HTMLElement>(`${place} button`)].find((one) =>
          one.textContent.startsWith(words),
        );
      const amiss = () => {
        const all = [...document.querySelectorAll<HTMLElement>('.at-bench[open], .at-bench[open] *')];
        const seen = (places: string) => all.filter((one) => one.matches(places) && one.checkVisibility());
        const isHit = (key: Element) => {
          const { left, top, width, height } = key.getBoundingClientRect();
          return document.elementFromPoint(left + width / 2, top + height / 2)?.closest('button') === key;
        };
        const comesUnderThumb = (key: Element) => {
          if (isHit(key)) return true;
          key.scrollIntoView({ block: 'nearest' });
          return isHit(key);
        };
        const keys = seen('button:not(.jump)').filter((one) => {
          const { width, height } = one.getBoundingClientRect();
          return width < leastKey - 0.5 || height < leastKey - 0.5 || !comesUnderThumb(one);
        });
        const figures = seen('.figure b, .bench-mark dd, #bench-entry').filter(
          (one) => Number.parseFloat(getComputedStyle(one).fontSize) < leastFigure,
        );
        const wide = all.filter(
          (one) =>
            one.scrollWidth > one.clientWidth + 1 &&
            one.checkVisibility() &&
            getComputedStyle(one).overflowX !== 'visible',
        );
        return [...keys, ...figures, ...wide].map((one) => one.outerHTML.slice(0, 100));
      };
      const names: string[] = [];
      const found: string[] = [];
      for (const cell of document.querySelectorAll<HTMLElement>('.cell[data-cell]')) {
        const name = cell.dataset['cell'] ?? '';
        const look = (at: string) => found.push(...amiss().map((what) => `${name}, ${at}: ${what}`));
        names.push(name);
        keyIn(`.cell[data-cell="${name}"]`, 'At the bench')?.click();
        await until(() => inside('.answer'));
        look('numbers');
        for (const [opens, stands] of [
          ['.bench-number', '.bench-field'],
          ['.bench-to-marks', '.bench-mark'],
        ] as const) {
          const key = inside(opens);
          if (!key) continue;
          key.click();
          await until(() => inside(stands));
          look(stands);
          keyIn('.at-bench[open]', 'Done')?.click();
          await until(() => !inside(stands));
        }
        keyIn('.at-bench[open]', 'Close')?.click();
        await until(() => !document.querySelector('.at-bench'));
      }
      return { names, found };
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
    const { names, found } = await everyCell(page());
    expect(names.length).toBeGreaterThan(3);
    expect(found).toStrictEqual([]);
  });

  test('axe finds nothing', async () => {
    await turnTo(page(), 'bend-join-fasten');
    await lay(page(), 'bend');
    expect(await violations(page(), { within: '.at-bench' })).toStrictEqual([]);
    await dialog(page()).locator('.bench-number').nth(1).click();
    expect(await violations(page(), { within: '.at-bench' })).toStrictEqual([]);
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
