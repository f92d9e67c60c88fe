/** The service worker: work without a network, and no new build before the reader agrees. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { expect, inject, onTestFinished, test } from 'vitest';
import { manifestOf } from '../tools/first-load';
import { serveSite } from '../tools/site.mjs';
import { openPage, serve, watch } from './harness';

/** Registers the worker, if the page has not, and waits until it answers for the page. */
async function controlled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.register('./sw.js');
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done));
  });
}

test('a new page opens after the server is gone, with a query too', async () => {
  const site = await serve();
  const page = await openPage({ url: site.url, offline: true });
  await controlled(page);
  // The solver and the hull in the round are kept when the page is at rest.
  const hull = manifestOf(inject('site'))['src/page/hull3d/hull-by-hand.ts']!.file;
  const isAllKept = () =>
    page.evaluate(
      async (parts) => {
        const kept = await (await caches.open((await caches.keys())[0]!)).keys();
        return parts.every((part) => kept.some(({ url }) => url.includes(part)));
      },
      ['highs', hull],
    );
  await expect.poll(isAllKept).toBe(true);
  await site.close();

  // A page of its own: a reload might be answered from the browser's other cache.
  const later = await page.context().newPage();
  watch(later);
  await later.goto(`${site.url}?later=1`);
  expect(await later.title()).toMatch(/Battenbook/);
  await expect.poll(() => later.locator('#page').textContent()).not.toBe('');
  const manifest = await later.evaluate(async () => (await fetch('battenbook.webmanifest')).ok);
  expect(manifest).toBe(true);
  // The finder is fetched when it is asked for, and all that it finds is on the shelf.
  await later.keyboard.press('/');
  await later.getByRole('combobox', { name: 'A word of the trade' }).fill('gunwale');
  const found = later.getByRole('listbox').getByRole('option');
  await expect.poll(() => found.allInnerTexts()).toContainEqual(expect.stringMatching(/sheer clamp/));
});

test('a new build waits until it is asked in, then drops the old files', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'battenbook-'));
  onTestFinished(() => rmSync(dir, { recursive: true }));
  cpSync(inject('site'), dir, { recursive: true });
  const site = await serveSite(dir);
  onTestFinished(() => site.close());
  const page = await openPage({ url: site.url, offline: true });
  await controlled(page);
  const [old] = await page.evaluate(() => caches.keys());

  const worker = readFileSync(join(dir, 'sw.js'), 'utf8');
  writeFileSync(join(dir, 'sw.js'), worker.replace(/battenbook-[0-9a-f]{12}/, 'battenbook-next'));
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
  const isWaiting = () =>
    page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
  await expect.poll(isWaiting).toBe(true);
  expect(await page.evaluate(() => caches.keys())).toContain(old);

  await page.evaluate(async () => {
    (await navigator.serviceWorker.getRegistration())?.waiting?.postMessage('skip-waiting');
  });
  await expect.poll(() => page.evaluate(() => caches.keys())).toStrictEqual(['battenbook-next']);
});
