/** Every notebook on a phone: the rules of access, nothing wider than the window, keys for a thumb. */
import type { Page } from 'playwright';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { type AtRest, cellsAtRest, questionsAtRest, tableOf, unreadable } from './at-rest';
import { cellsIn, violations } from './axe';
import { onePage } from './harness';
import {
  arrived,
  allColours,
  lessons,
  lookThrough,
  readThrough,
  openFolds,
  openGroups,
  tooSmall,
  tooWide,
  turnTo,
  unfold,
  wear,
  withCellsOfTheirOwn,
} from './steps';

const page = onePage({
  width: 360,
  touch: true,
  reducedMotion: 'reduce',
  storage: { 'battenbook dress': 'sun' },
});

/** All cells of all notebooks, as they open. */
const rows: AtRest[] = [];

/** The cells of the first notebook, once axe has looked at them: a plain cell is one and the same wherever it stands. */
let shared: readonly string[] = [];

describe.each(readThrough)('%s', (notebook) => {
  /** Itself, where it has pictures and fields that the first has not. */
  const newPictures = withCellsOfTheirOwn.filter((one) => one === notebook);
  beforeAll(async () => {
    await page().setViewportSize({ width: 390, height: 844 });
    await turnTo(page(), notebook);
    rows.push(...(await cellsAtRest(page(), notebook)));
    if (newPictures.length > 0) await openFolds(page());
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

  test.each(newPictures)(
    'each field is one line of a thumb’s height, or two where a choice is long, its label on two at the most and nothing of it cut',
    async () => {
      await page().setViewportSize({ width: 360, height: 900 });
      const closed = await page().evaluate(() => {
        const groups = [...document.querySelectorAll<HTMLDetailsElement>('details.field-group:not([open])')];
        for (const group of groups) group.open = true;
        return groups.length;
      });
      expect(closed).toBeGreaterThan(0);
      const lines = await linesOfFields(page());
      expect(lines.length).toBeGreaterThan(10);
      // A label that has a line of its own takes less than a thumb's height, but where its key stands beside it.
      const isHigh = (height: number, isBelow: boolean) =>
        isBelow ? height >= 60 && height <= 92 : height >= 44 && height <= 46;
      const amiss = lines.filter(({ height, isBelow, cut }) => !isHigh(height, isBelow) || cut.length > 0);
      expect(amiss).toStrictEqual([]);
      expect(await tooSmall(page())).toStrictEqual([]);
      await page().evaluate(() => {
        for (const group of document.querySelectorAll<HTMLDetailsElement>('details.field-group'))
          group.open = false;
      });
    },
  );

  test.each(newPictures)(
    'what is written in drawings and graphs lies over nothing else written, and none of it is cut',
    async () => {
      await lookThrough(page());
      expect(await unreadable(page())).toStrictEqual([]);
    },
  );

  // What the notebooks share is seen in all colours in the first of them: in the others, what only they have. Another
  // dress changes nothing but colours.
  test.each(notebook === readThrough[0] ? allColours : (['dark'] as const))('axe, %s', async (colours) => {
    await page().setViewportSize({ width: 390, height: 900 });
    await wear(page(), colours);
    await lookThrough(page());
    const isFirst = notebook === readThrough[0];
    const coloursOnly = isFirst && colours !== allColours[0];
    // No colour of a cell turns on the width: those of all cells are seen at the desk, here those of one.
    const without = coloursOnly ? shared.slice(1) : isFirst ? [] : shared;
    expect(await violations(page(), { without, coloursOnly })).toStrictEqual([]);
    if (isFirst) shared = await cellsIn(page());
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

test.each(lessons)(
  'the lesson %s is no wider than the window, its keys are wide enough, and axe finds nothing',
  async (lesson) => {
    await page().setViewportSize({ width: 360, height: 900 });
    await turnTo(page(), lesson);
    await wear(page(), 'light');
    await lookThrough(page());
    expect(await tooWide(page())).toBe(0);
    expect(await tooSmall(page())).toStrictEqual([]);
    expect(await violations(page(), { without: shared })).toStrictEqual([]);
  },
);

test('what waits for a guess is not told at the foot of the window either', async () => {
  await turnTo(page(), 'where-the-weight-goes');
  const cell = page().locator('#cell-weights');
  await cell.locator('input').first().focus();
  await expect.poll(() => page().locator('.dock-answer').innerText()).toBe('Weights and their centre');
  expect(await cell.locator('.answer .figure').count()).toBe(0);
});

/** The lines of all fields in sight: how high, whether the field stands below its label, and what of it is cut. */
const linesOfFields = (at: Page) =>
  at.evaluate(() => {
    /** The arrow that the browser draws in a choice, and the air before it, px. */
    const ARROW = 20;
    const pen = document.createElement('canvas').getContext('2d')!;
    /** Answers of a choice that are longer than their field could be, and the one chosen where it is longer than it is. */
    const cutIn = (select: HTMLSelectElement, line: number): string[] => {
      const { fontWeight, fontSize, fontFamily, paddingLeft, paddingRight } = getComputedStyle(select);
      pen.font = `${fontWeight} ${fontSize} ${fontFamily}`;
      const edges = Number.parseFloat(paddingLeft) + Number.parseFloat(paddingRight) + ARROW;
      return [...select.options].flatMap(({ label, selected }) => {
        const room = (selected ? select.clientWidth : line) - edges;
        // Half a pixel for rounding.
        return pen.measureText(label).width > room + 0.5 ? label : [];
      });
    };
    return [...document.querySelectorAll<HTMLElement>('.cell .input .line')]
      .filter((line) => line.checkVisibility())
      .map((line) => {
        const input = line.querySelector('input');
        const select = line.querySelector('select');
        const label = line.querySelector('label');
        const isCut = input !== null && input.scrollWidth > input.clientWidth + 1;
        return {
          field: line.closest<HTMLElement>('[data-quantity]')?.dataset['quantity'],
          height: line.clientHeight,
          isBelow:
            select !== null &&
            select.getBoundingClientRect().top > (label?.getBoundingClientRect().bottom ?? 0) - 1,
          cut: [...(isCut ? [input.value] : []), ...(select ? cutIn(select, line.clientWidth) : [])],
        };
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
