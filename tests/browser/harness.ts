/**
 * What a journey needs: pages of the built site in real Chromium, always in the same language
 * and time zone, that fail their test when anything went wrong behind its back.
 *
 * Files of journeys import `openPage` or `onePage` and, to stop or restart a server, `serve`.
 */
import { type Browser, chromium, type Page } from 'playwright';
import { afterAll, afterEach, beforeAll, expect, inject, onTestFinished } from 'vitest';
import { launchOptions } from '../tools/chromium.mjs';
import { manifestOf } from '../tools/first-load';
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
  /** Another server than the one that journeys share. */
  readonly url?: string;
  /** A profile that no other test had or will have: for journeys that change the browser under the page. */
  readonly alone?: boolean;
}

type Site = Awaited<ReturnType<typeof serveSite>>;

// The files of a worker share this module, and with it one browser and two servers, which end with the worker.
let browser: Promise<Browser> | undefined;
const shared = new Map<'site' | 'smallSite', Promise<Site>>();
const troubles = new WeakMap<Page, string[]>();
/** Pages that a test has left, of mice and of fingers; what they keep of the site's files need not be fetched or compiled again. */
const left = { mouse: [] as Page[], finger: [] as Page[] };

/** A server of the built site for one test alone, which may close it early. */
export async function serve(): Promise<Site> {
  return serveSite(inject('site'));
}

/**
 * Where a small notebook fetches what comes late from, to be held up or waited for: chunks go by their hash alone.
 * @param what a file of the project that is fetched by itself, `src/...`, or a chunk that the build gives a name
 */
export function fetchedFrom(what: string): string {
  const manifest = manifestOf(inject('smallSite'));
  const chunk = manifest[what] ?? Object.values(manifest).find(({ name }) => name === what);
  if (!chunk) throw new Error(`nothing is fetched for ${what} by itself`);
  return `**/${chunk.file}`;
}

/** The address of a site that all journeys share. No file of it changes while they run, so that a browser may keep them. */
async function siteOf(which: 'site' | 'smallSite'): Promise<string> {
  const site = shared.get(which) ?? serveSite(inject(which), 0, { 'Cache-Control': 'max-age=3600' });
  shared.set(which, site);
  return (await site).url;
}

/**
 * Opens the site in a browser that has kept nothing of the builder's. When the test ends the page is left and
 * the test fails if it logged an error, threw one, or broke the security policy.
 */
export async function openPage(options: PageOptions = {}): Promise<Page> {
  const page = await pageFor(options);
  onTestFinished(({ task }) => leave(page, options, task.result?.state === 'pass'));
  watch(page);
  await go(page, options);
  return page;
}

/** One that a test has left, where nothing is asked for that only a new profile can give. */
async function pageFor(options: PageOptions): Promise<Page> {
  const page = isAlone(options) ? undefined : left[pointerOf(options)].pop();
  if (!page) return newPage(options);
  await page.setViewportSize(sizeOf(options));
  await page.emulateMedia(mediaOf(options));
  return page;
}

/** Whether a page is to be thrown away after its test: its profile, or what runs in it before ours, was made for it. */
const isAlone = ({ alone, storage, before, offline, url }: PageOptions): boolean =>
  Boolean(alone || storage || before || offline || url);

/** Puts a page back for the next test: on no site, alone in its profile, and with nothing kept but the site's files. */
async function leave(page: Page, options: PageOptions, isWell = true): Promise<void> {
  const context = page.context();
  if (!isWell || isAlone(options) || page.isClosed()) return context.close();
  await Promise.all(
    context
      .pages()
      .filter((other) => other !== page)
      .map((other) => other.close()),
  );
  for (const event of ['console', 'pageerror', 'dialog', 'request', 'response', 'download'] as const)
    page.removeAllListeners(event);
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  // What the page saves on its way out is saved before it is thrown away.
  await page.goto(new URL('icon.svg', await addressOf(options)).href);
  await page.evaluate(() => {
    localStorage.clear();
    sessionStorage.clear();
  });
  await page.goto('about:blank');
  await context.clearPermissions();
  const devtools = await context.newCDPSession(page);
  await devtools.send('Page.resetNavigationHistory');
  await devtools.detach();
  await page.mouse.move(0, 0);
  left[pointerOf(options)].push(page);
}

const pointerOf = ({ touch }: PageOptions): keyof typeof left => (touch ? 'finger' : 'mouse');
const sizeOf = ({ width = 1280, height = 900 }: PageOptions) => ({ width, height });
const mediaOf = ({ colorScheme = 'light', reducedMotion = 'no-preference' }: PageOptions) => ({
  media: null,
  colorScheme,
  reducedMotion,
});

/**
 * One page for all tests of a file or of a group: each takes it as the last one left it. What goes
 * wrong behind its back fails the test in which it went wrong, and what went wrong before, the first.
 */
export function onePage(options: PageOptions = {}): () => Page {
  let page: Page | undefined;
  const opened = (): Page => {
    if (!page) throw new Error('the page is not open yet: use it inside a test or a hook');
    return page;
  };
  beforeAll(async () => {
    page = await pageFor(options);
    listen(page);
    await go(page, options);
  });
  afterEach(() => expect(troublesOf(opened()).splice(0), 'what went wrong in the page').toStrictEqual([]));
  afterAll(() => page && leave(page, options));
  return opened;
}

/** What leads to the page that is asked for. */
async function addressOf({ url, at, small }: PageOptions): Promise<string> {
  return new URL(at ?? '', url ?? (await siteOf(small ? 'smallSite' : 'site'))).href;
}

async function go(page: Page, options: PageOptions): Promise<void> {
  await options.before?.(page);
  await page.goto(await addressOf(options));
}

/**
 * A journey loads the page, presses a few keys and ends: what runs is cold. Compiling it on more threads, ever better,
 * takes a quarter of the time of a machine of two cores, and pays for itself only later.
 */
const COLD = ['--js-flags=--single-threaded --no-turbofan'];

/** A page of a profile of its own that has not gone anywhere yet. */
async function newPage(options: PageOptions): Promise<Page> {
  browser ??= chromium.launch({ ...launchOptions(), args: COLD });
  const profile = await browser;
  const context = await profile.newContext({
    viewport: sizeOf(options),
    ...mediaOf(options),
    hasTouch: options.touch ?? false,
    isMobile: options.touch ?? false,
    locale: 'en-US',
    timezoneId: 'UTC',
    serviceWorkers: options.offline ? 'allow' : 'block',
    ...(options.storage && { storageState: await storageOf(options) }),
  });
  context.setDefaultTimeout(60_000);
  return context.newPage();
}

async function storageOf(options: PageOptions) {
  const localStorage = Object.entries(options.storage ?? {}).map(([name, value]) => ({ name, value }));
  return { cookies: [], origins: [{ origin: new URL(await addressOf(options)).origin, localStorage }] };
}

/** Watches any page, also one that the page under test opened, for what must not happen. */
export function watch(page: Page): void {
  const seen = listen(page);
  onTestFinished(() => expect(seen, 'what went wrong in the page').toStrictEqual([]));
}

function listen(page: Page): readonly string[] {
  const seen: string[] = [];
  troubles.set(page, seen);
  page.on('console', (message) => {
    if (message.type() === 'error') seen.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => seen.push(`error: ${error.message}`));
  return seen;
}

/** What went wrong in a page so far. A test that provokes an error reads it here and empties the list. */
export function troublesOf(page: Page): string[] {
  return troubles.get(page) ?? [];
}
