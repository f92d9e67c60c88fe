/** On the wall, at the width of a projector: large, and nothing given away before it is asked for. */
import { expect, test } from 'vitest';
import { violations } from './axe';
import { onePage } from './harness';
import {
  arrived,
  cell,
  field,
  notebooks,
  placeOf,
  reload,
  tooWide,
  turnTo,
  turnToQuestion,
  type,
} from './steps';

const page = onePage({
  ...placeOf('short-build', {}),
  width: 1920,
  height: 1080,
  reducedMotion: 'reduce',
});

const every = onePage({ width: 1920, height: 1080, at: '?wall#/the-build' });

/** What a covered cell must not hold. */
const GIVEN_AWAY =
  '.answer, .figure, .in-words, .warning, .cell svg, .steps, .in-sight > dl, .ripple, .hull-in-sight';
const plate = (instance: string, name: string | RegExp) =>
  cell(page(), instance).getByRole('button', { name });
const figure = (instance: string, at = 0) => cell(page(), instance).locator('.figure b').nth(at);
/** All that is written in the page, seen or not, attributes with it. */
const written = () => page().evaluate(() => document.body.innerHTML);

/** Answers as they stand on a desk, to be looked for when they are covered. */
let answers: string[] = [];

test('from the head’s More, nothing of an answer is left in the page', async () => {
  await arrived(page());
  answers = await page().locator('.answer .figure b').allInnerTexts();
  expect(answers.length).toBeGreaterThan(5);
  await page().locator('.desk > summary').click();
  await page().getByRole('button', { name: 'On the wall: large, answers covered' }).click();
  await page().locator('.wall-bar').waitFor();
  expect(new URL(page().url()).search).toBe('?wall');
  expect(await page().locator(':focus').innerText()).toBe('Show all answers');
  expect(await page().locator(GIVEN_AWAY).count()).toBe(0);
  const html = await written();
  const fields = await page()
    .locator('.input input')
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
  // A field may ask for what another cell answers; that is given.
  expect(
    answers.filter((text) => /\d{2}/.test(text) && !fields.includes(text) && html.includes(text)),
  ).toStrictEqual([]);
  expect(await page().locator('.prose > p .live.blank').count()).toBe(5);
});

test('one answer is shown by keyboard, without the others; its key keeps the focus and covers it again', async () => {
  await plate('bend', 'of breaking Show the answer').focus();
  await page().keyboard.press('Enter');
  await figure('bend').waitFor();
  expect(await cell(page(), 'bend').locator('.figure').count()).toBe(1);
  expect(await page().locator('.answer').count()).toBe(1);
  expect(await page().locator(':focus').innerText()).toMatch(/^Cover/);
  // The same number in the text below goes with it.
  expect(await page().locator('.prose > p .live.blank').count()).toBe(4);
  await page().keyboard.press('Enter');
  expect(await page().locator(GIVEN_AWAY).count()).toBe(0);
  expect(await page().locator('.prose > p .live.blank').count()).toBe(5);
});

test('what is shown stays shown while a number changes, and what is covered stays covered', async () => {
  await plate('bend', 'of breaking Show the answer').click();
  const before = await figure('bend').innerText();
  await type(page(), 'bend.thickness', '30 mm');
  await expect.poll(() => figure('bend').innerText()).not.toBe(before);
  expect(await page().locator('.answer').count()).toBe(1);
  // A field in hand brings no answers to the window's edge.
  await field(page(), 'bend.thickness').focus();
  await page().evaluate(() => scrollBy(0, 500));
  expect(await page().locator('.in-sight > dl, .warning, .ripple').count()).toBe(0);
});

test('all are shown and covered at once; the letters are 25 mm high at 5 m, and axe finds nothing', async () => {
  expect(await violations(page())).toStrictEqual([]);
  await page().getByRole('button', { name: 'Show all answers' }).click();
  await arrived(page());
  await expect.poll(() => page().locator('.answer').count()).toBe(answers.length);
  await cell(page(), 'bend').locator('svg').first().waitFor();
  expect(await page().locator('.live.blank').count()).toBe(0);
  expect(await smallLetters()).toStrictEqual([]);
  const units = page().getByLabel('Units');
  await units.selectOption('ft-in 1/16, lb');
  expect(await cutFigures()).toStrictEqual([]);
  await units.selectOption('mm, kg');
  expect(await tooWide(page())).toBe(0);
  expect(await violations(page())).toStrictEqual([]);
  await page().getByRole('button', { name: 'Cover all answers' }).click();
  await expect.poll(() => page().locator(GIVEN_AWAY).count()).toBe(0);
});

test('it is kept, and left by its key', async () => {
  await reload(page());
  await page().locator('.wall-bar').waitFor();
  expect(await page().locator(GIVEN_AWAY).count()).toBe(0);
  await page().getByRole('button', { name: 'Leave the wall' }).click();
  await page().locator('.hull-in-sight').waitFor();
  expect(new URL(page().url()).search).toBe('');
  await expect.poll(() => page().locator('.answer').count()).toBe(answers.length);
});

test.each([...notebooks])('by its link every answer of %s is covered', async (notebook) => {
  await turnTo(every(), notebook);
  // Of the quick answers one is open at a time.
  if (notebook === 'quick-answers') await turnToQuestion(every(), 'quickBend');
  expect(await every().locator('.cell .plate.covered').count()).toBeGreaterThan(0);
  expect(await every().locator(GIVEN_AWAY).count()).toBe(0);
  expect(await tooWide(every())).toBe(0);
});
/** Large figures that stand out of their place, or over the key beside them. */
const cutFigures = (): Promise<string[]> =>
  page()
    .locator('.answers > .plate')
    .evaluateAll((plates) =>
      plates.flatMap((one) => {
        const { right } = one.getBoundingClientRect();
        const key = one.querySelector('.plate-key')!.getBoundingClientRect();
        return [...one.querySelectorAll('.figure b')].flatMap((figure) => {
          const box = figure.getBoundingClientRect();
          const isOver = box.right > key.left && box.bottom > key.top && box.top < key.bottom;
          return box.right > right + 1 || isOver ? [figure.textContent] : [];
        });
      }),
    );

/** Texts in letters that are less than 1/200 of 5 m high, on a picture 2 m wide: capitals are 0.66 of the type's size. */
const smallLetters = (): Promise<string[]> =>
  page().evaluate(() => {
    const least = 5000 / 200 / 0.66 / (2000 / 1920);
    return [...document.querySelectorAll('.column *')].flatMap((one) => {
      const says = [...one.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim(),
      );
      if (!says || !one.checkVisibility() || one.closest('.unseen, option, math')) return [];
      const size = Number.parseFloat(getComputedStyle(one).fontSize) * one.currentCSSZoom;
      return size < least - 0.5 ? [`${one.tagName} ${one.className} ${size.toFixed(1)} px`] : [];
    });
  });
