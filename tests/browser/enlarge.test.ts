/** A drawing over the whole window: opened by a press on it, drawn along and brought nearer by keys, wheel and fingers, and closed again. */
import type { Locator, Page } from 'playwright';
import { expect, test } from 'vitest';
import { answers, cell, isFocused, openNotebook, press, step } from './steps';

/** How much larger a drawing stands than it was set out, and where, px. */
const standing = (paper: Locator) =>
  paper.evaluate((element) => {
    const { a, e, f } = new DOMMatrix(getComputedStyle(element).transform);
    return { scale: a, x: e, y: f };
  });

async function enlarged(page: Page, name: string): Promise<Locator> {
  await cell(page, name).locator('.enlarge').press('Enter');
  const paper = page.locator('dialog.enlarged .enlarged-paper');
  await paper.locator('svg.drawing').waitFor();
  return paper;
}

test('with keyboard and mouse', async () => {
  const page = await openNotebook('scarf-and-resin', { reducedMotion: 'reduce' });
  const dialog = page.locator('dialog.enlarged');
  const paper = await enlarged(page, 'scarf');

  await step('fills the window, with letters of a size to be read, and says what the cell says', async () => {
    expect(await dialog.evaluate((one) => [one.clientWidth, one.clientHeight])).toStrictEqual([1280, 900]);
    const texts = paper.locator('svg.drawing text');
    const sizes = await texts.evaluateAll((all) =>
      all.map((one) => parseFloat(getComputedStyle(one).fontSize)),
    );
    expect(sizes.length).toBeGreaterThan(3);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(15);
    const [taper] = await answers(page, 'scarf');
    expect(await texts.allTextContents()).toContain(taper);
    const { width, height } = await paper
      .locator('svg.drawing')
      .evaluate((svg) => svg.getBoundingClientRect());
    expect(width).toBeGreaterThan(1200);
    expect(height).toBeLessThan(850);
  });

  await step('is brought nearer and drawn along by keys, and back to all of it', async () => {
    await page.keyboard.press('+');
    await expect.poll(async () => (await standing(paper)).scale).toBeGreaterThan(1.2);
    const before = await standing(paper);
    await page.keyboard.press('ArrowRight');
    // What lies to the right comes into the window.
    await expect.poll(async () => (await standing(paper)).x).toBeLessThan(before.x - 20);
    await page.keyboard.press('0');
    await expect.poll(() => standing(paper)).toStrictEqual({ scale: 1, x: 0, y: 0 });
  });

  await step('follows the wheel and the mouse', async () => {
    await page.mouse.move(640, 500);
    await page.mouse.wheel(0, -200);
    await expect.poll(async () => (await standing(paper)).scale).toBeGreaterThan(1.1);
    const before = await standing(paper);
    await page.mouse.down();
    await page.mouse.move(700, 540, { steps: 3 });
    await page.mouse.up();
    await expect.poll(async () => (await standing(paper)).x).toBeGreaterThan(before.x + 20);
  });

  await step('closes by Escape, and the focus is where it was', async () => {
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
    expect(await isFocused(cell(page, 'scarf').locator('.enlarge'))).toBe(true);
  });
});

test('with two fingers, on keys that a thumb can hit', async () => {
  const page = await openNotebook('scarf-and-resin', {
    width: 390,
    height: 844,
    touch: true,
    reducedMotion: 'reduce',
  });
  // A tap on the drawing itself.
  await cell(page, 'scarf')
    .locator('.enlarge')
    .tap({ position: { x: 60, y: 60 } });
  const paper = page.locator('dialog.enlarged .enlarged-paper');
  await paper.locator('svg.drawing').waitFor();
  const keys = () =>
    page
      .locator('dialog.enlarged button')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
  for (const width of [360, 390]) {
    await page.setViewportSize({ width, height: 844 });
    const boxes = await keys();
    expect(boxes.filter((one) => one.width < 43.5 || one.height < 43.5)).toStrictEqual([]);
    // In one row.
    expect(new Set(boxes.map(({ top }) => Math.round(top))).size).toBe(1);
    expect(boxes.at(-1)?.right).toBeLessThanOrEqual(width);
  }
  const devtools = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [195 - apart, 195 + apart].map((x, id) => ({ x, y: 300, id })),
    });
  await touch('touchStart', 30);
  for (const apart of [40, 55, 70, 90]) await touch('touchMove', apart);
  await touch('touchEnd', 0);
  await expect.poll(async () => (await standing(paper)).scale).toBeGreaterThan(1.5);
  await press(page, 'Close');
  await expect.poll(() => page.locator('dialog.enlarged').count()).toBe(0);
});
