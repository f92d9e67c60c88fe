import { readdirSync } from 'node:fs';
import { describe, expect, inject, test } from 'vitest';
import { contentSecurityPolicy } from '../../src/build/policy';
import { manifestOf } from '../tools/first-load';
import { inRoot } from '../tools/root.mjs';
import { openPage, troublesOf } from './harness';
import { notebooks, smallNotebooks } from './steps';

test.each([
  ['the site that ships', 'site', 'notebooks'],
  ['the site of the small ones', 'smallSite', 'tests/browser/notebooks'],
] as const)('%s holds the notebooks of its folder and no other', (_, site, folder) => {
  const built = Object.keys(manifestOf(inject(site))).filter((key) => key.endsWith('.md'));
  const written = readdirSync(inRoot(folder)).map((file) => `${folder}/${file}`);
  expect(written.length).toBeGreaterThan(1);
  expect(built.toSorted()).toStrictEqual(written.toSorted());
});

test.each([
  ['notebook', 'notebooks', notebooks],
  ['small notebook', 'tests/browser/notebooks', smallNotebooks],
] as const)('every %s can be named by a journey', (_, folder, named) => {
  const written = readdirSync(inRoot(folder)).map((file) => file.replace(/\.md$/, ''));
  // The words of the trade have journeys of their own.
  expect(new Set<string>([...named, 'words'])).toStrictEqual(new Set(written));
});

test('opens the built page in English and in universal time', async () => {
  const page = await openPage();
  expect(await page.title()).toMatch(/Battenbook/);
  const settings = await page.evaluate(() => [
    navigator.language,
    Intl.DateTimeFormat().resolvedOptions().timeZone,
  ]);
  expect(settings).toStrictEqual(['en-US', 'UTC']);
});

test('gives each page the size, scheme, motion and storage asked for', async () => {
  const page = await openPage({
    width: 390,
    height: 800,
    colorScheme: 'dark',
    reducedMotion: 'reduce',
    touch: true,
    storage: { harness: 'kept' },
  });
  const seen = await page.evaluate(() => ({
    width: innerWidth,
    dark: matchMedia('(prefers-color-scheme: dark)').matches,
    still: matchMedia('(prefers-reduced-motion: reduce)').matches,
    finger: matchMedia('(pointer: coarse)').matches,
    kept: localStorage.getItem('harness'),
  }));
  expect(seen).toStrictEqual({ width: 390, dark: true, still: true, finger: true, kept: 'kept' });
});

describe('a page that another journey has left', () => {
  test('is filled, by a journey that changes what it can', async () => {
    const page = await openPage({ width: 500, colorScheme: 'dark' });
    await page.evaluate(() => {
      localStorage.setItem('planted', 'kept');
      sessionStorage.setItem('planted', 'kept');
      document.body.append('planted');
      location.hash = '#planted';
    });
    await page.route('**/*.svg', (route) => route.abort());
    await page.context().newPage();
    await page.mouse.move(100, 100);
    expect(await page.evaluate(() => localStorage.getItem('planted'))).toBe('kept');
  });

  test('is as good as new', async () => {
    const page = await openPage();
    const seen = await page.evaluate(async () => ({
      kept: [localStorage.getItem('planted'), sessionStorage.getItem('planted')],
      text: document.body.textContent.includes('planted'),
      // No way back but to the blank page it came from.
      isAtStart: location.hash === '' && history.length <= 2,
      window: [innerWidth, innerHeight, matchMedia('(prefers-color-scheme: dark)').matches],
      answered: (await fetch('icon.svg')).ok,
    }));
    expect(seen).toStrictEqual({
      kept: [null, null],
      text: false,
      isAtStart: true,
      window: [1280, 900, false],
      answered: true,
    });
    expect(page.context().pages()).toStrictEqual([page]);
  });
});

test('ships under the strict policy', async () => {
  const page = await openPage();
  const policy = page.locator('meta[http-equiv="Content-Security-Policy"]');
  expect(await policy.getAttribute('content')).toBe(contentSecurityPolicy);
});

test.each([
  ['a logged error', 'console: planted', () => console.error('planted')],
  [
    'a thrown error',
    'error: planted',
    () =>
      void setTimeout(() => {
        throw new Error('planted');
      }),
  ],
  [
    'a breach of the policy',
    'violates the following Content Security Policy',
    () => {
      const script = document.createElement('script');
      script.textContent = 'globalThis.planted = 1';
      document.body.append(script);
    },
  ],
])('notices %s', async (_what, trouble, provoke) => {
  const page = await openPage();
  await page.evaluate(provoke);
  await expect.poll(() => troublesOf(page).join('\n')).toContain(trouble);
  troublesOf(page).length = 0;
});
