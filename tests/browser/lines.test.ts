/** The hull to look at: still until asked for, then turned by keys, mouse and finger; still where there is no WebGL. */
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Locator, Page } from 'playwright';
import { expect, inject, test } from 'vitest';
import { inRoot } from '../tools/root.mjs';
import type { PageOptions } from './harness';
import { cell, openNotebook, openSheet, press, reads, step, type } from './steps';

/** What a page notes down about WebGL, before anything of ours runs. */
interface Watched {
  readonly contexts: WebGL2RenderingContext[];
  drawn: number;
}
const watchedIn = (page: Page) =>
  page.evaluate(() => {
    const { contexts, drawn } = (globalThis as unknown as { watched: Watched }).watched;
    return { drawn, live: contexts.filter((context) => !context.isContextLost()).length };
  });

/** Runs in the page: counts what WebGL draws there, or takes it away. */
function watchWebGl(has: boolean): void {
  const watched: Watched = { contexts: [], drawn: 0 };
  Object.assign(globalThis, { watched });
  // oxlint-disable-next-line typescript/unbound-method -- called on the canvas below
  const { getContext } = HTMLCanvasElement.prototype;
  HTMLCanvasElement.prototype.getContext = function get(this: HTMLCanvasElement, ...asked: unknown[]) {
    if (!has && String(asked[0]).startsWith('webgl')) return null;
    const context = getContext.apply(this, asked as Parameters<typeof getContext>);
    if (context instanceof WebGL2RenderingContext) watched.contexts.push(context);
    return context;
  } as typeof getContext;
  // oxlint-disable-next-line typescript/unbound-method -- called on the context below
  const { drawElements } = WebGL2RenderingContext.prototype;
  WebGL2RenderingContext.prototype.drawElements = function draw(...args) {
    watched.drawn += 1;
    drawElements.apply(this, args);
  };
}

/** The lines of the boat, with every picture drawn by WebGL counted, and all it asks for. */
async function openLines(options: PageOptions & { readonly webGl?: boolean } = {}) {
  const scripts: string[] = [];
  const page = await openNotebook('lines', {
    ...options,
    before: async (page) => {
      page.on('request', (request) => scripts.push(new URL(request.url()).pathname));
      await page.addInitScript(watchWebGl, options.webGl ?? true);
    },
  });
  await cell(page, 'lines').locator('.fold.round > summary').click();
  const hull = cell(page, 'lines').locator('.hull-view');
  await hull.scrollIntoViewIfNeeded();
  return { page, hull, scripts };
}

/** Whether three is in any script of the site that was asked for. */
const hasThree = (scripts: readonly string[]) =>
  scripts.some(
    (file) =>
      file.endsWith('.js') && readFileSync(`${inject('smallSite')}${file}`, 'utf8').includes('WebGLRenderer'),
  );
const seenFrom = (hull: Locator) => hull.locator('[role="status"]');
const stillPaths = (hull: Locator) =>
  hull.locator('svg.hull-still path').evaluateAll((all) => all.map((one) => one.getAttribute('d')).join(' '));

/** Waits until the page was painted so many times. */
const frames = (page: Page, count: number) =>
  page.evaluate(async (count) => {
    for (let at = 0; at < count; at += 1) await new Promise(requestAnimationFrame);
  }, count);

/** The canvas as it is on the screen, once it has stood still for two looks. */
async function picture(hull: Locator): Promise<string> {
  const take = async () => (await hull.locator('canvas').screenshot()).toString('base64');
  let last = await take();
  for (;;) {
    const next = await take();
    if (next === last) return next;
    last = next;
  }
}

async function open(hull: Locator): Promise<Locator> {
  await hull.getByRole('button', { name: 'Turn the hull by hand' }).click();
  await hull.locator('canvas').waitFor();
  const canvas = hull.getByRole('application');
  await canvas.scrollIntoViewIfNeeded();
  return canvas;
}

test('still until asked for, then turned by keys and mouse', async () => {
  const { page, hull, scripts } = await openLines();
  await page.evaluate(readFileSync(inRoot('node_modules/axe-core/axe.min.js'), 'utf8'));
  const violations = () =>
    page.evaluate(async () => {
      const { axe } = globalThis as unknown as { axe: { run: (place: string) => Promise<AxeResults> } };
      const found = await axe.run('.cell[data-cell="lines"]');
      return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
    });
  expect(await violations()).toStrictEqual([]);

  await step(
    'fetches nothing of the round picture until it is asked for, and draws only when something changes',
    async () => {
      await hull.locator('svg.hull-still').waitFor();
      expect(hasThree(scripts)).toBe(false);
      await open(hull);
      await expect.poll(async () => (await watchedIn(page)).drawn).toBeGreaterThan(0);
      expect(hasThree(scripts)).toBe(true);
      await picture(hull);
      const { drawn } = await watchedIn(page);
      await frames(page, 20);
      expect((await watchedIn(page)).drawn).toBe(drawn);
      await hull.getByRole('application').press('ArrowLeft');
      await expect.poll(async () => (await watchedIn(page)).drawn).toBeGreaterThan(drawn);
    },
  );

  expect(await violations()).toStrictEqual([]);
  const canvas = hull.getByRole('application');

  await step('is turned by keys, with words for where the eye is, and put back', async () => {
    await canvas.press('Home');
    await reads(seenFrom(hull), 'Seen from the starboard bow, 24° above level.');
    await canvas.focus();
    const first = await picture(hull);
    await reads(seenFrom(hull), 'Seen from the starboard bow, 24° above level.');
    for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    await reads(seenFrom(hull), 'Seen from starboard, 34° above level.');
    const turned = await picture(hull);
    expect(turned).not.toBe(first);
    await page.keyboard.press('+');
    await reads(seenFrom(hull), /, 1\.3 times as large\.$/);
    expect(await picture(hull)).not.toBe(turned);
    await page.keyboard.press('Home');
    await reads(seenFrom(hull), 'Seen from the starboard bow, 24° above level.');
    expect(await picture(hull)).toBe(first);
    await hull.getByRole('button', { name: 'From above' }).click();
    await reads(seenFrom(hull), 'Seen from straight above.');
    expect(await picture(hull)).not.toBe(first);
  });

  await step('is turned by the mouse; its wheel scrolls the page until the hull is in hand', async () => {
    await canvas.press('Home');
    await reads(seenFrom(hull), 'Seen from the starboard bow, 24° above level.');
    await canvas.blur();
    const first = await picture(hull);
    const { x, y, width, height } = (await canvas.boundingBox())!;
    await page.mouse.move(x + width / 2, y + height / 2);
    const before = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, -40);
    await expect.poll(() => page.evaluate(() => scrollY)).not.toBe(before);
    await page.mouse.wheel(0, 40);
    await expect.poll(() => page.evaluate(() => scrollY)).toBe(before);
    await reads(seenFrom(hull), 'Seen from the starboard bow, 24° above level.');
    await page.mouse.down();
    await page.mouse.move(x + width / 2 + width / 4, y + height / 2, { steps: 4 });
    await page.mouse.up();
    // A quarter of the width turns her by 45°.
    await reads(seenFrom(hull), 'Seen from starboard, 24° above level.');
    expect(await picture(hull)).not.toBe(first);
    await page.mouse.wheel(0, -600);
    await reads(seenFrom(hull), /times as large/);
    expect(await page.evaluate(() => scrollY)).toBe(before);
  });

  await step('has the colours of the page', async () => {
    const light = await picture(hull);
    await page.emulateMedia({ colorScheme: 'dark' });
    await expect.poll(() => picture(hull)).not.toBe(light);
    await page.emulateMedia({ colorScheme: 'light' });
    await expect.poll(() => picture(hull)).toBe(light);
  });

  await step('is printed as the still picture', async () => {
    expect(await hull.locator('svg.hull-still').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await hull.locator('svg.hull-still').isVisible()).toBe(true);
    expect(await hull.locator('canvas').isVisible()).toBe(false);
    expect(await hull.locator('button').first().isVisible()).toBe(false);
    // The words are of the one in hand.
    expect(await seenFrom(hull).isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
  });

  await step('fits a narrower window without being asked again', async () => {
    await page.setViewportSize({ width: 500, height: 900 });
    await expect
      .poll(() =>
        hull.locator('canvas').evaluate((canvas: HTMLCanvasElement) => {
          const { clientWidth, clientHeight } = canvas.parentElement!;
          return [canvas.width - clientWidth, canvas.height - clientHeight];
        }),
      )
      .toStrictEqual([0, 0]);
  });
});

test('follows a finger, and two fingers, on a phone', async () => {
  const { hull } = await openLines({ width: 390, height: 800, touch: true });
  const canvas = await open(hull);
  expect(await canvas.evaluate((element) => getComputedStyle(element).touchAction)).toBe('none');
  const first = await picture(hull);
  const finger = (kind: string, pointerId: number, clientX: number, clientY: number) =>
    canvas.dispatchEvent(kind, {
      pointerId,
      pointerType: 'touch',
      clientX,
      clientY,
      isPrimary: pointerId === 1,
    });
  // Made-up fingers can't be captured; a real one is, so that it may leave the picture.
  await canvas.evaluate((element) =>
    Object.assign(element, { setPointerCapture: () => undefined, releasePointerCapture: () => undefined }),
  );
  await finger('pointerdown', 1, 100, 100);
  await finger('pointermove', 1, 140, 100);
  await expect.poll(() => picture(hull)).not.toBe(first);
  await finger('pointerdown', 2, 180, 100);
  await finger('pointermove', 2, 220, 100);
  await reads(seenFrom(hull), /, 2\.0 times as large\.$/);
  await finger('pointerup', 1, 140, 100);
  await finger('pointerup', 2, 220, 100);
  const last = await picture(hull);
  await finger('pointermove', 1, 200, 100);
  expect(await picture(hull)).toBe(last);
});

test('follows an edit at once, shows a second version, and lets go of the graphics card when put down', async () => {
  const { page, hull } = await openLines();
  const still = await stillPaths(hull);
  await press(page, 'Keep this and try another');
  await openSheet(page);
  await page.locator('.boat-sheet').locator('input').first().waitFor();
  await type(page, 'frame3.sheer.halfBreadth', '1100 mm');
  await expect.poll(() => hull.locator('svg.hull-still .ghost').count()).toBeGreaterThan(0);
  expect(await stillPaths(hull)).not.toBe(still);
  await open(hull);
  const two = await picture(hull);
  await type(page, 'frame3.sheer.halfBreadth', '1200 mm');
  await hull.scrollIntoViewIfNeeded();
  await expect.poll(() => picture(hull)).not.toBe(two);
  expect((await watchedIn(page)).live).toBe(1);
  await hull.getByRole('button', { name: 'Show the still picture' }).click();
  await expect.poll(async () => (await watchedIn(page)).live).toBe(0);
  expect(await hull.locator('canvas').count()).toBe(0);
  expect(await hull.locator('svg.hull-still').isVisible()).toBe(true);
});

test('stands still and says why without WebGL, fetches nothing, and can be seen from other sides', async () => {
  const { hull, scripts } = await openLines({ webGl: false });
  const first = await stillPaths(hull);
  await hull.getByRole('button', { name: 'Turn the hull by hand' }).click();
  await reads(seenFrom(hull), /no WebGL.*stands still/);
  expect(await hull.locator('canvas').count()).toBe(0);
  expect(await hull.locator('svg.hull-still').isVisible()).toBe(true);
  await hull.getByRole('button', { name: 'From port' }).click();
  await reads(seenFrom(hull), /^Seen from port, level\./);
  expect(await stillPaths(hull)).not.toBe(first);
  expect(hasThree(scripts)).toBe(false);
});
