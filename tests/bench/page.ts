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
/** How long the page is watched after each: until it is at rest again, ms. */
const WATCHED = 900;
/** After a change, until the frame that shows it is done, ms. */
const TWO_FRAMES = 34;

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
  /** Until the last figure, drawing or graph in view has changed, the hull in sight among them. */
  readonly changed: number;
  /** Until the frame that shows that change was painted. */
  readonly painted: number;
  /** Until the list of what moved stands; it waits on purpose until the cells are painted. */
  readonly alongside: number;
}

/** What the main thread did for one edit, ms of its own time, whoever else has the processor meanwhile. */
interface Work {
  readonly script: number;
  /** What is not script: style, layout, paint and the handing over of it; until the list of what moved stands. */
  readonly own: number;
  /** The same until the page is at rest, and what is far has caught up. */
  readonly ownInAll: number;
  /** Boxes and texts laid out anew, in all. */
  readonly laidOut: number;
}
const columns = ['changed', 'painted', 'alongside', 'script', 'own', 'ownInAll', 'laidOut'] as const;
const heads = ['changed', 'painted', 'alongside', 'script', 'own', 'own in all', 'laid out'];

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
      'A frame is 16.7 ms. From the edit: "changed", the last change of a figure, drawing or graph in view, or of the hull in',
      'sight; "painted", the end of the frame that shows it; "alongside", the list of what moved, which waits for that frame on purpose. Of the',
      'main thread\'s own time: "script"; "own", style, layout and paint until the list stands, and "in all", until what is',
      'far has caught up; "laid out", how many boxes and texts are laid out anew in all.',
    ].join('\n'),
    head: ['', ...heads],
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
  const once = async (i: number) =>
    page.evaluate(editOnce, { field, value: values[i % values.length] ?? '', watched: WATCHED });
  for (let i = 0; i < WARM_UP; i += 1) await once(i);
  const events: TraceEvent[] = [];
  const keep = ({ value }: { value: unknown[] }) => events.push(...(value as TraceEvent[]));
  protocol.on('Tracing.dataCollected', keep);
  await protocol.send('Tracing.start', {
    traceConfig: { includedCategories: ['devtools.timeline', 'blink.user_timing'] },
  });
  const edits: Edit[] = [];
  for (let i = WARM_UP; i < WARM_UP + EDITS; i += 1) edits.push(await once(i));
  const ended = new Promise((resolve) => protocol.once('Tracing.tracingComplete', resolve));
  await protocol.send('Tracing.end');
  await ended;
  protocol.off('Tracing.dataCollected', keep);
  const works = worksIn(events, edits);
  return columns.map((key) => {
    const { median, p95 } = spread(edits.map((edit, i) => ({ ...edit, ...works[i]! })[key]));
    return key === 'laidOut' ? `${median} (${p95})` : `${median.toFixed(1)} (${p95.toFixed(0)})`;
  });
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Begin, length, and what of it the thread had the processor; microseconds. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly beginData?: { readonly dirtyObjects?: number } };
}

const SCRIPT = new Set(['FunctionCall', 'EvaluateScript', 'RunMicrotasks']);
const OWN = new Set([
  'UpdateLayoutTree',
  'Layout',
  'HitTest',
  'PrePaint',
  'Paint',
  'Layerize',
  'Commit',
  'IntersectionObserverController::computeIntersections',
]);

/** Of each edit between its two marks. */
function worksIn(events: readonly TraceEvent[], edits: readonly Edit[]): Work[] {
  const marks = (name: string) => events.filter((event) => event.name === name).sort((a, b) => a.ts - b.ts);
  const ends = marks('edit over');
  return marks('edit').map((start, i) => {
    const end = ends[i]!.ts; // each edit ends
    const main = events
      .filter(
        ({ ph, pid, tid, ts }) =>
          ph === 'X' && pid === start.pid && tid === start.tid && ts >= start.ts && ts < end,
      )
      .sort((a, b) => a.ts - b.ts);
    const { painted, alongside } = edits[i]!;
    const soon = start.ts + 1000 * (Math.max(painted, alongside) + TWO_FRAMES);
    const own = outermost(main, OWN);
    const script = outermost(main, SCRIPT);
    // What script has the browser lay out is no script.
    const within = own.filter((part) => script.some((call) => part.ts >= call.ts && part.ts < endOf(call)));
    return {
      script: timeOf(script) - timeOf(within),
      own: timeOf(own.filter(({ ts }) => ts < soon)),
      ownInAll: timeOf(own),
      laidOut: main.reduce(
        (sum, { name, args }) => sum + (name === 'Layout' ? (args?.beginData?.dirtyObjects ?? 0) : 0),
        0,
      ),
    };
  });
}

const endOf = ({ ts, dur = 0 }: TraceEvent) => ts + dur;
const timeOf = (parts: readonly TraceEvent[]) => parts.reduce((sum, { tdur = 0 }) => sum + tdur / 1000, 0);

/** Those of these names that lie in no other of them. */
function outermost(main: readonly TraceEvent[], names: ReadonlySet<string>): TraceEvent[] {
  let until = 0;
  return main.filter((event) => {
    if (!names.has(event.name) || event.ts < until) return false;
    until = endOf(event);
    return true;
  });
}

/** Runs in the page: puts a value in as a hand would, and watches for a while what changes. It measures nothing meanwhile. */
async function editOnce({
  field,
  value,
  watched,
}: {
  field: string;
  value: string;
  watched: number;
}): Promise<Edit> {
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

  const changes: (readonly [moment: number, at: Node])[] = [];
  const painted: number[] = [];
  const watch = new MutationObserver((records) => {
    const now = performance.now();
    for (const { target } of records) changes.push([now, target]);
    void nextFrame()
      .then(afterPaint)
      .then(() => painted.push(performance.now()));
  });
  watch.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  performance.mark('edit');
  const start = performance.now();
  input.value = value;
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await new Promise((resolve) => setTimeout(resolve, watched));
  performance.mark('edit over');
  watch.disconnect();

  let changed = start;
  let alongside = start;
  for (const [moment, at] of changes) {
    const element = at instanceof Element ? at : at.parentElement;
    const { top = 0, bottom = 0 } = element?.getBoundingClientRect() ?? {};
    if (element?.closest('.ripple')) alongside = moment;
    else if (element?.closest('.column, .hull-in-sight') && bottom > 0 && top < innerHeight) changed = moment;
  }
  // The first paint after the last change is the one that shows it.
  const shown = painted.find((moment) => moment > changed) ?? changed;
  return { changed: changed - start, painted: shown - start, alongside: alongside - start };
}
