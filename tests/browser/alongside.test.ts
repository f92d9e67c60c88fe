/** What stands alongside: the frame from width to width, the hull in the rail, what moved, and the dock of a phone. */
import { expect, test } from 'vitest';
import { onePage } from './harness';
import { arrived, atRest, cell, field, openNotebook, placeOf, tooWide, type } from './steps';

const page = onePage({ ...placeOf('short-build', {}), reducedMotion: 'reduce' });

/** Left and right edge of what stands there, px. */
const edges = async (where: string): Promise<[number, number]> => {
  const box = (await page().locator(where).first().boundingBox())!;
  return [Math.round(box.x), Math.round(box.x + box.width)];
};

test('what moved is told a line each, the cell in hand first and without its name', async () => {
  await arrived(page());
  await type(page(), 'scarf.thickness', '30 mm');
  const ripple = page().locator('.ripple');
  await expect.poll(() => ripple.locator('h2').innerText()).toBe('What moved');
  // The keelson, 19 mm in the plan, is now too stiff for one person: that comes before how far anything moved.
  await expect
    .poll(() => ripple.locator('li').allInnerTexts())
    .toStrictEqual(
      expect.arrayContaining([expect.stringMatching(/^Taper [\d.]+ mm, was [\d.]+$/)] as unknown[]),
    );
  expect(await ripple.locator('li').first().innerText()).toMatch(
    /^Mind: Bending a board, pull to hold it [\d.]+ N, at most 250$/,
  );
  const fold = ripple.locator('.fold').first();
  expect(await fold.innerText()).toMatch(/^\+ \d+ more (in|of) \w/);
  const lines = await ripple.locator('li').count();
  await fold.click();
  expect(await fold.getAttribute('aria-expanded')).toBe('true');
  expect(await ripple.locator('li').count()).toBeGreaterThan(lines);
  await fold.click();
});

test('one press turns the hull between her views and the round, and the browser remembers', async () => {
  const turn = page().getByRole('button', { name: 'In the round' });
  const hull = page().locator('.hull-in-sight');
  expect(await turn.getAttribute('aria-pressed')).toBe('false');
  await turn.click();
  await hull.locator('.hull-canvas canvas, .hull-still').first().waitFor();
  expect(await turn.getAttribute('aria-pressed')).toBe('true');
  expect(await hull.locator('.views svg').count()).toBe(0);
  await atRest(page());
  // Until what turns her has come, the three views stand in its place.
  let letGo = () => {};
  const held = new Promise<void>((go) => {
    letGo = go;
  });
  await page().route(/hull-by-hand/, async (route) => {
    await held;
    await route.continue();
  });
  await page().reload();
  await hull.locator('.views svg').waitFor();
  letGo();
  await arrived(page());
  await hull.locator('.hull-canvas canvas, .hull-still').first().waitFor();
  await page().unroute(/hull-by-hand/);
  // What is lit is told by its colour in every dress, in full sun too, where all else is black on white.
  const alike = (dress: string) =>
    hull.locator('.hull-view').evaluate((view, colours) => {
      document.documentElement.dataset['colours'] = colours;
      const style = getComputedStyle(view);
      return style.getPropertyValue('--hull-ink') === style.getPropertyValue('--red-lead');
    }, dress);
  for (const dress of ['paper', 'slate', 'sun']) expect(await alike(dress), `lit in ${dress}`).toBe(false);
  await page().evaluate(() => {
    delete document.documentElement.dataset['colours'];
  });
  await turn.click();
  await hull.locator('.views svg').waitFor();
});

test('what lights up is said by name', async () => {
  const thickness = field(page(), 'bend.thickness');
  await thickness.focus();
  await expect.poll(() => page().locator('.hull-foot .speaks').innerText()).toBe('Keel');
  await thickness.blur();
});

test('contents, column and rail stand beside each other without gap or overlap at every width', async () => {
  for (const width of [360, 700, 900, 991, 992, 1024, 1100, 1247, 1248, 1280, 1440, 1600, 1680, 1920]) {
    await page().setViewportSize({ width, height: 900 });
    expect(await tooWide(page()), `${width} px`).toBe(0);
    const [left, right] = await edges('.column');
    if (width < 992) continue;
    const [rail] = await edges('.alongside .hull-in-sight');
    expect(rail - right, `${width} px, column to rail`).toBeGreaterThanOrEqual(18);
    expect(rail - right, `${width} px, column to rail`).toBeLessThanOrEqual(52);
    if (width < 1248) continue;
    const [, contents] = await edges('.contents');
    expect(left - contents, `${width} px, contents to column`).toBeGreaterThanOrEqual(18);
    expect(left - contents, `${width} px, contents to column`).toBeLessThanOrEqual(52);
  }
  const widths = async (width: number) => {
    await page().setViewportSize({ width, height: 900 });
    const [column, rail, line] = await Promise.all(
      ['.column', '.hull-in-sight', '.prose > p'].map(async (one) => edges(one)),
    );
    return [column!, rail!, line!].map(([from, to]) => to - from);
  };
  const [column = 0, rail = 0] = await widths(1280);
  expect([column > 770, column < 790, rail > 275, rail < 285]).toStrictEqual([true, true, true, true]);
  const [wide = 0, wideRail = 0, line = 0] = await widths(1600);
  expect([wide > 955, wide < 965, wideRail > 410, wideRail < 430]).toStrictEqual([true, true, true, true]);
  // 40 rem, at 17 px.
  expect(line).toBeLessThanOrEqual(680);
});

test('on a phone the dock says the first answer and what it was, makes room for a field in hand, and opens the list', async () => {
  await page().setViewportSize({ width: 390, height: 844 });
  const dock = page().getByRole('button', { name: /the hull and what moved/ });
  await dock.waitFor();
  const thickness = field(page(), 'scarf.thickness');
  await thickness.fill('24 mm');
  await expect.poll(() => dock.isVisible()).toBe(false);
  await thickness.blur();
  await dock.waitFor();
  const answer = cell(page(), 'scarf').locator('.figure b').first();
  const said = page().locator('.dock-answer');
  await expect.poll(() => said.innerText()).toMatch(/^[\d.]+ mm taper, was [\d.]+$/);
  expect(await said.innerText()).toContain(await answer.innerText());
  await dock.click();
  expect(await dock.getAttribute('aria-expanded')).toBe('true');
  expect(await page().locator('.ripple li').first().isVisible()).toBe(true);
  await dock.click();
  expect(await page().locator('.ripple li').first().isVisible()).toBe(false);
});

test('the contents list marks the heading under which the cell in hand stands', async () => {
  const opened = await openNotebook('one-thick-or-two-thin', { reducedMotion: 'reduce' });
  const cells = await opened
    .locator('.cell[data-cell]')
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset['cell']!));
  const headings = new Set<string>();
  for (const name of [cells[0]!, cells.at(-1)!]) {
    await cell(opened, name).locator('.input :is(input, select)').first().focus();
    const over = await cell(opened, name).evaluate(
      (one) =>
        [...document.querySelectorAll('.prose > h2')]
          .filter((heading) => heading.getBoundingClientRect().top < one.getBoundingClientRect().top)
          .at(-1)?.textContent,
    );
    const marked = opened.locator('.contents .within [aria-current="location"]');
    await expect.poll(() => marked.allInnerTexts()).toStrictEqual([over]);
    headings.add(over ?? '');
  }
  expect(headings.size).toBe(2);
});
