/** On paper: all of it, black on white, and nothing that can only be pressed. */
import { getDocumentProxy, extractText } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { answers, notebooks, openNotebook, press, texts, type } from './steps';

describe.each(notebooks)('%s', (notebook) => {
  test('fills pages of A4 with its text, its answers and its drawings', async () => {
    const page = await openNotebook(notebook);
    const pdf = await page.pdf({ format: 'A4', printBackground: false });
    const document = await getDocumentProxy(new Uint8Array(pdf));
    expect(document.numPages).toBeGreaterThan(1);
    const { text } = await extractText(document, { mergePages: true });
    // The serif has one glyph for two apostrophes.
    const plain = text.replaceAll(/\s+/g, ' ').replaceAll('ʼ', '’');
    expect(plain).toContain((await page.locator('h1').first().innerText()).trim());
    for (const cell of await page.locator('.cell[data-cell]').all()) {
      expect(plain).toContain(await cell.locator('.question').innerText());
      const figures = await cell.locator('.answer .figure.first b').allInnerTexts();
      for (const figure of figures) expect(plain).toContain(figure.replaceAll(/\s+/g, ' '));
      if ((await cell.locator('figure.drawing').count()) === 0) continue;
      // The sentence under the drawing is part of it; its later lines are drawn in pieces.
      const caption = ((await texts(cell)).at(-1) ?? '').slice(0, 18);
      expect(caption.length).toBe(18);
      expect(plain).toContain(caption);
    }
    expect(plain).not.toMatch(/\bUndo\b|\bRedo\b|Keep this and try another|What moves|Save boat/);
  });

  test.each(['light', 'dark'] as const)(
    'is black on white without keys, contents or what stands alongside, from %s',
    async (colorScheme) => {
      const page = await openNotebook(notebook, { colorScheme });
      await page.emulateMedia({ media: 'print', colorScheme });
      for (const hidden of ['.masthead .keys', '.contents', '.alongside', '.skip', '.step'])
        expect(await page.locator(hidden).filter({ visible: true }).count()).toBe(0);
      for (const seen of ['h1', 'article.prose > p', '.answer .figure b', 'figure.drawing svg'])
        expect(await page.locator(seen).filter({ visible: true }).count()).toBeGreaterThan(0);

      const colours = await page.evaluate(() => {
        /** Light of a colour from 0, black, to 1, white; nothing for a clear one. */
        const light = (colour: string) => {
          const [r = 0, g = 0, b = 0, alpha = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
          return alpha === 0 ? null : (0.2126 * r + 0.7152 * g + 0.0722 * b) / 255;
        };
        const texts = [
          'h1',
          'article.prose > p',
          '.question',
          '.answer dt',
          '.answer .figure b',
          '.in-words',
          '.entry-line input',
        ];
        const inks = texts.flatMap((selector) =>
          [...document.querySelectorAll(selector)].map((element) => light(getComputedStyle(element).color)),
        );
        const grounds = ['html', 'body', 'main', '.cell', 'article.prose', '.answers'].flatMap((selector) =>
          [...document.querySelectorAll(selector)].map((element) =>
            light(getComputedStyle(element).backgroundColor),
          ),
        );
        return {
          darkest: Math.max(...inks.map((ink) => ink ?? 1)),
          grounds: grounds.filter((ground) => ground !== null),
        };
      });
      expect(colours.darkest).toBeLessThan(0.3);
      expect(Math.min(1, ...colours.grounds)).toBeGreaterThan(0.98);
    },
  );
});

test('prints both versions where there are two', async () => {
  const page = await openNotebook('the-build');
  await press(page, 'Keep this and try another');
  await type(page, 'scarf.thickness', '24');
  await expect.poll(() => page.locator('.figure.second').count()).toBeGreaterThan(0);
  const pdf = await page.pdf({ format: 'A4' });
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: true });
  expect(text.replaceAll(/\s+/g, ' ')).toMatch(/Kept 144 mm.*Trying 192 mm.*\+48 mm/);
});

test('a wide sheet is not cut off: drawings stay within the page', async () => {
  const page = await openNotebook('the-build');
  const before = await answers(page, 'scarf');
  await page.emulateMedia({ media: 'print' });
  // The width of A4 within its margins, at 96 px an inch.
  await page.setViewportSize({ width: 680, height: 1000 });
  const over = await page
    .locator('main figure svg')
    .evaluateAll((all) => all.filter((svg) => svg.getBoundingClientRect().right > innerWidth + 1).length);
  expect(over).toBe(0);
  expect(await answers(page, 'scarf')).toStrictEqual(before);
});

test('heads the print with boat, notebook and units, and prints both versions', async () => {
  const page = await openNotebook('the-build');
  await press(page, 'Keep this and try another');
  await type(page, 'scarf.thickness', '24');
  await expect.poll(() => page.locator('.figure.second').count()).toBeGreaterThan(0);
  await page.emulateMedia({ media: 'print' });
  const head = page.locator('.print-head');
  expect(await head.isVisible()).toBe(true);
  expect(await head.innerText()).toMatch(
    /^Ferry dory, kept and trying · The build · mm, kg · \d+ \w+ \d{4}$/,
  );
  const pdf = await page.pdf({ format: 'A4' });
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: true });
  expect(text.replaceAll(/\s+/g, ' ')).toContain('192 mm');
});

test('no notice of the page is printed', async () => {
  const page = await openNotebook('the-build');
  await page.getByRole('combobox', { name: 'Boat' }).selectOption({ label: 'Class skiff' });
  const notices = page.locator('.notices');
  await expect.poll(() => notices.isVisible()).toBe(true);
  await page.emulateMedia({ media: 'print' });
  expect(await notices.isVisible()).toBe(false);
});
