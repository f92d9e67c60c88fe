// Pictures of the built page for looking at it by eye: phone and desk width, light and dark,
// and the print. npm run look [-- --url '#/the-build' [--cell bend]] -> node_modules/.cache/shots
// With --cell, one cell of that notebook by itself, as large as it is drawn.

import './ready.mjs';
import { mkdirSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { inRoot } from './root.mjs';

const { values } = parseArgs({
  options: { url: { type: 'string', default: '' }, cell: { type: 'string', default: '' } },
});
const { chromium } = await import('playwright');
const { launchOptions } = await import('./chromium.mjs');
const { builtSite, serveSite } = await import('./site.mjs');

const shots = inRoot('node_modules/.cache/shots');
const name =
  `${values.url} ${values.cell}`.replaceAll(/[^a-z0-9]+/gi, '-').replaceAll(/^-|-$/g, '') || 'page';
mkdirSync(shots, { recursive: true });
const site = await serveSite(await builtSite());
const browser = await chromium.launch(launchOptions());

for (const width of [390, 1280]) {
  for (const colorScheme of /** @type {const} */ (['light', 'dark'])) {
    const page = await open({ viewport: { width, height: 900 }, colorScheme });
    await save(`${name}-${width}-${colorScheme}.png`, (path) => picture(page, path));
    if (width === 1280 && colorScheme === 'light') await save(`${name}.pdf`, (path) => page.pdf({ path }));
    await page.close();
  }
}
await browser.close();
await site.close();

/**
 * @param {import('playwright').Page} page
 * @param {string} path
 */
async function picture(page, path) {
  if (!values.cell) return page.screenshot({ path, fullPage: true });
  const cell = page.locator(`#cell-${values.cell}`);
  await cell.scrollIntoViewIfNeeded();
  await page.waitForFunction(() => !document.querySelector('.cell [aria-busy]'));
  return cell.screenshot({ path });
}

/** @param {import('playwright').BrowserContextOptions} options */
async function open(options) {
  const page = await browser.newPage({ ...options, locale: 'en-US', timezoneId: 'UTC' });
  page.on('console', (message) => console.log(`console ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => console.log(`error: ${error.message}`));
  await page.goto(new URL(values.url, site.url).href, { waitUntil: 'networkidle' });
  await page.evaluate(() => document.fonts.ready.then(() => null));
  return page;
}

/**
 * @param {string} file
 * @param {(path: string) => Promise<unknown>} write
 */
async function save(file, write) {
  await write(`${shots}/${file}`);
  console.log(`node_modules/.cache/shots/${file}`);
}
