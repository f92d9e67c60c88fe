/** A cell's shop card as it comes out on paper: printed by the key of the cell, and read back from the PDF. */
import type { Page } from 'playwright';
import { expect } from 'vitest';
import { getDocumentProxy } from 'unpdf';
import { openPage, type PageOptions } from './harness';
import { asTyped } from './paper';
import { cell, type Notebook, placeOf, type SmallNotebook } from './steps';

export interface PrintedText {
  readonly text: string;
  /** pt */
  readonly size: number;
  /** Of its beginning and its end, mm from the left edge; of a turned text the beginning only. */
  readonly left: number;
  readonly right: number;
}

export interface PrintedPage {
  /** mm */
  readonly width: number;
  readonly texts: readonly PrintedText[];
}

const MM_PER_PT = 25.4 / 72;

/**
 * Opens a notebook whose print dialog does not open: the page stands still as it does behind one. It
 * waits for keys and fields, not for pictures: a card must come with its picture whether the page has drawn it or not.
 */
export async function openToPrint(
  notebook: Notebook | SmallNotebook,
  options: PageOptions = {},
): Promise<Page> {
  const page = await openPage({ reducedMotion: 'reduce', ...options, ...placeOf(notebook, options) });
  await keepFromPrinting(page);
  await page.locator('.cell[data-cell] .cell-keys button').first().waitFor();
  await expect.poll(() => page.locator('[aria-busy="true"]').count(), { timeout: 30_000 }).toBe(0);
  return page;
}

/** No dialog opens. */
export const keepFromPrinting = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.print = () => {};
  });

export const cellsOf = (page: Page): Promise<string[]> =>
  page
    .locator('.cell[data-cell]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('data-cell') ?? ''));

/** Presses the key of a cell by keyboard and waits for the card to stand. */
export async function askForCard(page: Page, name: string): Promise<void> {
  await cell(page, name).locator('.cell-keys button', { hasText: 'Shop card' }).press('Enter');
  await page.waitForFunction((of) => document.documentElement.dataset['card'] === of, name);
}

/** A card as it lies on the screen. */
export interface ComposedCard {
  /** Of its cell, and of the file that it would be saved as. */
  readonly name: string;
  readonly fileName: string;
  readonly text: string;
  /** Its pages, and those of them that are no leaves. */
  readonly pages: number;
  readonly own: number;
  /** Of its pages, px. */
  readonly heights: readonly number[];
  /** How many of its parts reach past its right edge, and how many are to be pressed. */
  readonly wide: number;
  readonly keys: number;
}

/** The card of every cell but for these, its key pressed inside the page, without a question to it for each. */
export const everyCard = (page: Page, but: readonly string[] = []): Promise<ComposedCard[]> =>
  page.evaluate(async (left) => {
    const root = document.documentElement;
    const cards: ComposedCard[] = [];
    const copies: HTMLElement[] = [];
    for (const place of document.querySelectorAll<HTMLElement>('.cell[data-cell]')) {
      const name = place.dataset['cell'] ?? '';
      if (left.includes(name)) continue;
      const key = [...place.querySelectorAll('.cell-keys button')].find((one) =>
        one.textContent.includes('Shop card'),
      );
      (key as HTMLElement).click();
      while (root.dataset['card'] !== name) await new Promise(requestAnimationFrame);
      const card = document.querySelector<HTMLElement>('.card')!;
      const { right } = card.getBoundingClientRect();
      cards.push({
        name,
        fileName: document.title,
        text: card.textContent,
        pages: card.querySelectorAll('.card-page').length,
        own: card.querySelectorAll('.card-page:not(.card-leaf)').length,
        heights: [...card.querySelectorAll('.card-page')].map((one) => one.getBoundingClientRect().height),
        wide: [...card.querySelectorAll('p, li, td, th, b, svg text')].filter(
          (one) => one.getBoundingClientRect().right > right + 1,
        ).length,
        keys: card.querySelectorAll('a, button, input, select, summary').length,
      });
      copies.push(card.cloneNode(true) as HTMLElement);
    }
    Object.assign(globalThis, { copies });
    return cards;
  }, but);

/**
 * The cards of `everyCard` one after the other on one print: the page is laid out for paper and back once, not once
 * for each.
 */
export async function printedTogether(page: Page, cards: readonly ComposedCard[]): Promise<PrintedPage[][]> {
  await page.evaluate(() => {
    const { copies } = globalThis as unknown as { copies: HTMLElement[] };
    for (const copy of copies) copy.style.breakBefore = 'page';
    document.body.append(...copies);
    // The one that stands is the last of them.
    document.querySelector('.card')!.remove();
  });
  const pages = await pagesOf(page, 'A4');
  await page.evaluate(() => {
    for (const copy of (globalThis as unknown as { copies: HTMLElement[] }).copies) copy.remove();
  });
  await isPutAway(page);
  // One that runs over its sheet would push all that follow.
  expect(pages).toHaveLength(cards.reduce((sum, card) => sum + card.pages, 0));
  let next = 0;
  return cards.map((card) => pages.slice(next, (next += card.pages)));
}

/** The card that stands, printed; printing it takes it away again. */
export async function printed(page: Page, format: 'A4' | 'Letter' = 'A4'): Promise<PrintedPage[]> {
  const pages = await pagesOf(page, format);
  await isPutAway(page);
  return pages;
}

const isPutAway = (page: Page): Promise<void> =>
  expect.poll(() => page.locator('html[data-card], .card').count()).toBe(0);

async function pagesOf(page: Page, format: 'A4' | 'Letter'): Promise<PrintedPage[]> {
  const document = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const sheet = await document.getPage(number);
    const { items } = await sheet.getTextContent();
    pages.push({
      width: (sheet.view[2] ?? 0) * MM_PER_PT,
      texts: items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [a = 0, b = 0, c = 0, d = 0, x = 0] = item.transform as number[];
        const along = Math.abs(b) < Math.abs(a) ? item.width : 0;
        return [
          { text: item.str, size: Math.hypot(c, d), left: x * MM_PER_PT, right: (x + along) * MM_PER_PT },
        ];
      }),
    });
  }
  return pages;
}

/** Letters without the spaces between them, which a PDF does not keep. */
export const closedUp = (text: string): string => asTyped(text.replaceAll(/\s+/g, ''));

export const textOn = (pages: readonly PrintedPage[]): string =>
  closedUp(pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(''));
