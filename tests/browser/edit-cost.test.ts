/** What an edit has the browser lay out and paint: no more than it must, and no part of it twice. */
import { expect, test } from 'vitest';
import { answers, atRest, cell, field, openNotebook, type } from './steps';

test('a cell is laid out and painted by itself, and nothing of it is cut off at its edge', async () => {
  const page = await openNotebook('short-build');
  const cells = page.locator('.cell[data-cell]');
  const contained = await cells.evaluateAll((all) => all.map((one) => getComputedStyle(one).contain));
  expect(contained.length).toBeGreaterThan(3);
  expect(new Set(contained)).toStrictEqual(new Set(['content']));
  const over = await cells.evaluateAll((all) =>
    all.flatMap((one) => {
      const edge = one.getBoundingClientRect();
      return [...one.querySelectorAll('*')]
        .filter((part) => part.checkVisibility() && !part.closest('.unseen, .cell-table'))
        .filter((part) => {
          const { left, right, bottom, width } = part.getBoundingClientRect();
          return width > 1 && (left < edge.left - 1 || right > edge.right + 1 || bottom > edge.bottom + 1);
        })
        .map((part) => part.outerHTML.slice(0, 100));
    }),
  );
  expect(over).toStrictEqual([]);
});

test('an edit reads no layout between writes', async () => {
  const page = await openNotebook('short-build');
  await field(page, 'scarf.slope').scrollIntoViewIfNeeded();
  await type(page, 'scarf.slope', '1 in 9');
  await atRest(page);
  const protocol = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  protocol.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await protocol.send('Tracing.start', { traceConfig: { includedCategories: ['devtools.timeline'] } });
  await field(page, 'scarf.slope').focus();
  await page.keyboard.press('Backspace');
  await page.keyboard.press('8');
  await atRest(page);
  const ended = new Promise((resolve) => protocol.once('Tracing.tracingComplete', resolve));
  await protocol.send('Tracing.end');
  await ended;
  const layouts = events.filter(({ name }) => name === 'Layout');
  expect(layouts.length).toBeGreaterThan(0);
  const ours = events.filter(
    ({ name, args }) => name === 'FunctionCall' && args?.data?.url?.includes('/assets/'),
  );
  expect(ours.length).toBeGreaterThan(0);
  // What a frame measures it has laid out once, and paints as it is.
  const frames = events.filter(({ name }) => name === 'FireAnimationFrame');
  const forced = layouts.filter(
    (layout) =>
      ours.some((call) => isWithin(layout, call)) && !frames.some((frame) => isWithin(layout, frame)),
  );
  expect(forced.map(({ args }) => args)).toStrictEqual([]);
});

test('an edit moves what is near the window; what is far follows at rest, and at once for paper', async () => {
  const page = await openNotebook('short-build');
  await page.setViewportSize({ width: 1280, height: 500 });
  const both = async () => [await answers(page, 'bend'), await answers(page, 'scarf')];
  const before = await both();
  await cell(page, 'scarf').evaluate(async (scarf) => {
    scarf.scrollIntoView({ block: 'end', behavior: 'instant' });
    for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
  });
  const moved = await page.evaluate(async () => {
    const read = () => ({
      bend: document.querySelector('#cell-bend .answers')?.textContent,
      'prose of bend': document.querySelector('#cell-bend + p')?.textContent,
      scarf: document.querySelector('#cell-scarf .answers')?.textContent,
      'what turns on scarf': document.body.textContent.includes('longer than the sole of a plane'),
    });
    const moves = async (does: () => void) => {
      const was = Object.entries(read());
      does();
      // All that is drawn for it at once is drawn before the page does anything else.
      for (let turn = 0; turn < 50; turn += 1) await Promise.resolve();
      const is = new Map<string, unknown>(Object.entries(read()));
      return was.filter(([what, text]) => is.get(what) !== text).map(([what]) => what);
    };
    const typed = await moves(() => {
      const thickness = document.querySelector<HTMLInputElement>('[data-quantity="scarf.thickness"] input');
      thickness!.value = '23 mm';
      thickness!.dispatchEvent(new InputEvent('input', { bubbles: true }));
    });
    // Whoever reads the page from without sees that something is behind.
    const says = document.documentElement.dataset['followed'];
    const printed = await moves(() => dispatchEvent(new Event('beforeprint')));
    dispatchEvent(new Event('afterprint'));
    return { typed, says, printed };
  });
  expect(moved).toStrictEqual({
    typed: ['scarf'],
    says: undefined,
    printed: ['bend', 'prose of bend', 'what turns on scarf'],
  });
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await both()).toStrictEqual(before);
});

test('a drawing out of the window keeps its height, is not laid out, and stands whole on paper', async () => {
  const page = await openNotebook('short-build');
  const drawn = page.locator('.cell .drawn');
  const seen = () =>
    drawn.evaluateAll((all) =>
      all.map((one) => {
        const { top, bottom, height } = one.getBoundingClientRect();
        const svg = one.querySelector('svg')!;
        return {
          isIn: bottom > 0 && top < innerHeight,
          isLaidOut: svg.checkVisibility({ contentVisibilityAuto: true }),
          isAsHigh: Math.abs(height - svg.getBoundingClientRect().height) < 1,
        };
      }),
    );
  await expect.poll(async () => (await seen()).some(({ isIn, isLaidOut }) => !isIn && !isLaidOut)).toBe(true);
  expect((await seen()).filter(({ isAsHigh }) => !isAsHigh)).toStrictEqual([]);
  // Read and pressed it can be all the same.
  const count = await drawn.count();
  expect(count).toBeGreaterThan(3);
  const protocol = await page.context().newCDPSession(page);
  const { nodes } = await protocol.send('Accessibility.getFullAXTree');
  const told = (role: string, name: RegExp) =>
    nodes.filter((node) => !node.ignored && node.role?.value === role && name.test(String(node.name?.value)))
      .length;
  expect(told('image', /\d/)).toBeGreaterThanOrEqual(count);
  expect(told('button', /^Enlarge: /)).toBeGreaterThanOrEqual(count);
  await page.emulateMedia({ media: 'print' });
  await expect.poll(async () => (await seen()).every(({ isLaidOut }) => isLaidOut)).toBe(true);
});

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Begin and length, microseconds. */
  readonly ts: number;
  readonly dur?: number;
  readonly args?: { readonly data?: { readonly url?: string } };
}

const isWithin = (inner: TraceEvent, outer: TraceEvent): boolean =>
  inner.pid === outer.pid &&
  inner.tid === outer.tid &&
  inner.ts >= outer.ts &&
  inner.ts + (inner.dur ?? 0) <= outer.ts + (outer.dur ?? 0);
