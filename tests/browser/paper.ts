/** What a page comes to on paper: the text of its PDF, and its colours. */
import { extractText, getDocumentProxy } from 'unpdf';
import type { Page } from 'playwright';

/** The letters of a PDF as they are typed: a cut has one glyph for two apostrophes, and one for micro and the Greek letter. */
export const asTyped = (text: string): string => text.replaceAll('ʼ', '’').replaceAll('μ', 'µ');

/** The whole page printed on A4; its text with single spaces. */
export async function onPaper(page: Page): Promise<{ pages: number; text: string }> {
  const pdf = await page.pdf({ format: 'A4', printBackground: false });
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const { text } = await extractText(document, { mergePages: true });
  return { pages: document.numPages, text: asTyped(text.replaceAll(/\s+/g, ' ')) };
}

const inked = [
  'h1',
  'article.prose > p',
  '.question',
  '.answer dt',
  '.answer .figure b',
  '.in-words',
  '.entry-line input',
];
const grounds = ['html', 'body', 'main', '.cell', 'article.prose', '.answers'];

/** The light of the lightest ink and of the darkest ground, from 0, black, to 1, white. */
export async function lights(page: Page): Promise<{ ink: number; ground: number }> {
  return page.evaluate(
    ([inkPlaces, groundPlaces]) => {
      /** Nothing for a clear colour. */
      const light = (colour: string) => {
        const [r = 0, g = 0, b = 0, alpha = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
        return alpha === 0 ? null : (0.2126 * r + 0.7152 * g + 0.0722 * b) / 255;
      };
      const of = (places: readonly string[], colour: 'color' | 'backgroundColor') =>
        [...document.querySelectorAll(places.join())].map((one) => light(getComputedStyle(one)[colour]));
      return {
        ink: Math.max(...of(inkPlaces, 'color').map((one) => one ?? 1)),
        ground: Math.min(...of(groundPlaces, 'backgroundColor').map((one) => one ?? 1)),
      };
    },
    [inked, grounds] as const,
  );
}
