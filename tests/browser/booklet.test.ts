/** A notebook printed as a booklet: its contents name the pages on which things stand, on A4 and on Letter. */
import { extractText, getDocumentProxy } from 'unpdf';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { violations } from './axe';
import { closedUp, keepFromPrinting } from './card';
import { openNotebook, step, tooSmall, tooWide } from './steps';

const asks = (page: Page) => page.locator('.booklet-asks');

interface Line {
  readonly says: string;
  readonly number: number;
}

/** The booklet as it stands: its contents, its sheets, and what reaches over the edge of its place. */
async function composed(
  page: Page,
): Promise<{ lines: Line[]; sheets: number; fullSize: number[][]; over: string[] }> {
  await asks(page).getByRole('button', { name: 'Print the booklet' }).press('Enter');
  await page.waitForFunction(() => document.documentElement.dataset['card'] === 'booklet', null, {
    timeout: 30_000,
  });
  return page.evaluate(() => ({
    lines: [...document.querySelectorAll('.booklet-line')].map((line) => ({
      says: line.querySelector('.says')?.textContent ?? '',
      number: Number(line.querySelector('.number')?.textContent),
    })),
    sheets: document.querySelectorAll('.booklet-sheet').length,
    // Of a pattern's sheets, as they lie on the paper, mm.
    fullSize: [...document.querySelectorAll('.of-pattern img')].map((one) => {
      const { width, height } = one.getBoundingClientRect();
      return [width, height].map((px) => Math.round((px / 96) * 254) / 10);
    }),
    over: [...document.querySelectorAll('.booklet-column, .booklet-sheet')].flatMap((place) => {
      const { bottom, right } = place.getBoundingClientRect();
      return [...place.querySelectorAll('p, li, td, h2, h3, dd, svg, img')]
        .filter(
          (one) =>
            one.getBoundingClientRect().bottom > bottom + 1 || one.getBoundingClientRect().right > right + 1,
        )
        .map((one) => one.outerHTML.slice(0, 120));
    }),
  }));
}

async function printed(page: Page): Promise<{ sizes: number[][]; texts: string[] }> {
  const document = await getDocumentProxy(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
  const { text } = await extractText(document, { mergePages: false });
  const sizes = await Promise.all(
    text.map(async (_, at) =>
      (await document.getPage(at + 1)).view.slice(2).map((pt) => Math.round((pt / 72) * 25.4)),
    ),
  );
  return { sizes, texts: text.map(closedUp) };
}

test('a booklet with a card and a pattern: what its contents say is true', { timeout: 120_000 }, async () => {
  const page = await openNotebook('booklet', {
    width: 360,
    height: 740,
    touch: true,
    reducedMotion: 'reduce',
  });
  await keepFromPrinting(page);
  await page.locator('.desk > summary').click();
  await page.getByRole('button', { name: 'Print it as a booklet' }).click();
  await asks(page).getByRole('heading').waitFor();
  expect(await violations(page, { within: '.booklet-asks' })).toStrictEqual([]);
  expect(await tooSmall(page)).toStrictEqual([]);
  expect(await tooWide(page)).toBe(0);
  await asks(page).getByRole('group', { name: 'Shop cards' }).getByLabel('Scarf joint').check();
  await asks(page)
    .getByRole('group', { name: 'Patterns at full size' })
    .getByLabel('Pattern of a frame')
    .check();

  for (const [paper, size] of [
    ['A4', [210, 297]],
    ['Letter', [216, 279]],
  ] as const)
    await step(paper, async () => {
      await asks(page).getByLabel('Paper').selectOption(paper);
      const { lines, sheets, fullSize, over } = await composed(page);
      const { sizes, texts } = await printed(page);
      expect(over).toStrictEqual([]);
      expect(texts).toHaveLength(sheets);
      // Sheets of a pattern are as large as the paper they were made for, and so at full size.
      expect(fullSize.length).toBeGreaterThan(2);
      for (const sheet of fullSize) expect(sheet.map((mm) => Math.round(mm))).toStrictEqual(size);
      expect(sizes).toStrictEqual(texts.map(() => size));
      expect(lines.map(({ says }) => says)).toStrictEqual([
        'The frame on paper',
        'Lay it out',
        'Pattern of a frame, frame 3',
        'The joint',
        'Scarf joint',
        'What to write down',
        'Shop cards',
        'Scarf joint',
        'Patterns at full size',
        'Frame 3: half, to lay the pieces on',
      ]);
      // The first page names them; each is on the page that it names, and a heading on no page but that.
      const [first = ''] = texts;
      for (const { says, number } of lines) {
        expect(first).toContain(`${closedUp(says)}${number}`);
        if (['Shop cards', 'Patterns at full size'].includes(says)) continue;
        expect(texts[number - 1], `${says} on ${number}`).toContain(closedUp(says));
      }
      const at = (says: string) => lines.find((line) => line.says === says)!.number;
      for (const says of ['Lay it out', 'What to write down'])
        expect(texts.findIndex((text, n) => n > 0 && text.includes(closedUp(says))) + 1).toBe(at(says));
      // Numbered as the contents count.
      for (const [n, text] of texts.slice(0, at('Patterns at full size') - 1).entries())
        expect(text).toMatch(new RegExp(`joint·${n + 1}$`));
      expect(texts.join('')).toContain(closedUp('Mark the taper 144 mm from the end.'));
    });
});
