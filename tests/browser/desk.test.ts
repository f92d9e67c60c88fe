/** Every notebook in a wide window: on paper, its drawings read out, the rules of access, nothing cut off. */
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { type AtRest, cellsAtRest, questionsAtRest, shareWithin, tableOf, unreadable } from './at-rest';
import { cellsIn, violations } from './axe';
import { onePage } from './harness';
import { lights, onPaper } from './paper';
import {
  allAnswers,
  arrived,
  allColours,
  lookThrough,
  type Notebook,
  readThrough,
  tooWide,
  turnTo,
  openFolds,
  openGroups,
  unfold,
  wear,
  withCellsOfTheirOwn,
} from './steps';

const page = onePage({ reducedMotion: 'reduce', storage: { 'battenbook dress': 'sun' } });

/** All cells of all notebooks, as they open. */
const rows: AtRest[] = [];

/** The cells of the first notebook, once axe has looked at them: a plain cell is one and the same wherever it stands. */
let shared: readonly string[] = [];

test('axe is awake: a key without a name is found', async () => {
  await arrived(page());
  await page().evaluate(() => document.querySelector('main')!.prepend(document.createElement('button')));
  const found = await violations(page(), { within: 'main > button' });
  await page().evaluate(() => document.querySelector('main > button')!.remove());
  expect(found.join()).toMatch(/^button-name at/);
});

describe.each(readThrough)('%s', (notebook) => {
  const isFirst = notebook === readThrough[0];
  /** Itself, where it has pictures that the first has not. */
  const newPictures = withCellsOfTheirOwn.filter((one) => one === notebook);

  // With graphs and tables opened, as they are printed: what is at rest has a test of its own.
  beforeAll(async () => {
    await turnTo(page(), notebook);
    rows.push(...(await cellsAtRest(page(), notebook)));
    if (newPictures.length > 0) await openFolds(page());
  });

  /** As it is printed, with everything that moves let move. */
  async function forPaper(colorScheme: 'light' | 'dark') {
    onTestFinished(() => page().emulateMedia({ media: null, reducedMotion: 'reduce' }));
    await wear(page(), colorScheme);
    await page().emulateMedia({ media: 'print', reducedMotion: 'no-preference' });
  }

  /** What of each cell is looked for on paper; of one without a drawing, no texts of it. */
  const printedOf = () =>
    page()
      .locator('.cell[data-cell]')
      .evaluateAll((cells) =>
        cells.map((cell) => ({
          question: cell.querySelector<HTMLElement>('.question')!.innerText,
          figures: [...cell.querySelectorAll<HTMLElement>('.answer .figure.first b')].map(
            (one) => one.innerText,
          ),
          drawn: cell.querySelector('figure.drawing')
            ? [...(cell.querySelector('figure.drawing svg')?.querySelectorAll('text') ?? [])].map(
                (one) => one.textContent,
              )
            : null,
        })),
      );

  test('fills pages of A4 with its text, its answers and its drawings', async () => {
    await wear(page(), 'light');
    const { pages, text: read } = await onPaper(page());
    expect(pages).toBeGreaterThan(1);
    // The fonts have one glyph for the micro sign and the Greek letter, and a reader takes it for the letter.
    const text = read.replaceAll('μ', 'µ');
    // What heads a print stands on paper alone: it is not the screen that was printed.
    expect(text).toContain('· mm, kg ·');
    expect(text).toContain((await page().locator('h1').first().innerText()).trim());
    for (const { question, figures, drawn } of await printedOf()) {
      expect(text).toContain(question);
      for (const figure of figures) expect(text).toContain(figure.replaceAll(/\s+/g, ' '));
      if (!drawn) continue;
      // The sentence under the drawing is part of it; its later lines are drawn in pieces.
      const caption = (drawn.at(-1) ?? '').slice(0, 18);
      expect(caption.length).toBe(18);
      expect(text).toContain(caption);
    }
    expect(text).not.toMatch(/\bUndo\b|\bRedo\b|Keep this and try another|What moves|Save boat/);
  });

  // Ink and paper are given by one sheet of styles for all notebooks: seen in the first, which has all there is.
  test.each((['light', 'dark'] as const).filter(() => isFirst))(
    'is printed black on white without keys, contents or what stands alongside, from %s',
    async (colours) => {
      await forPaper(colours);
      const visible = async (places: readonly string[]) => {
        const counts = await Promise.all(
          places.map((place) => page().locator(place).filter({ visible: true }).count()),
        );
        return places.filter((_, index) => counts[index]! > 0);
      };
      expect(await visible(['.masthead .keys', '.contents', '.alongside', '.skip', '.step'])).toStrictEqual(
        [],
      );
      const printed = ['h1', 'article.prose > p', '.answer .figure b', 'figure.drawing svg'];
      expect(await visible(printed)).toStrictEqual(printed);
      const { ink, ground } = await lights(page());
      expect(ink).toBeLessThan(0.3);
      expect(ground).toBeGreaterThan(0.98);
    },
  );

  test.each(newPictures)('is not cut off on a narrow sheet: drawings stay within the page', async () => {
    // Paper moves no number: seen where most of them stand.
    const answersNow = () => (isFirst ? allAnswers(page()) : null);
    const before = await answersNow();
    onTestFinished(() => page().setViewportSize({ width: 1280, height: 900 }));
    await forPaper('light');
    // The width of A4 within its margins, at 96 px an inch.
    await page().setViewportSize({ width: 680, height: 1000 });
    const drawings = page().locator('main figure svg');
    expect(await drawings.count()).toBeGreaterThan(0);
    const over = await drawings.evaluateAll((all) =>
      all
        .filter((svg) => svg.getBoundingClientRect().right > innerWidth + 1)
        .map((svg) => svg.getAttribute('aria-label')),
    );
    expect(over).toStrictEqual([]);
    expect(await answersNow()).toStrictEqual(before);
  });

  test.each(newPictures)(
    'each drawing is an image with a label that says its numbers; graphs come when near',
    async () => {
      await lookThrough(page());
      const drawings = page().locator(
        '.drawn, .drawn > svg, .chart-place > svg, .chart-place > figure > svg',
      );
      const labels = await drawings.evaluateAll((all) =>
        all.map((svg) => [svg.getAttribute('role'), svg.getAttribute('aria-label') ?? '']),
      );
      const cells = await page().locator('.cell[data-cell]').count();
      expect(labels.length).toBeGreaterThanOrEqual(cells);
      for (const [role, label] of labels) {
        expect(role).toBe('img');
        expect(label).toMatch(/.{20,}/);
      }
      const figures = await page()
        .locator('.drawn, .drawn > svg')
        .evaluateAll((all) => all.filter((svg) => !/\d/.test(svg.getAttribute('aria-label') ?? '')).length);
      expect(figures).toBe(0);
      // A graph has its numbers in a table besides.
      expect(await page().locator('figure.chart:not(:has(details.chart-data))').count()).toBe(0);
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
  test.each(isFirst ? allColours : (['light'] as const))('axe, %s', async (colours) => {
    await wear(page(), colours);
    await lookThrough(page());
    const coloursOnly = isFirst && colours !== allColours[0];
    const without = isFirst ? [] : shared;
    expect(await violations(page(), { without, coloursOnly })).toStrictEqual([]);
    if (isFirst) shared = await cellsIn(page());
  });

  const inTables: readonly Notebook[] = ['the-build', 'fair-lines', 'frames-standing-true'];
  test.each(inTables.filter((one) => one === notebook))('no table is cut', async () => {
    const units = page().locator('.unit-pick');
    onTestFinished(async () => void (await units.selectOption('mm, kg')));
    await lookThrough(page());
    expect(await page().locator('.cell table').filter({ visible: true }).count()).toBeGreaterThan(2);
    const cut = () =>
      page().evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.cell table')]
          .filter((table) => table.offsetWidth > (table.parentElement?.clientWidth ?? 0))
          .map((table) => table.textContent.trim().slice(0, 40)),
      );
    expect(await cut()).toStrictEqual([]);
    await units.selectOption('ft-in 1/16, lb');
    await expect.poll(() => page().locator('.cell-table').first().innerText()).toContain(' in');
    await expect.poll(cut).toStrictEqual([]);
  });

  test('nothing is wider than the window, also with working and inputs opened', async () => {
    await lookThrough(page());
    expect(await tooWide(page())).toBe(0);
    const first = page().locator('.cell[data-cell]').first();
    await unfold(first, 'Working');
    await openGroups(first);
    await arrived(page());
    expect(await tooWide(page())).toBe(0);
  });
});

/** A window of the size that this page has, and what no cell may pass, px. */
const SCREEN = 900;
const MOST = 1350;
/** A drawing is read first. */
const LEAST_PICTURE = 420;

test('at rest nine cells of ten fit one window, none passes one and a half, and each drawing is large enough', async () => {
  rows.push(...(await questionsAtRest(page())));
  console.log(`At 1280 x 900, px:\n${tableOf(rows)}`);
  expect(rows.length).toBeGreaterThan(60);
  expect(rows.filter(({ height }) => height > MOST)).toStrictEqual([]);
  expect(shareWithin(rows, SCREEN)).toBeGreaterThanOrEqual(0.9);
  expect(rows.filter(({ picture }) => picture < LEAST_PICTURE)).toStrictEqual([]);
});
