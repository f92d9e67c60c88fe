/** For everyone: rules of access by axe, the keyboard alone, formulas and drawings that can be read out, small screens, fingers. */
import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { cellsIn, type Looked, violations } from './axe';
import { onePage } from './harness';
import {
  answer,
  arrived,
  cell,
  field,
  holds,
  isFocused,
  moreAbout,
  openNotebook,
  openQuestion,
  openSheet,
  press,
  reads,
  row,
  textOf,
  unfold,
  lookThrough,
} from './steps';

describe('axe with all opened', () => {
  const page = onePage({ reducedMotion: 'reduce', at: '#/the-build' });
  const found = async (looked: Looked = {}) => {
    await arrived(page());
    await lookThrough(page());
    return violations(page(), looked);
  };

  test('the boat’s own sheet', async () => {
    await arrived(page());
    await unfold(await openSheet(page()));
    // The cells below it are looked at wherever they stand.
    expect(await found({ within: '.boat-sheet' })).toStrictEqual([]);
    await press(page(), 'Close the boat’s sheet');
  });

  test('two versions, 390 px', async () => {
    await page().setViewportSize({ width: 390, height: 900 });
    const toHull = page().getByRole('button', { name: /the hull and what moved/ });
    await toHull.click();
    await press(page(), 'Keep this and try another');
    await toHull.click();
    await field(page(), 'scarf.thickness').fill('24');
    await field(page(), 'scarf.slope').fill('3 kg');
    await field(page(), 'scarf.slope').blur();
    await unfold(cell(page(), 'scarf'));
    await unfold(cell(page(), 'bevels'));
    await moreAbout(page(), 'scarf.thickness');
    await row(page(), 'bevels.frame').locator('.more-key').click();
    await page().locator('.desk > summary').click();
    await cell(page(), 'scarf').locator('math').first().waitFor();
    expect(await found()).toStrictEqual([]);
  });

  test('two versions, 1280 px', async () => {
    await page().setViewportSize({ width: 1280, height: 900 });
    // Of the cells, which hold in this width what they held in the other, those with all opened.
    const others = (await cellsIn(page())).filter((one) => !/"(?:scarf|bevels)"/.test(one));
    expect(await found({ without: others })).toStrictEqual([]);
  });
});

describe('by keyboard alone', () => {
  const focused = (page: Page): Locator => page.locator(':focus');

  /** Presses Tab until the focus is inside a place. */
  async function tabTo(page: Page, place: Locator, most = 200): Promise<void> {
    for (let presses = 0; presses < most; presses += 1) {
      if (await place.evaluate((element) => element.contains(document.activeElement))) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`not reached by ${most} presses of Tab`);
  }

  test('to a field, type, step it, undo', async () => {
    const page = await openNotebook('quick-scarf');
    await page.keyboard.press('Tab');
    expect(await textOf(focused(page))).toBe('To the notebook');
    await page.keyboard.press('Enter');
    await tabTo(page, field(page, 'quickScarf.thickness'));
    expect(await focused(page).inputValue()).toBe('18 mm');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('20');
    await reads(answer(page, 'quickScarf.taper'), '160 mm');
    await page.keyboard.press('ArrowUp');
    await reads(answer(page, 'quickScarf.taper'), '168 mm');
    await holds(page, 'quickScarf.thickness', '21 mm');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await reads(answer(page, 'quickScarf.taper'), '152 mm');
    await page.keyboard.press('PageUp');
    await reads(answer(page, 'quickScarf.taper'), `${8 * 29} mm`);
    await page.keyboard.press('Tab');
    expect(await field(page, 'quickScarf.thickness').inputValue()).toBe('29 mm');
  });

  test('Escape takes back what was typed', async () => {
    const page = await openNotebook('quick-scarf');
    await tabTo(page, field(page, 'quickScarf.thickness'));
    await page.keyboard.type('77');
    await page.keyboard.press('Escape');
    await holds(page, 'quickScarf.thickness', '18 mm');
    await reads(answer(page, 'quickScarf.taper'), '144 mm');
    expect(
      await field(page, 'quickScarf.thickness').evaluate((element) => element === document.activeElement),
    ).toBe(true);
  });

  test('what stands in a field is selected by Tab, and Tab goes on to the next field', async () => {
    const page = await openNotebook('scarf-and-resin');
    await field(page, 'scarf.thickness').focus();
    for (const name of ['scarf.thickness', 'scarf.slope', 'scarf.boardLength', 'scarf.boards']) {
      expect(
        await focused(page).locator('xpath=ancestor::*[@data-quantity][1]').getAttribute('data-quantity'),
      ).toBe(name);
      await page.keyboard.type('10');
      expect(await focused(page).inputValue()).toBe('10');
      await page.keyboard.press('Tab');
    }
    await holds(page, 'scarf.slope', '1 in 10');
    await reads(answer(page, 'scarf.taper'), '100 mm');
  });

  test('what was stepped or settled is replaced by the next key', async () => {
    const page = await openNotebook('quick-scarf');
    const thickness = field(page, 'quickScarf.thickness');
    await tabTo(page, thickness);
    await page.keyboard.press('ArrowUp');
    await holds(page, 'quickScarf.thickness', '19 mm');
    await expect.poll(() => selected(thickness)).toBe('19 mm');
    await page.keyboard.type('3/4 in');
    expect(await thickness.inputValue()).toBe('3/4 in');
    await page.keyboard.press('Enter');
    const slope = field(page, 'quickScarf.slope');
    expect(await isFocused(slope)).toBe(true);
    expect(await selected(slope)).toBe('1 in 8');
    await page.keyboard.type('about so');
    await page.keyboard.press('Enter');
    expect(await isFocused(slope)).toBe(true);
    await expect.poll(() => selected(slope)).toBe('about so');
  });

  test('Enter goes from field to field to the last in sight, past choices', async () => {
    const page = await openQuestion('quickBend');
    await field(page, 'quickBend.radius').focus();
    const names = await cell(page, 'quickBend')
      .locator('.input:has(.entry-line)')
      .evaluateAll((rows) =>
        rows
          .filter((at) => !at.closest('details:not([open])'))
          .map((at) => (at as HTMLElement).dataset.quantity!),
      );
    const after = names.slice(names.indexOf('quickBend.radius'));
    for (const name of after) {
      expect([name, await isFocused(field(page, name))]).toStrictEqual([name, true]);
      await page.keyboard.press('Enter');
    }
    expect(await isFocused(field(page, after.at(-1)!))).toBe(true);
  });

  test('the keys of a field are reached from the field, and lead back to it', async () => {
    const page = await openNotebook('scarf-and-resin');
    await field(page, 'scarf.thickness').focus();
    await page.keyboard.press('Alt+Enter');
    // They are fetched when they are first asked for.
    await reads(focused(page), /keelson/i);
    await page.keyboard.press('ArrowRight');
    expect(await textOf(focused(page))).toBe('Measured');
    await page.keyboard.press('Escape');
    expect(await isFocused(field(page, 'scarf.thickness'))).toBe(true);
    await page.keyboard.type('24');
    await page.keyboard.press('Alt+Enter');
    await reads(focused(page), /keelson/i);
    await page.keyboard.press('ArrowRight');
    expect(await textOf(focused(page))).toBe('Clear');
    await page.keyboard.press('Enter');
    await holds(page, 'scarf.thickness', '18 mm');
    expect(await isFocused(field(page, 'scarf.thickness'))).toBe(true);
  });

  test('opens the working, whose formulas have the numbers put in', async () => {
    const page = await openNotebook('quick-scarf');
    const summary = cell(page, 'quickScarf').locator('details.working > summary');
    await tabTo(page, summary);
    await page.keyboard.press('Enter');
    const taper = cell(page, 'quickScarf').locator('li[data-quantity="quickScarf.taper"]');
    await taper.waitFor();
    const formulas = await taper.locator('math').allTextContents();
    expect(formulas).toHaveLength(2);
    expect(formulas[0]).toMatch(/taper.*slope.*thickness/);
    expect(formulas[1]).toMatch(/8.*18/);
    await reads(taper.locator('.result'), `= ${8 * 18} mm`);
    expect(
      await taper
        .locator('math')
        .first()
        .evaluate((math) => math.namespaceURI),
    ).toBe('http://www.w3.org/1998/Math/MathML');
    // Where the focus is can be seen.
    await page.keyboard.press('Tab');
    const outline = await focused(page).evaluate((element) => {
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
      return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
    });
    expect(outline).toBe(true);
  });

  test('through the whole page: no trap, and nothing hidden takes the focus', async () => {
    const page = await openQuestion('quickScarf');
    // What is passed is noted in the page: to ask after each press takes longer than the press.
    const stops = await page.evaluate(() => {
      const notes = { around: false, hidden: [] as string[] };
      let first: EventTarget | null = null;
      addEventListener('focusin', ({ target }) => {
        notes.around ||= target === first;
        first ??= target;
        const element = target as HTMLElement;
        const { width, height } = element.getBoundingClientRect();
        if (width === 0 || height === 0) notes.hidden.push(element.outerHTML.slice(0, 120));
      });
      Object.assign(globalThis, { notes });
      return document.querySelectorAll('button, input, select, a, summary').length;
    });
    const notes = () =>
      page.evaluate(() => (globalThis as unknown as { notes: { around: boolean; hidden: string[] } }).notes);
    for (let presses = 1; presses < stops + 20; presses += 1) {
      await page.keyboard.press('Tab');
      if (presses % 20 === 0 && (await notes()).around) break;
    }
    expect(await notes()).toStrictEqual({ around: true, hidden: [] });
  });
});

const selected = (place: Locator): Promise<string> =>
  place.evaluate((at: HTMLInputElement) => at.value.slice(at.selectionStart ?? 0, at.selectionEnd ?? 0));

describe('by the pointer', () => {
  test.each([
    ['a click', false],
    ['a tap', true],
  ] as const)('%s selects what stands in the field, a second places the caret', async (_, touch) => {
    const page = await openNotebook('quick-scarf', { touch, width: touch ? 390 : 1280 });
    const thickness = field(page, 'quickScarf.thickness');
    const press = () => (touch ? thickness.tap() : thickness.click());
    await press();
    await expect.poll(() => selected(thickness)).toBe('18 mm');
    await press();
    await expect.poll(() => selected(thickness)).toBe('');
    await page.keyboard.press('Home');
    await page.keyboard.type('2 * ');
    expect(await thickness.inputValue()).toBe('2 * 18 mm');
  });

  test('a tap selects where the field moves under the finger, as the keys of the last one go', async () => {
    const page = await openQuestion('quickScarf', { touch: true, width: 390 });
    await field(page, 'quickScarf.thickness').tap();
    await row(page, 'quickScarf.thickness').getByRole('button', { name: 'Letter keys' }).waitFor();
    const slope = field(page, 'quickScarf.slope');
    await slope.tap();
    await expect.poll(() => selected(slope)).toBe('1 in 8');
  });

  test('what a key has led to and selected stays whole under the first tap', async () => {
    const page = await openQuestion('quickScarf', { touch: true, width: 390 });
    const slope = field(page, 'quickScarf.slope');
    await field(page, 'quickScarf.thickness').tap();
    await page.keyboard.press('Enter');
    expect(await isFocused(slope)).toBe(true);
    await slope.tap();
    await expect.poll(() => selected(slope)).toBe('1 in 8');
    await page.keyboard.type('12');
    expect(await slope.inputValue()).toBe('12');
    // Among one's own letters a tap places the caret.
    await slope.tap();
    expect(await selected(slope)).toBe('');
  });

  test('what is drawn over with the mouse stays as drawn', async () => {
    const page = await openNotebook('quick-scarf');
    const thickness = field(page, 'quickScarf.thickness');
    await thickness.scrollIntoViewIfNeeded();
    // Letters of another face would lie elsewhere under the mouse.
    await page.evaluate(() => document.fonts.ready.then(() => {}));
    const box = (await thickness.boundingBox())!;
    await page.mouse.move(box.x + 3, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + 22, box.y + box.height / 2, { steps: 4 });
    await page.mouse.up();
    const drawn = await selected(thickness);
    expect(drawn).not.toBe('');
    expect(drawn).not.toBe('18 mm');
    expect('18 mm').toContain(drawn);
  });

  test('the keypad turned to letters leaves the caret where it was', async () => {
    const page = await openNotebook('quick-scarf', { touch: true, width: 390 });
    const thickness = field(page, 'quickScarf.thickness');
    await thickness.tap();
    await page.keyboard.type('19');
    await row(page, 'quickScarf.thickness').getByRole('button', { name: 'Letter keys' }).tap();
    await row(page, 'quickScarf.thickness').getByRole('button', { name: 'Number keys' }).waitFor();
    await expect.poll(() => isFocused(thickness)).toBe(true);
    await page.keyboard.type('+1');
    expect(await thickness.inputValue()).toBe('19+1 mm');
  });
});

test('an input is named by its label, and what is wrong belongs to it', async () => {
  const page = await openNotebook('quick-scarf');
  const thickness = page.locator('.cell[data-cell="quickScarf"]').getByLabel('Thickness', { exact: true });
  await thickness.fill('3 kg');
  await reads(row(page, 'quickScarf.thickness').locator('.says'), /is a mass/);
  const described = await thickness.evaluate((input) =>
    (input.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent ?? '')
      .join(' '),
  );
  expect(described).toMatch(/is a mass/);
});
