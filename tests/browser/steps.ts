/** What a builder does at the page, and what is seen there, as single steps that journeys are made of. */
import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { expect } from 'vitest';
import { lessons } from '../notebook/lesson/six-lessons';
import { inRoot } from '../tools/root.mjs';
import { openPage, type PageOptions } from './harness';

export const notebooks = [
  'quick-answers',
  'the-build',
  'one-thick-or-two-thin',
  'fair-lines',
  'frames-standing-true',
  'bend-join-fasten',
  'the-skin',
  'cloth-resin-paint',
  'on-the-water-on-paper',
  'over-out-and-home',
  'the-list',
  ...lessons,
] as const;
export type Notebook = (typeof notebooks)[number];

/** Lessons: what is in their cells is seen where the work is, but not what they ask. */
export { lessons };

/** Those that are read from top to bottom; of the list of questions one is open at a time (`quick.test.ts`). */
export const readThrough = notebooks.filter(
  (id) => id !== 'quick-answers' && !lessons.some((one) => one === id),
);

/** The cells of a notebook, as its text places them. */
const placedIn = (id: string): readonly string[] =>
  readFileSync(inRoot(`notebooks/${id}.md`), 'utf8').match(/^```cell .+$/gm) ?? [];

/**
 * Those of them with a cell that the first has not: a cell that both place alike is one and the same, with its drawing,
 * and what is seen of it in the first need not be seen again.
 */
export const withCellsOfTheirOwn: readonly Notebook[] = readThrough.filter(
  (id, at) => at === 0 || placedIn(id).some((line) => !placedIn(readThrough[0]!).includes(line)),
);

/**
 * Notebooks made for journeys (`tests/browser/notebooks`): two or three cells under their own names. A page of
 * twenty cells takes seconds to open and to draw anew; a journey that works with one of them needs no more.
 */
export const smallNotebooks = [
  'ask',
  'ask-further',
  'boards',
  'booklet',
  'fastening',
  'formula-day',
  'frame-pattern',
  'keelson',
  'lines',
  'misread',
  'offsets',
  'quick-scarf',
  'scarf-and-resin',
  'short-build',
] as const;
export type SmallNotebook = (typeof smallNotebooks)[number];

/** Which site a notebook is in, and its address there. */
export const placeOf = (
  notebook: Notebook | SmallNotebook,
  options: PageOptions,
): Pick<PageOptions, 'small' | 'at'> => ({
  small: smallNotebooks.some((one) => one === notebook),
  at: `${options.at ?? ''}#/${notebook}`,
});

/** Opens a notebook and waits until all its cells have come. */
export async function openNotebook(
  notebook: Notebook | SmallNotebook,
  options: PageOptions = {},
): Promise<Page> {
  const page = await openPage({ ...options, ...placeOf(notebook, options) });
  await arrived(page);
  return page;
}

/** Opens one of the quick answers, alone, by the name of its cell. */
export async function openQuestion(name: string, options: PageOptions = {}): Promise<Page> {
  const page = await openPage({ ...options, at: `#/quick-answers/${name}` });
  await cell(page, name).waitFor();
  await arrived(page);
  return page;
}

/** Turns to another quick answer in the page that is open. */
export async function turnToQuestion(page: Page, name: string): Promise<void> {
  await page.evaluate((of) => {
    location.hash = `#/quick-answers/${of}`;
  }, name);
  await cell(page, name).waitFor();
  await arrived(page);
}

/** Names of the questions in the list, in its order. */
export const questionsOf = (page: Page): Promise<string[]> =>
  page
    .locator('.by-stage a[data-question]')
    .evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset['question'] ?? ''));

/** What is being fetched, and the drawings that come at rest, those far from the window last. */
const toCome = '[aria-busy="true"], .cell .pictures:not(:has(figure svg, .no-picture))';

/** Waits until nothing on the page is still being fetched, and every cell has its drawing. */
export async function arrived(page: Page): Promise<void> {
  const all = page.waitForFunction(
    (waiting) =>
      document.querySelector('.cell[data-cell], .question-list') && !document.querySelector(waiting),
    toCome,
    { polling: 50, timeout: 60_000 },
  );
  await all.catch(async (cause: unknown) => {
    const waiting = await page
      .locator(toCome)
      .evaluateAll((some) => some.map((one) => one.outerHTML.slice(0, 120)));
    throw new Error(`has not come: ${waiting.join('\n') || 'a cell'}`, { cause });
  });
}

/** Turns to another notebook in the page that is open, as its contents list does, and waits until all its cells have come. */
export async function turnTo(page: Page, notebook: Notebook): Promise<void> {
  await page.evaluate((name) => {
    location.hash = `#/${name}`;
  }, notebook);
  await page.locator(`.contents a[href="#/${notebook}"][aria-current="page"]`).waitFor({ state: 'attached' });
  await arrived(page);
}

/** Loads the page anew; edits are saved on the way out at the latest. */
export async function reload(page: Page): Promise<void> {
  await page.reload();
  await arrived(page);
}

export const cell = (page: Page, name: string): Locator => page.locator(`.cell[data-cell="${name}"]`);

/** The row of an input, in a cell or in the boat's sheet. */
export const row = (page: Page, quantity: string): Locator =>
  page.locator(`.input[data-quantity="${quantity}"]`);
export const field = (page: Page, quantity: string): Locator =>
  row(page, quantity).locator('.entry-line input');
export const says = (page: Page, quantity: string): Locator => row(page, quantity).locator('.says');

/** Opens what a field's own key holds, and gives it. */
export async function moreAbout(page: Page, quantity: string): Promise<Locator> {
  const key = row(page, quantity).locator('.more-key');
  if ((await key.getAttribute('aria-expanded')) === 'false') await key.click();
  const part = row(page, quantity).locator('.more-about:not([aria-busy])');
  await part.waitFor();
  return part;
}

/** Presses one of the keys that a field's own key holds, by the beginning of its name: `Clear`, `Only here`. */
export async function pressOf(page: Page, quantity: string, name: string): Promise<void> {
  await (await moreAbout(page, quantity)).getByRole('button', { name: new RegExp(`^${name}\\b`) }).click();
}

/** Types a text in place of what stands in the field, and leaves it. */
export async function type(page: Page, quantity: string, text: string): Promise<void> {
  await field(page, quantity).fill(text);
  await field(page, quantity).blur();
}

/** Opens everything in a place that is one step away and called so, also what comes to light by it; with no name, all of it. */
export async function unfold(place: Locator, which = ''): Promise<void> {
  await place.evaluate(async (inside, name) => {
    const closed = () =>
      [...inside.querySelectorAll<HTMLElement>('details:not([open]) > summary')].filter(
        (one) => one.checkVisibility() && one.textContent.toLowerCase().includes(name),
      );
    for (let left = closed(); left.length > 0; left = closed()) {
      for (const summary of left) summary.click();
      // What is inside is made when the disclosure has said that it is open.
      await new Promise(requestAnimationFrame);
    }
  }, which.toLowerCase());
}

/** Opens what cells keep a press away of their graphs, tables and changes, and waits until it has come. */
export async function openFolds(page: Page): Promise<void> {
  await page.evaluate(() => {
    const kept = ':is(.graph, .rows, .round, .changes)';
    for (const fold of document.querySelectorAll<HTMLDetailsElement>(`.fold${kept}`)) fold.open = true;
  });
  await arrived(page);
}

/** Opens the groups of fields in a place. */
export async function openGroups(place: Locator): Promise<void> {
  await place.evaluate((inside) => {
    for (const group of inside.querySelectorAll<HTMLDetailsElement>('details.field-group')) group.open = true;
  });
}

/** The boat's own sheet, opened. */
export async function openSheet(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: 'The boat’s own sheet' }).click();
  const sheet = page.locator('.boat-sheet');
  await sheet.locator('.entry-line input').first().waitFor({ state: 'attached' });
  return sheet;
}

/** The large figure of an answer, of the version kept or of the one tried. */
export const answer = (page: Page, quantity: string, version: 'first' | 'second' = 'first'): Locator =>
  page.locator(`.answer[data-quantity="${quantity}"] .figure.${version} b`);

/** The large figures of a cell in their order. */
export async function answers(page: Page, name: string): Promise<string[]> {
  await followed(cell(page, name));
  return cell(page, name).locator('.answer .figure.first b').allInnerTexts();
}

/** All large figures of the notebook by their quantity, once what is far from the window has followed the last edit. */
export async function allAnswers(page: Page): Promise<Record<string, string>> {
  await atRest(page, FAR);
  return page.locator('.answer').evaluateAll((all) => {
    const found: Record<string, string> = {};
    for (const one of all)
      found[one.getAttribute('data-quantity') ?? ''] = one.querySelector('dd')?.textContent ?? '';
    return found;
  });
}

/** The paths of a cell's drawing, as their `d` data. */
export const paths = (place: Locator): Promise<string[]> =>
  place
    .locator('figure.drawing svg')
    .first()
    .locator('path')
    .evaluateAll((all) => all.map((path) => path.getAttribute('d') ?? ''));

/** What is written in a drawing. */
export const texts = (place: Locator): Promise<string[]> =>
  place.locator('figure.drawing svg').first().locator('text').allTextContents();

/** The number at the head of a text as the page writes it: `−2.4°` is -2.4, `1 in 8` is 1. */
export function numberIn(text: string): number {
  const found = /-?\d+(?:\.\d+)?/.exec(text.replaceAll('−', '-'));
  if (!found) throw new Error(`no number in "${text}"`);
  return Number(found[0]);
}

export async function fieldNumber(page: Page, quantity: string): Promise<number> {
  await followed(row(page, quantity));
  return numberIn(await field(page, quantity).inputValue());
}
export async function answerNumber(page: Page, quantity: string, version: 'first' | 'second' = 'first') {
  await followed(answer(page, quantity, version));
  return numberIn(await answer(page, quantity, version).innerText());
}

/** Waits until a place has followed the last edit: at once in the window and near it, when the page is at rest beyond. */
async function followed(place: Locator): Promise<void> {
  const isBehind = await place.first().evaluate(
    (at, [margin, followed]) => {
      const { top, bottom } = at.getBoundingClientRect();
      return !document.querySelector(followed) && (bottom <= -margin || top >= innerHeight + margin);
    },
    [NEAR, FAR] as const,
  );
  if (isBehind) await atRest(place.page(), FAR);
}
/** As the page takes it, px. */
const NEAR = 300;

/** Waits until the field holds the text. */
export async function holds(page: Page, quantity: string, text: string): Promise<void> {
  await expect.poll(() => field(page, quantity).inputValue()).toBe(text);
}

/** An element's text, with the spaces that hold a number to its unit as plain ones. */
export const textOf = async (place: Locator): Promise<string> =>
  (await place.innerText()).replaceAll(/[\u00a0\u202f]/g, ' ');

/** Waits until an element has the text, or a text like it. */
export async function reads(place: Locator, text: string | RegExp): Promise<void> {
  if (typeof text === 'string') await expect.poll(() => textOf(place)).toBe(text);
  else await expect.poll(() => textOf(place)).toMatch(text);
}

/** A step of a story that goes on in one page: if it fails, the failure says which. */
export async function step(what: string, run: () => Promise<void>): Promise<void> {
  try {
    await run();
  } catch (fault) {
    if (fault instanceof Error) fault.message = `${what}: ${fault.message}`;
    throw fault;
  }
}

/** Waits until the page says that it has told what moved after the last edit, or that nothing in it is behind. */
export async function atRest(page: Page, after = MOVED): Promise<void> {
  await page.waitForFunction((root) => document.querySelector(root), after, { polling: 50 });
}

const MOVED = 'html[data-followed]';
const FAR = 'html[data-followed="all"]';

/** Takes back all that was done on the boat in hand, as far as her steps go, and waits until the page is at rest. */
export async function undoAll(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const undo = [...document.querySelectorAll('button')].find((one) => one.textContent.trim() === 'Undo');
    if (!undo) throw new Error('there is no key to undo with');
    while (!undo.disabled) {
      undo.click();
      await new Promise(requestAnimationFrame);
    }
  });
  await atRest(page);
}

/** A button of the page by its words. */
export const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

/** Sentences anywhere in the page that no builder should ever read. */
export async function leftovers(page: Page): Promise<string[]> {
  const seen = await page.evaluate(() => {
    const fields = [...document.querySelectorAll<HTMLInputElement>('.entry-line input:not([aria-invalid])')];
    return [document.body.textContent ?? '', ...fields.map((one) => one.value)].join('\n');
  });
  return [...seen.matchAll(/.{0,40}(?:\bNaN\b|Infinity|\bundefined\b|\[object|\bnull\b).{0,40}/g)].map(
    ([text]) => text,
  );
}

export const isFocused = (place: Locator): Promise<boolean> =>
  place.evaluate(
    (element) => element.contains(document.activeElement) && document.activeElement !== document.body,
  );

/** Scrolls through the page, so that all that comes when it is near has come. */
export async function lookThrough(page: Page): Promise<void> {
  const undrawn = '.chart-place:not(:has(svg))';
  for (;;) {
    const left = await page.evaluate((places) => {
      const found = document.querySelectorAll(places);
      found[0]?.scrollIntoView({ block: 'center' });
      return found.length;
    }, undrawn);
    if (left === 0) return;
    await page.waitForFunction(
      ([places, before]) => document.querySelectorAll(places).length < before,
      [undrawn, left] as const,
      { polling: 50 },
    );
  }
}

export const allColours = ['sun', 'light', 'dark'] as const;
export type Colours = (typeof allColours)[number];

/** Has the page in full sun by its own choice, or light or dark as the device asks for. */
export async function wear(page: Page, colours: Colours): Promise<void> {
  const choice = page.getByRole('combobox', { name: 'Page colours' });
  const desk = page.locator('.desk > summary');
  await desk.click();
  await choice.selectOption(colours === 'sun' ? 'full sun' : 'as this device is set');
  await desk.click();
  await page.emulateMedia({ media: null, colorScheme: colours === 'dark' ? 'dark' : 'light' });
}

/** By how many pixels the page can be moved sideways. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** The keys and fields that a thumb can't hit. */
export const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const all = document.querySelectorAll<HTMLElement>(
      'button, input:not([type="range"], [type="file"]), select, summary, a[href]',
    );
    for (const element of all) {
      const { width, height } = element.getBoundingClientRect();
      if (width === 0 || height === 0 || !element.checkVisibility() || element.closest('.skip, .unseen'))
        continue;
      // In running text a link is as high as its line, and the trade's rule for it is 24 px.
      const inline = element.matches('.live, .jump, a, p button');
      // A radio key is pressed by its label.
      const target = element.matches('[type="radio"]') ? element.closest('label') : element;
      const box = target?.getBoundingClientRect() ?? { width, height };
      const least = inline ? 24 : 44;
      // Half a pixel for rounding.
      if (Math.min(box.height, inline ? 1e3 : box.width) < least - 0.5)
        found.push(
          `${element.tagName} ${element.className} "${element.textContent?.trim().slice(0, 30)}" ${Math.round(box.width)} x ${Math.round(box.height)}`,
        );
    }
    return [...new Set(found)];
  });
