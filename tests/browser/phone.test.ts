/** Every notebook on a phone: the rules of access, nothing wider than the window, keys for a thumb. */
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { type AtRest, cellsAtRest, questionsAtRest, tableOf, unreadable } from './at-rest';
import { violations } from './axe';
import { onePage } from './harness';
import {
  arrived,
  allColours,
  lookThrough,
  readThrough,
  openFolds,
  openGroups,
  tooSmall,
  tooWide,
  turnTo,
  unfold,
  wear,
} from './steps';

const page = onePage({
  width: 360,
  touch: true,
  reducedMotion: 'reduce',
  storage: { 'battenbook dress': 'sun' },
});

/** All cells of all notebooks, as they open. */
const rows: AtRest[] = [];

describe.each(readThrough)('%s', (notebook) => {
  beforeAll(async () => {
    await page().setViewportSize({ width: 390, height: 844 });
    await turnTo(page(), notebook);
    rows.push(...(await cellsAtRest(page(), notebook)));
    await openFolds(page());
    await page().setViewportSize({ width: 360, height: 900 });
  });

  test('nothing is wider than a window of 360 px, also with working and inputs opened', async () => {
    await lookThrough(page());
    expect(await tooWide(page())).toBe(0);
    const first = page().locator('.cell[data-cell]').first();
    await unfold(first, 'Working');
    await openGroups(first);
    await arrived(page());
    expect(await tooWide(page())).toBe(0);
    await first.evaluate((opened) => {
      for (const details of opened.querySelectorAll('details')) details.open = false;
    });
  });

  test('each field is one line of a thumb’s height, its label on two at the most and nothing of it cut', async () => {
    await page().setViewportSize({ width: 360, height: 900 });
    const closed = await page().evaluate(() => {
      const groups = [...document.querySelectorAll<HTMLDetailsElement>('details.field-group:not([open])')];
      for (const group of groups) group.open = true;
      return groups.length;
    });
    expect(closed).toBeGreaterThan(0);
    const lines = await page()
      .locator('.cell .input .line')
      .evaluateAll((all) =>
        all.map((line) => {
          const input = line.querySelector('input');
          const isCut = input !== null && input.scrollWidth > input.clientWidth + 1;
          return [line.textContent.slice(0, 40), line.clientHeight, isCut] as const;
        }),
      );
    expect(lines.length).toBeGreaterThan(10);
    expect(lines.filter(([, height, isCut]) => height < 44 || height > 46 || isCut)).toStrictEqual([]);
    expect(await tooSmall(page())).toStrictEqual([]);
    await page().evaluate(() => {
      for (const group of document.querySelectorAll<HTMLDetailsElement>('details.field-group'))
        group.open = false;
    });
  });

  test('what is written in drawings and graphs lies over nothing else written, and none of it is cut', async () => {
    await lookThrough(page());
    expect(await unreadable(page())).toStrictEqual([]);
  });

  // What the notebooks share is seen in all colours in the first of them.
  test.each(notebook === readThrough[0] ? allColours : (['dark'] as const))('axe, %s', async (colours) => {
    await page().setViewportSize({ width: 390, height: 900 });
    await wear(page(), colours);
    await lookThrough(page());
    expect(await violations(page())).toStrictEqual([]);
  });

  test('keys and fields are wide enough for a thumb', async () => {
    await page().setViewportSize({ width: 390, height: 900 });
    const opening = [
      page().locator('.desk > summary'),
      page().getByRole('button', { name: /the hull and what moved/ }),
    ];
    const press = async () => {
      for (const one of opening) await one.click();
    };
    await press();
    onTestFinished(press);
    expect(await tooSmall(page())).toStrictEqual([]);
  });
});

/** A phone's window as the cells were measured in it, px. */
const SCREEN = 844;

test('at rest nine cells of ten fit two windows, with answers and deciding fields in the first', async () => {
  await page().setViewportSize({ width: 390, height: SCREEN });
  rows.push(...(await questionsAtRest(page())));
  console.log(`At 390 x 844, px:\n${tableOf(rows)}`);
  expect(rows.length).toBeGreaterThan(60);
  const fit = rows.filter(({ height, fields }) => height <= 2 * SCREEN && fields <= SCREEN);
  expect(fit.length / rows.length).toBeGreaterThanOrEqual(0.9);
});
