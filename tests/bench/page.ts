/**
 * From an edit to the picture on the screen: the built site in Chromium, as it is and with the processor
 * slowed four times, as on a phone.
 */
import { chromium, type CDPSession, type Page } from 'playwright';
import { launchOptions } from '../tools/chromium.mjs';
import { serveSite } from '../tools/site.mjs';
import { builtSite } from '../tools/site.mjs';
import { type Section, spread } from './table';

const EDITS = 20;
const WARM_UP = 5;

interface Scene {
  readonly name: string;
  /** What is opened after the site's address. */
  readonly at: string;
  /** A button to press first. */
  readonly press?: string;
  /** A key that brings the field. */
  readonly opens?: string;
  readonly field: string;
  /** What is put in, one after the other, over and over. */
  readonly values: readonly string[];
}

const scenes: readonly Scene[] = [
  {
    name: 'typing scarf.thickness',
    at: '#/the-build',
    field: '[data-quantity="scarf.thickness"] input[type=text]',
    values: ['18 mm', '19 mm', '20 mm'],
  },
  {
    name: 'sliding laminate.plies',
    at: '#/the-build',
    opens: '[data-quantity="laminate.plies"] .more-key',
    field: '[data-quantity="laminate.plies"] input[type=range]',
    values: ['2', '3', '4', '5'],
  },
  {
    name: 'typing an offset: a new hull',
    at: '#/the-build',
    press: 'The boat’s own sheet',
    field: '.boat-sheet [data-quantity$=".sheer.height"] input[type=text]',
    values: ['620 mm', '622 mm', '624 mm'],
  },
];

/** One edit: milliseconds from its dispatch. */
interface Edit {
  /** Until the event has been handled. */
  readonly handled: number;
  /** Until the last figure, drawing or graph in view has changed. */
  readonly cells: number;
  /** Until the frame that shows that change was painted. */
  readonly painted: number;
  /** Until the list of what moved stands, and the hull beside it; it waits on purpose until the cells are painted. */
  readonly alongside: number;
}
const columns = ['work', 'script', 'handled', 'cells', 'painted', 'alongside'] as const;

export async function pageResponse(): Promise<Section> {
  const site = await serveSite(await builtSite());
  const browser = await chromium.launch(launchOptions());
  const rows: (readonly (string | number)[])[] = [];
  for (const slower of [1, 4]) {
    for (const scene of scenes) {
      const page = await browser.newPage({
        viewport: { width: 1280, height: 900 },
        locale: 'en-US',
        serviceWorkers: 'block',
      });
      const protocol = await page.context().newCDPSession(page);
      await open(page, site.url, scene);
      await protocol.send('Emulation.setCPUThrottlingRate', { rate: slower });
      rows.push([
        `${scene.name}${slower === 1 ? '' : `, ${slower}x slower`}`,
        ...(await figures(page, protocol, scene)),
      ]);
      await page.close();
    }
  }
  await browser.close();
  await site.close();
  return {
    title: 'From an edit to the screen, in Chromium',
    says: [
      `The build's notebook at 1280 x 900; ${EDITS} edits, ms, median and in brackets the one that 95 of 100 don't pass.`,
      'A frame is 16.7 ms. From the edit: "handled", its event; "cells", the last change of a figure, drawing or graph in',
      'view; "painted", the end of the frame that shows it; "alongside", the list of what moved, which waits for that frame',
      'on purpose. "Work" is all that the main thread did for the edit, list and paint included; "script", what of it is script.',
    ].join('\n'),
    head: ['', ...columns],
    rows,
  };
}

async function open(page: Page, url: string, { at, press, opens, field }: Scene): Promise<void> {
  await page.goto(new URL(at, url).href, { waitUntil: 'networkidle' });
  if (press !== undefined) await page.getByRole('button', { name: press }).first().click();
  if (opens !== undefined) await page.locator(opens).first().click();
  await page.locator(field).first().scrollIntoViewIfNeeded();
  await page.locator(field).first().focus();
  // Pictures come after the answers, and what is out of view when the page is at rest.
  await page.waitForTimeout(1500);
}

async function figures(page: Page, protocol: CDPSession, { field, values }: Scene): Promise<string[]> {
  await protocol.send('Performance.enable');
  const spent = async () => {
    const { metrics } = await protocol.send('Performance.getMetrics');
    const milliseconds = (name: string) =>
      (metrics.find((metric) => metric.name === name)?.value ?? Number.NaN) * 1000;
    return { work: milliseconds('TaskDuration'), script: milliseconds('ScriptDuration') };
  };
  const once = async (value: string | null) => {
    const before = await spent();
    const edit = await page.evaluate(editOnce, { field, value });
    const after = await spent();
    return { ...edit, work: after.work - before.work, script: after.script - before.script };
  };
  const many = async (value: (i: number) => string | null) => {
    for (let i = 0; i < WARM_UP; i += 1) await once(value(i));
    const edits: Awaited<ReturnType<typeof once>>[] = [];
    for (let i = WARM_UP; i < WARM_UP + EDITS; i += 1) edits.push(await once(value(i)));
    return (key: (typeof columns)[number]) => spread(edits.map((edit) => edit[key]));
  };
  // Watching costs something too; what it costs without an edit is taken off.
  const idle = await many(() => null);
  const edited = await many((i) => values[i % values.length] ?? '');
  return columns.map((key) => {
    const own = key === 'work' || key === 'script' ? idle(key).median : 0;
    const { median, p95 } = edited(key);
    return `${(median - own).toFixed(1)} (${(p95 - own).toFixed(0)})`;
  });
}

/** Runs in the page: puts a value in as a hand would, and watches for a while what changes. Null puts nothing in. */
async function editOnce({ field, value }: { field: string; value: string | null }): Promise<Edit> {
  const WATCHED = 250;
  const input = document.querySelector<HTMLInputElement>(field);
  if (!input) throw new Error(`there is no ${field}`);
  const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const afterPaint = () =>
    new Promise((resolve) => {
      const channel = new MessageChannel();
      channel.port1.addEventListener('message', resolve, { once: true });
      channel.port1.start();
      channel.port2.postMessage(null);
    });
  await nextFrame();
  await afterPaint();

  let cells = 0;
  let alongside = 0;
  const watch = new MutationObserver((changes) => {
    for (const { target } of changes) {
      const element = target instanceof Element ? target : target.parentElement;
      if (element?.closest('.alongside')) alongside = performance.now();
      else if (element?.closest('.cell, .boat-sheet') && isInView(element)) cells = performance.now();
    }
  });
  const isInView = (element: Element) => {
    const { top, bottom } = element.getBoundingClientRect();
    return bottom > 0 && top < innerHeight;
  };
  watch.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  const start = performance.now();
  if (value !== null) {
    input.value = value;
    input.dispatchEvent(new Event('input', { bubbles: true }));
  }
  const handled = performance.now();
  let painted = start;
  while (performance.now() - start < WATCHED) {
    await nextFrame();
    await afterPaint();
    // The first paint after the last change is the one that shows it.
    if (cells > painted) painted = performance.now();
  }
  watch.disconnect();
  const since = (moment: number) => Math.max(0, moment - start);
  return {
    handled: since(handled),
    cells: since(cells),
    painted: since(painted),
    alongside: since(alongside),
  };
}
