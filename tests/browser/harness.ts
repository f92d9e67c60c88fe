/**
 * What a journey needs: pages of the built site in real Chromium, always in the same language
 * and time zone, that fail their test when anything went wrong behind its back.
 *
 * Files of journeys import `openPage`, `shot` and, to stop or restart a server, `serve`.
 */
import { mkdirSync } from 'node:fs';
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, expect, inject, onTestFinished } from 'vitest';
import { launchOptions } from '../tools/chromium.mjs';
import { inRoot } from '../tools/root.mjs';
import { serveSite } from '../tools/site.mjs';

export interface PageOptions {
  /** CSS pixels; 1280 x 900 when not given. */
  readonly width?: number;
  readonly height?: number;
  readonly colorScheme?: 'light' | 'dark';
  readonly reducedMotion?: 'reduce' | 'no-preference';
  /** A finger instead of a mouse, as on a phone. */
  readonly touch?: boolean;
  /** What follows the site's address, such as `#scarf` or `?try=1`. */
  readonly at?: string;
  /** What local storage holds before the page first runs. */
  readonly storage?: Readonly<Record<string, string>>;
  /** What is done with the page before anything of ours runs in it. */
  readonly before?: (page: Page) => Promise<void>;
  /** Lets the service worker in; journeys that are not about it go quicker without. */
  readonly offline?: boolean;
  /** The site of the small notebooks in place of the one that ships. */
  readonly small?: boolean;
  /** Another server than the one all journeys of the file share. */
  readonly url?: string;
}

type Site = Awaited<ReturnType<typeof serveSite>>;

let browser: Promise<Browser> | undefined;
const shared = new Map<'site' | 'smallSite', Promise<Site>>();
const troubles = new WeakMap<Page, string[]>();

afterAll(async () => {
  await (await browser)?.close();
  for (const site of shared.values()) await (await site).close();
});

/** A server of the built site for one test alone, which may close it early. */
export async function serve(): Promise<Site> {
  return serveSite(inject('site'));
}

/** The address of a site that all journeys of the file share. */
async function addressOf(which: 'site' | 'smallSite'): Promise<string> {
  const site = shared.get(which) ?? serveSite(inject(which));
  shared.set(which, site);
  return (await site).url;
}

/**
 * Opens the site in a browser profile of its own. When the test ends the page is closed and
 * the test fails if it logged an error, threw one, or broke the security policy.
 */
export async function openPage(options: PageOptions = {}): Promise<Page> {
  browser ??= chromium.launch(launchOptions());
  const url = options.url ?? (await addressOf(options.small ? 'smallSite' : 'site'));
  const profile = await browser;
  const context = await profile.newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 900 },
    colorScheme: options.colorScheme ?? 'light',
    reducedMotion: options.reducedMotion ?? 'no-preference',
    hasTouch: options.touch ?? false,
    isMobile: options.touch ?? false,
    locale: 'en-US',
    timezoneId: 'UTC',
    serviceWorkers: options.offline ? 'allow' : 'block',
    storageState: {
      cookies: [],
      origins: [
        {
          origin: new URL(url).origin,
          localStorage: Object.entries(options.storage ?? {}).map(([name, value]) => ({ name, value })),
        },
      ],
    },
  });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  watch(page);
  await options.before?.(page);
  await page.goto(new URL(options.at ?? '', url).href);
  return page;
}

/** Watches any page, also one that the page under test opened, for what must not happen. */
export function watch(page: Page): void {
  const seen: string[] = [];
  troubles.set(page, seen);
  page.on('console', (message) => {
    if (message.type() === 'error') seen.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => seen.push(`error: ${error.message}`));
  onTestFinished(() => expect(seen, 'what went wrong in the page').toStrictEqual([]));
}

/** What went wrong in a page so far. A test that provokes an error reads it here and empties the list. */
export function troublesOf(page: Page): string[] {
  return troubles.get(page) ?? [];
}

/** Saves a picture of the whole page as node_modules/.cache/shots/<name>.png, to be looked at. */
export async function shot(page: Page, name: string): Promise<void> {
  const dir = inRoot('node_modules/.cache/shots');
  mkdirSync(dir, { recursive: true });
  await page.screenshot({ path: `${dir}/${name}.png`, fullPage: true });
}
