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

/** The card that stands, printed; printing it takes it away again. */
export async function printed(page: Page, format: 'A4' | 'Letter' = 'A4'): Promise<PrintedPage[]> {
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
  await expect.poll(() => page.locator('html[data-card], .card').count()).toBe(0);
  return pages;
}

/** Letters without the spaces between them, which a PDF does not keep. */
export const closedUp = (text: string): string => asTyped(text.replaceAll(/\s+/g, ''));

export const textOn = (pages: readonly PrintedPage[]): string =>
  closedUp(pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(''));
