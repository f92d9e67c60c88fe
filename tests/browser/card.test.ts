/** The shop card: one cell on one page, or on two that say so, large enough to be read at arm's length, and nothing on it to press. */
import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { registry } from '../../src/cells/registry';
import { inRoot } from '../tools/root.mjs';
import {
  askForCard,
  cellsOf,
  closedUp,
  everyCard,
  keepFromPrinting,
  openToPrint,
  printed,
  type PrintedPage,
  printedTogether,
  textOn,
} from './card';
import {
  answer,
  answerNumber,
  cell,
  field,
  openQuestion,
  press,
  pressOf,
  questionsOf,
  reads,
  row,
  step,
  turnToQuestion,
  type,
  undoAll,
  unfold,
  readThrough,
} from './steps';

/** 10 mm all round, less what a letter's own side bearing may take. */
const MARGIN = 9.5;
/** 14 pt, less what a PDF rounds. */
const LEAST_LETTERS = 13.95;
/** Heads a page that speaks of one sheet alone. */
const LEAF = /^.{1,80}?·.{1,80}?,sheet(\d+)of(\d+)·/;
const BAD = /NaN|Infinity|undefined|\[object|null/;

interface Wanted {
  readonly title: string;
  /** What stands in the cell on the screen, and must stand on its card. */
  readonly texts: readonly string[];
}

/** Of every cell in a place, or of the one that the place is, by its name. */
async function toBePrinted(place: Locator): Promise<Readonly<Record<string, Wanted>>> {
  const parts = [
    '.question',
    '.answer .label',
    '.figure',
    '.datum',
    '.in-words',
    '.warning b',
    '.warning .limit',
    '.cautions p',
  ];
  await unfold(place, 'more caution');
  // Two pieces of a figure stand side by side on the screen and on paper, in this order.
  return place.evaluate((inside, places) => {
    const cells = inside.matches('.cell') ? [inside] : [...inside.querySelectorAll('.cell[data-cell]')];
    return Object.fromEntries(
      cells.map((cell) => {
        const textsOf = (part: string) =>
          [...cell.querySelectorAll<HTMLElement>(part)].map((one) => one.innerText);
        const name = (cell as HTMLElement).dataset['cell'] ?? '';
        return [name, { title: textsOf('.cell-title')[0] ?? '', texts: places.flatMap(textsOf) }];
      }),
    );
  }, parts);
}

/** One page, or two where the first says what goes on overleaf; a third for a table that is not whole on two. */
function expectFair(pages: readonly PrintedPage[]): void {
  const goesOn = textOn(pages.slice(0, 1)).includes('Goesonoverleaf:');
  expect(pages.length > 1).toBe(goesOn);
  const leaves = pages.filter((page) => LEAF.test(textOn([page])));
  const own = pages.slice(0, pages.length - leaves.length);
  expect(own.length).toBeLessThanOrEqual(3);
  const heads = [',secondpage', ',thirdpage'].slice(0, own.length - 1);
  expect(heads.filter((head, i) => !textOn(own.slice(i + 1, i + 2)).includes(head))).toStrictEqual([]);
  // One thing a page, each once and none left out; on which sheet a row is cut is said by its page.
  expect(leaves.map((page) => Number(LEAF.exec(textOn([page]))![1]))).toStrictEqual(
    leaves.map((_, i) => i + 1),
  );
  expect(leaves.map((page) => Number(LEAF.exec(textOn([page]))![2]))).toStrictEqual(
    leaves.map(() => leaves.length),
  );
  for (const { width, texts } of pages) {
    expect(texts.filter(({ size }) => size < LEAST_LETTERS)).toStrictEqual([]);
    expect(texts.filter(({ left, right }) => left < MARGIN || right > width - MARGIN)).toStrictEqual([]);
    expect(texts.length).toBeGreaterThan(5);
  }
  expect(textOn(pages)).not.toMatch(BAD);
}

/** The file that a card would be saved as: what it is called, and whose it is. */
function expectName(fileName: string, { title }: Wanted, whose: string): void {
  expect(fileName).toMatch(/^[^\\/:*?"<>|]+ - (?:Ferry dory|Quick answers)$/);
  expect(fileName.endsWith(` - ${whose}`)).toBe(true);
  expect(fileName.toLowerCase()).toContain(title.toLowerCase().replaceAll(/[:?]/g, '').trim());
}

/** All of a card as it is printed, against its cell. */
function expectWhole(pages: readonly PrintedPage[], { title, texts }: Wanted, whose: string): void {
  expectFair(pages);
  const text = textOn(pages);
  expect(text).toContain(closedUp(whose));
  expect(text).toContain(closedUp(title));
  expect(texts.length).toBeGreaterThan(6);
  expect(texts.filter((one) => !text.includes(closedUp(one)))).toStrictEqual([]);
  expect(text).toContain('Sources:');
}

/** Leaves: the sheets of a plan, where the cell is one. */
const leavesDue = async (page: Page, name: string) =>
  /sheets$/i.test(name) ? answerNumber(page, `${name}.count`) : 0;
const leavesOn = (pages: readonly PrintedPage[]) => pages.filter((one) => LEAF.test(textOn([one]))).length;

/** Prints the card of the cell that is open, in a notebook without a boat, which heads its cards with its own name. */
async function expectCard(page: Page, name: string, format: 'A4' | 'Letter'): Promise<void> {
  const wanted = (await toBePrinted(cell(page, name)))[name]!; // the cell itself
  const before = await page.title();
  await askForCard(page, name);
  expectName(await page.title(), wanted, 'Quick answers');
  expect(await page.locator('.card').locator('a, button, input, select, summary').count()).toBe(0);
  const pages = await printed(page, format);
  expect(await page.title()).toBe(before);
  expect(leavesOn(pages)).toBe(await leavesDue(page, name));
  expectWhole(pages, wanted, 'Quick answers');
}

const stages = readThrough.filter((id) => id !== 'one-thick-or-two-thin');

describe('every cell', () => {
  const seen = new Set<string>();

  test.each(stages)(
    'of %s on one page of A4, or on two that say so',
    { timeout: 180_000 },
    async (notebook) => {
      const page = await openToPrint(notebook);
      const wanted = await toBePrinted(page.locator('main'));
      const due = Object.keys(wanted).filter((name) => !seen.has(name));
      expect(Object.keys(wanted).length).toBeGreaterThan(0);
      const cards = await everyCard(page, [...seen]);
      expect(cards.map(({ name }) => name)).toStrictEqual(due);
      if (cards.length === 0) return;
      for (const [at, pages] of (await printedTogether(page, cards)).entries()) {
        const { name, fileName, keys } = cards[at]!; // one print each
        expectName(fileName, wanted[name]!, 'Ferry dory');
        expect(keys).toBe(0);
        expect(leavesOn(pages)).toBe(await leavesDue(page, name));
        expectWhole(pages, wanted[name]!, 'Ferry dory');
        seen.add(name);
      }
    },
  );

  test('that stands in a notebook of the build was among them', () => {
    const placed = stages.map((id) => readFileSync(inRoot(`notebooks/${id}.md`), 'utf8')).join('\n');
    const plain = registry.filter(({ id }) => new RegExp(`^\`\`\`cell ${id}$`, 'm').test(placed));
    expect(plain.length).toBeGreaterThan(10);
    expect(plain.filter(({ id }) => !seen.has(id))).toStrictEqual([]);
  });

  test('from a phone, on Letter, in feet and inches', { timeout: 180_000 }, async () => {
    const page = await openQuestion('quickScarf', { width: 390, touch: true, reducedMotion: 'reduce' });
    await keepFromPrinting(page);
    await page.locator('.unit-pick').selectOption('ft-in 1/16, lb');
    const names = await questionsOf(page);
    expect(names.length).toBeGreaterThan(5);
    for (const name of names) {
      await turnToQuestion(page, name);
      await expectCard(page, name, 'Letter');
    }
  });
});

test(
  'of the other boats: within its pages, with nothing that is no number',
  { timeout: 180_000 },
  async () => {
    const page = await openToPrint('the-build');
    const boats = await page
      .locator('.boat-pick optgroup option')
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    // The ferry dory's own are printed above.
    const others = boats.filter((boat) => !boat.startsWith('ferry-dory'));
    expect(others.length).toBeGreaterThan(2);
    const told = new Set<string>();
    for (const boat of others) {
      await page.locator('.boat-pick').selectOption(boat);
      for (const { name, text, own, heights, wide } of await everyCard(page)) {
        expect(text, `${name} of ${boat}`).not.toMatch(BAD);
        // 259 mm: Letter within its margins, which is lower than A4.
        expect(Math.max(...heights), `${name} of ${boat}`).toBeLessThanOrEqual((259 / 25.4) * 96);
        expect(own, `${name} of ${boat}`).toBeLessThanOrEqual(3);
        expect(wide, `${name} of ${boat}`).toBe(0);
        told.add(name);
      }
    }
    expect([...told]).toStrictEqual(await cellsOf(page));
  },
);

test('a card is put away, of what can’t be read, and of two versions', async () => {
  const page = await openToPrint('quick-scarf', { colorScheme: 'dark' });

  await step(
    'black on white from a dark page, and the page is as it was when the dialog is put away',
    async () => {
      await type(page, 'quickScarf.thickness', '20');
      const before = await page.title();
      await askForCard(page, 'quickScarf');
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      const inks = await page
        .locator('.card')
        .evaluate((card) =>
          [...card.querySelectorAll('p, dt, dd, b, li, h1, svg text')].map(
            (one) => getComputedStyle(one)[one instanceof SVGElement ? 'fill' : 'color'],
          ),
        );
      expect([...new Set(inks)]).toStrictEqual(['rgb(0, 0, 0)']);
      expect(await page.locator('.card').evaluate((card) => getComputedStyle(card).backgroundColor)).toBe(
        'rgb(255, 255, 255)',
      );
      expect(await page.locator('#page').isVisible()).toBe(false);
      await page.emulateMedia({ media: null });

      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      expect(await page.locator('html[data-card], .card').count()).toBe(0);
      expect(await page.title()).toBe(before);
      expect(await field(page, 'quickScarf.thickness').inputValue()).toBe('20 mm');
      const key = cell(page, 'quickScarf').locator('.cell-keys button');
      expect(await key.first().evaluate((one) => one.parentElement?.contains(document.activeElement))).toBe(
        true,
      );
      const box = await key.first().boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(44);
      // The whole notebook still prints as it did.
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.cell').first().isVisible()).toBe(true);
      expect(await page.locator('.cell-keys').filter({ visible: true }).count()).toBe(0);
      await page.emulateMedia({ media: null });
    },
  );

  await step(
    'a browser that never says that printing is over gives the page back at the next touch',
    async () => {
      await askForCard(page, 'quickScarf');
      await page.mouse.click(5, 5);
      expect(await page.locator('html[data-card], .card').count()).toBe(0);
    },
  );

  await step(
    'with an entry that can’t be read: what was typed, why it can’t be used, and what waits for it',
    async () => {
      await type(page, 'quickScarf.thickness', '3 kg');
      await askForCard(page, 'quickScarf');
      const pages = await printed(page);
      expectFair(pages);
      const text = textOn(pages);
      expect(text).toContain('“3kg”');
      const why = closedUp(await cell(page, 'quickScarf').locator('.says').first().innerText());
      expect(text.toLowerCase()).toContain(why.replace(/\.$/, '').toLowerCase());
      expect(text).toContain('waitsforthethickness');
      expect(text).toContain('Thedrawingwaitsforthenumbersitneeds.');
      await undoAll(page);
    },
  );

  await step('both versions, and which is in hand', async () => {
    await press(page, 'Keep this and try another');
    await type(page, 'quickScarf.thickness', '24');
    await reads(answer(page, 'quickScarf.taper', 'second'), '192 mm');
    await askForCard(page, 'quickScarf');
    const pages = await printed(page);
    expectFair(pages);
    const text = textOn(pages);
    expect(text).toContain('keptandtrying,inhand:trying');
    expect(text).toMatch(/Kept144mmTrying192mm\+48mm/);
    expect(text).toMatch(/Thicknesskept18mm,trying24mm/);
    expect(text).toMatch(/Kept:Taper144mm.*Trying:Taper192mm/);
    // What both end with is said once.
    expect(text.match(/Ajointkeepsabout80%ofthestrength/g)).toHaveLength(1);
  });
});

test('says what was measured, and what the design says', async () => {
  const page = await openToPrint('scarf-and-resin');
  await pressOf(page, 'scarf.thickness', 'Measured');
  const measured = row(page, 'scarf.thickness').getByLabel('Measured');
  await measured.fill('17.4');
  await measured.blur();
  await reads(answer(page, 'scarf.taper'), `${8 * 17.4} mm`);
  await askForCard(page, 'scarf');
  expect(textOn(await printed(page))).toMatch(/Thickness:?17\.4mm\(measured;thedesignsays18mm\)/);
});

test('a lines plan is as wide as its sheet', async () => {
  const page = await openToPrint('lines');
  await askForCard(page, 'lines');
  const share = await page.locator('.card').evaluate((card) => {
    const plan = card.querySelector('svg');
    return (plan?.getBoundingClientRect().width ?? 0) / card.getBoundingClientRect().width;
  });
  expect(share).toBeGreaterThan(0.95);
  expect(share).toBeLessThanOrEqual(1);
});
