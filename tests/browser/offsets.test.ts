/** The table of offsets typed, pasted and reshaped in a real browser: from nothing to a drawn boat by keyboard alone. */
import { readFileSync } from 'node:fs';
import type { AxeResults } from 'axe-core';
import type { Locator, Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import classSkiff from '../../src/boat/starters/class-skiff.json';
import { inRoot } from '../tools/root.mjs';
import {
  arrived,
  atRest,
  cell,
  leftovers,
  openNotebook,
  pressOf,
  reads,
  reload,
  row,
  step,
  undoAll,
  unfold,
} from './steps';
import type { PageOptions } from './harness';

async function openTable(options: PageOptions = {}): Promise<Page> {
  const page = await openNotebook('offsets', options);
  await page.locator('.offsets-grid .box').first().waitFor();
  return page;
}

const box = (page: Page, name: string): Locator =>
  page.locator(`.offsets-grid [data-quantity="${name}"] input`);
const sentence = (page: Page, name: string): Locator => page.locator(`[id="says-${name}"]`);
const told = (page: Page): Locator => page.locator('.offsets-told');
const inFocus = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.closest<HTMLElement>('[data-quantity]')?.dataset['quantity']);

/** Figures of the offsets cell and of the boat, as they are read. */
async function figures(page: Page): Promise<readonly string[]> {
  const offsets = cell(page, 'offsets').locator('.answer .figure.first');
  await expect.poll(() => offsets.count()).toBe(3);
  return offsets.allInnerTexts();
}

/** Puts a text into the clipboard's place: what a paste of it would bring. */
async function paste(place: Locator, text: string): Promise<void> {
  await place.focus();
  await place.evaluate((element, data) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', data);
    element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

const pick = (page: Page, label: string, value: string) =>
  page.locator('.offsets-choices label', { hasText: label }).locator('select').selectOption(value);

type Points = Readonly<Record<string, { readonly x: number; readonly y: number; readonly z: number }>>;
const stations = classSkiff.stations as unknown as readonly ({ readonly name: string } & Points)[];

const strike = (page: Page, ...keys: string[]) =>
  keys.reduce<Promise<void>>(async (before, key) => {
    await before;
    await page.keyboard.press(key);
  }, Promise.resolve());

async function tabTo(page: Page, place: Locator, most = 250): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    if (await place.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`not reached by ${most} presses of Tab`);
}

test('by keyboard alone, from a blank table to the class skiff', { timeout: 180_000 }, async () => {
  const page = await openTable();
  // What the starter comes to, to be held against at the end.
  await page.locator('.boat-pick').selectOption('class-skiff');
  await reads(page.locator('.offsets-grid caption'), /outside of skin, in millimetres/);
  await reads(cell(page, 'offsets').locator('.answer .figure.first').first(), '4220 mm');
  const wanted = { figures: await figures(page), side: await sideArea(page) };
  await page.locator('.boat-pick').selectOption('creek-punt');
  await page.locator('#notebook-title').focus();

  const summary = cell(page, 'offsets').locator('summary', { hasText: 'A new table' });
  await tabTo(page, summary);
  await strike(page, 'Enter');
  // The form is made when it is asked for.
  await summary.locator('xpath=..').locator('input').first().waitFor();
  await strike(page, 'Tab', 'ControlOrMeta+A');
  await page.keyboard.type('Evening skiff');
  await strike(page, 'Tab');
  await page.keyboard.type('7');
  await strike(page, 'Tab');
  await page.keyboard.type('3');
  await strike(page, 'Enter');
  await expect.poll(() => inFocus(page)).toBe('transom.keel.x');
  await reads(cell(page, 'offsets').locator('.in-words'), /^55 numbers are still missing|^56 numbers/);
  expect(await page.locator('.new-table').count()).toBe(0);
  expect(await leftovers(page)).toStrictEqual([]);
  // A new table tells no news; what is typed into it after a pause does.
  await atRest(page);

  for (const [index, station] of stations.entries()) {
    expect(await inFocus(page)).toBe(`${idOf(station.name)}.keel.x`);
    const isEnd = index === 0 || index === stations.length - 1;
    const { keel, chine, sheer } = station;
    const row = [
      keel!.x,
      keel!.z,
      ...(isEnd ? [chine!.x] : []),
      chine!.y,
      chine!.z,
      ...(isEnd ? [sheer!.x] : []),
      sheer!.y,
      sheer!.z,
    ];
    for (const number of row) {
      await page.keyboard.type(String(number));
      if (number !== row.at(-1) || index < stations.length - 1) await strike(page, 'Tab');
    }
    // What comes box by box is no news; each number is read back in its box.
    if (index === 1) {
      await reads(cell(page, 'offsets').locator('.in-words'), /^40 numbers are still missing/);
      await reads(page.locator('.ripple'), /Nothing else moved\./);
    }
  }
  await strike(page, 'Enter');
  await expect.poll(() => figures(page)).toStrictEqual(wanted.figures);
  expect(await sideArea(page)).toBe(wanted.side);
  // A first hull is the news, and not all that comes with her; nothing had kept a limit before.
  const ripple = page.locator('.ripple');
  await reads(ripple.locator('h2'), 'The hull is drawn');
  await reads(ripple.locator('p').first(), /^4220 mm long, 1422 mm wide, 443 mm deep\.$/);
  expect(await ripple.innerText()).not.toMatch(/Past its limit|Mind:|, was /);
  // There is no plan that the typed numbers could be written over.
  expect(await cell(page, 'offsets').locator('.box.written').count()).toBe(0);
  expect(await page.locator('.offsets-faults').count()).toBe(0);
  expect(await leftovers(page)).toStrictEqual([]);
  await reload(page);
  expect(await figures(page)).toStrictEqual(wanted.figures);
});

const idOf = (name: string) => name.replaceAll(/ (.)/g, (_, letter: string) => letter.toUpperCase());

/** Area of one side from the boat's own sheet. */
async function sideArea(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'The boat’s own sheet' }).click();
  const sheet = page.locator('.boat-sheet');
  await sheet.locator('#part-side > summary').click();
  await sheet.locator('#part-side .follows > summary').click();
  const area = await sheet.locator('[data-quantity="side.area"] dd').innerText();
  await sheet.locator('.close-sheet').click();
  return area;
}

test('numbers typed into the table: its keys, what is wrong, how it is written', async () => {
  const page = await openTable();

  await step('arrows, Enter, Home and End go from box to box; Escape takes a number back', async () => {
    await box(page, 'frame1.chine.halfBreadth').focus();
    await strike(page, 'ArrowRight');
    expect(await inFocus(page)).toBe('frame1.chine.height');
    // Past the forward that the keel's box holds for all edges of a frame.
    await strike(page, 'ArrowRight');
    expect(await inFocus(page)).toBe('frame1.sheer.halfBreadth');
    await strike(page, 'ArrowDown', 'Enter');
    expect(await inFocus(page)).toBe('frame3.sheer.halfBreadth');
    await strike(page, 'Shift+Enter', 'Home');
    expect(await inFocus(page)).toBe('frame2.keel.x');
    await strike(page, 'End');
    expect(await inFocus(page)).toBe('frame2.sheer.height');
    await strike(page, 'Control+Home');
    expect(await inFocus(page)).toBe('transom.keel.x');
    await strike(page, 'Control+End');
    expect(await inFocus(page)).toBe('stem.sheer.height');
    const before = await box(page, 'stem.sheer.height').inputValue();
    await page.keyboard.type('12');
    await strike(page, 'ArrowLeft');
    await page.keyboard.type('3');
    expect(await box(page, 'stem.sheer.height').inputValue()).toBe('132');
    await strike(page, 'Escape');
    expect(await inFocus(page)).toBe('stem.sheer.height');
    await expect.poll(() => box(page, 'stem.sheer.height').inputValue()).toBe(before);
    // Untouched, Tab leaves the table, and comes back to the same box.
    await strike(page, 'Tab');
    expect(await inFocus(page)).not.toBe('stem.sheer.height');
    await strike(page, 'Shift+Tab');
    expect(await inFocus(page)).toBe('stem.sheer.height');
  });

  await step('a wrong entry is marked and told; the last good hull stays', async () => {
    const chine = box(page, 'frame2.chine.halfBreadth');
    const hull = page.locator('.hull-in-sight svg');
    await hull.waitFor();
    await chine.fill('54O');
    await reads(sentence(page, 'frame2.chine.halfBreadth'), /540?|O/);
    expect(await chine.getAttribute('aria-invalid')).toBe('true');
    expect(await chine.getAttribute('aria-describedby')).toBe('says-frame2.chine.halfBreadth');
    await reads(page.locator('.hull-in-sight .speaks'), /Last good hull/);
    expect(await hull.count()).toBe(1);
    await chine.blur();
    expect(await chine.inputValue()).toBe('54O');
    // The boxes beside it stand.
    expect(await box(page, 'frame2.sheer.halfBreadth').inputValue()).not.toBe('');
    expect(await page.locator('.offsets-grid [aria-invalid]').count()).toBe(1);
    await page.locator('.offsets-faults .jump').first().click();
    await expect.poll(() => inFocus(page)).toBe('frame2.chine.halfBreadth');
    expect(await leftovers(page)).toStrictEqual([]);
    await reload(page);
    expect(await chine.inputValue()).toBe('54O');
    await chine.fill('');
    await chine.blur();
    await expect.poll(() => page.locator('.offsets-grid [aria-invalid]').count()).toBe(0);
    await expect.poll(() => chine.inputValue()).not.toBe('');
  });

  await step('three notations show the same numbers, and none of them changes one', async () => {
    const sheer = box(page, 'frame2.sheer.halfBreadth');
    const before = await figures(page);
    const plain = await sheer.inputValue();
    await pick(page, 'Written in', 'eighths');
    await expect.poll(() => sheer.inputValue()).toMatch(/^\d-\d+-\d\+?$/);
    await pick(page, 'Written in', 'feet');
    await expect.poll(() => sheer.inputValue()).toMatch(/^\d\.\d+$/);
    await pick(page, 'Written in', 'inches');
    await pick(page, 'Written in', 'mm');
    await expect.poll(() => sheer.inputValue()).toBe(plain);
    expect(await figures(page)).toStrictEqual(before);
    await pick(page, 'Written in', 'eighths');
    await sheer.fill('2-9-4+');
    await sheer.blur();
    expect(await sheer.inputValue()).toBe('2-9-4+');
    await sheer.fill('10-5');
    await reads(sentence(page, 'frame2.sheer.halfBreadth'), /lacks a figure/);
    await sheer.blur();
    expect(await sheer.inputValue()).toBe('10-5');
    await sheer.fill('');
    await sheer.blur();
    await pick(page, 'Written in', 'mm');
    await expect.poll(() => sheer.inputValue()).toBe(plain);
  });

  await step('one number forward does for a frame until its edges are opened', async () => {
    const keel = box(page, 'frame2.keel.x');
    expect(await box(page, 'frame2.sheer.x').count()).toBe(0);
    expect(await box(page, 'stem.sheer.x').count()).toBe(1);
    await keel.fill('1610');
    await keel.blur();
    await reads(
      page.locator('.offsets-grid tbody tr', { hasText: 'frame 2' }).locator('.shared').last(),
      '1610',
    );
    await keel.focus();
    await cell(page, 'offsets').locator('summary', { hasText: 'Stations and edges' }).click();
    await page.getByRole('button', { name: 'Each edge its own forward' }).click();
    await expect.poll(() => box(page, 'frame2.sheer.x').count()).toBe(1);
    await page.getByRole('button', { name: 'One forward for all edges' }).click();
    await expect.poll(() => box(page, 'frame2.sheer.x').count()).toBe(0);
    await undoAll(page);
  });

  await step('the notation chosen for a boat is there again, and each boat has its own', async () => {
    await pick(page, 'Written in', 'eighths');
    await reload(page);
    const caption = page.locator('.offsets-grid caption');
    await reads(caption, /in feet-inches-eighths/);
    // Three edges of them stand in the width of a cell at a desk.
    expect(await page.locator('.offsets-wrap').evaluate((wrap) => wrap.scrollWidth - wrap.clientWidth)).toBe(
      0,
    );
    await page.locator('.boat-pick').selectOption('creek-punt');
    await reads(caption, /in millimetres/);
    await page.locator('.boat-pick').selectOption('ferry-dory');
    await expect.poll(() => caption.innerText()).toMatch(/in feet-inches-eighths/);
  });
});

test('a block from a spreadsheet, and the table taken to one', async () => {
  const page = await openTable();

  await step('with headings it goes in by name; pasted back over itself it changes nothing', async () => {
    const text = '\tsheer half-breadth\tsheer height\nframe 2\t840\t640\nframe 3\t850\t650';
    await paste(box(page, 'transom.keel.x'), text);
    await reads(told(page), /^4 numbers pasted/);
    expect(await box(page, 'frame3.sheer.height').inputValue()).toBe('650');
    await paste(box(page, 'transom.keel.x'), text);
    await reads(told(page), /^4 numbers pasted, none of them other/);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => box(page, 'frame3.sheer.height').inputValue()).not.toBe('650');
  });

  await step('a bad cell is named and nothing is changed', async () => {
    const before = await page
      .locator('.offsets-grid .box')
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    await paste(box(page, 'frame1.keel.x'), '\tkeel x\tkeel z\nframe 1\t1\t2\nframe 2\t3\t1O4');
    await reads(
      page.locator('.offsets-paste'),
      /Nothing was pasted[^]*Row 3, column 3: "1O4" is not a length\./,
    );
    expect(
      await page
        .locator('.offsets-grid .box')
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
    ).toStrictEqual(before);
  });

  await step('without headings it asks what it is, and goes in by Enter', async () => {
    const place = box(page, 'frame2.sheer.halfBreadth');
    const before = await place.inputValue();
    await paste(place, '840\t640\n850\t650');
    const ask = page.locator('.offsets-paste');
    await reads(ask, /What is this block\?[^]*Frame 2\s*840\s*640\s*Frame 3\s*850\s*650/i);
    expect(await place.inputValue()).toBe(before);
    // The key to take it is in hand; Escape leaves it.
    await page.keyboard.press('Escape');
    await expect.poll(() => ask.count()).toBe(0);
    await paste(place, '840\t640\n850\t650');
    await ask.waitFor();
    await page.keyboard.press('Enter');
    await reads(told(page), /^4 numbers pasted\. Undo/);
    expect(await box(page, 'frame3.sheer.height').inputValue()).toBe('650');
    await undoAll(page);
  });

  await step('larger than the table it offers the stations it lacks', async () => {
    const rows = () => page.locator('.offsets-grid tbody th').count();
    const before = await rows();
    // A key may follow at once: what asks takes the focus as it comes, not a frame later.
    await page.evaluate(() => {
      const seen = new MutationObserver(() => {
        const asks = document.querySelector<HTMLElement>('.offsets-paste');
        if (!asks || 'focusCame' in asks.dataset) return;
        asks.dataset['focusCame'] = String(asks.contains(document.activeElement));
      });
      seen.observe(document.body, { childList: true, subtree: true });
    });
    await paste(box(page, 'stem.keel.x'), '4400\t300\n4500\t310');
    await reads(page.locator('.offsets-paste'), /What is this block\?[^]*there is 1 station/);
    expect(await page.locator('.offsets-paste').getAttribute('data-focus-came')).toBe('true');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Add a station and paste' }).click();
    await expect.poll(rows).toBe(before + 1);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(rows).toBe(before);
  });

  await step('saved as CSV, each number is there whole; pasted back it changes nothing', async () => {
    await pick(page, 'Written in', 'eighths');
    const waits = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the table as CSV' }).click();
    const download = await waits;
    expect(download.suggestedFilename()).toMatch(/\.offsets\.csv$/);
    const text = readFileSync(await download.path(), 'utf8');
    expect(text).toMatch(/^Station,keel forward,keel half-breadth,keel height,chine forward/);
    await paste(box(page, 'transom.keel.x'), text);
    await reads(told(page), /^63 numbers pasted, none of them other/);
    await pick(page, 'Written in', 'mm');
  });

  await step('copied to the clipboard and pasted with the keys it changes nothing', async () => {
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy the table' }).click();
    await reads(told(page), /The whole table is on the clipboard/);
    const text = await page.evaluate(() => navigator.clipboard.readText());
    const lines = text.trimEnd().split(/\r?\n/);
    expect(lines).toHaveLength(8);
    expect(lines[0]).toMatch(/^Station\tkeel forward\tkeel half-breadth\tkeel height\tchine forward/);
    expect(lines[3]).toBe('frame 2\t1600\t0\t83\t1600\t543\t83\t1600\t851\t631');
    const sheer = box(page, 'frame2.sheer.halfBreadth');
    await sheer.fill('900');
    await sheer.blur();
    await box(page, 'transom.keel.x').focus();
    await page.keyboard.press('ControlOrMeta+V');
    await reads(told(page), /^63 numbers pasted, 1 of them other/);
    expect(await sheer.inputValue()).toBe('851');
    await undoAll(page);
  });

  await step('where the clipboard is kept shut it stands there as text', async () => {
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new DOMException('shut', 'NotAllowedError'));
    });
    await page.getByRole('button', { name: 'Copy the table' }).click();
    await reads(told(page), /keeps its clipboard shut/);
    expect(await page.getByLabel('The table as text').inputValue()).toContain('frame 2\t1600\t0\t83');
  });

  await step('with stations across and a block for each kind it goes into a new table', async () => {
    const offsets = cell(page, 'offsets');
    await offsets.locator('summary', { hasText: 'A new table' }).click();
    const form = offsets.locator('.new-table');
    await form.getByLabel('Unit of the plan').selectOption({ label: 'feet-inches-eighths' });
    await form.getByLabel('Stations').fill('3');
    await form.getByRole('button', { name: 'Begin the table' }).click();
    await reads(page.locator('.offsets-grid caption'), /in feet-inches-eighths/);
    // Nothing is over a plan that is not there, no hull was good yet, and no name stands where a number is due.
    await reads(page.locator('.hull-in-sight .speaks'), /^(?!.*Last good hull)/);
    expect(await row(page, 'offsets.planLength').locator('input').inputValue()).toBe('');
    expect(await page.locator('.unit-pick').inputValue()).toBe('ft-in 1/16, lb');
    const plan = [
      'Station\tTransom\tFrame 1\tStem',
      'Forward\t0\t5-0-0\t10-0-0',
      'Heights above base',
      'Keel\t0-6-0\t0-3-4+\t0-10-0',
      'Chine\t0-6-0\t0-3-4+\t0-10-0',
      'Sheer\t1-10-0\t1-8-4\t2-4-0',
      'Half-breadths',
      'Chine\t1-6-0\t1-10-0\t0',
      'Sheer\t1-10-0\t2-4-0\t0',
      'Diagonals',
      'A\t1-8-0\t2-2-0\t—',
    ];
    await paste(box(page, 'transom.keel.x'), plan.join('\n'));
    await reads(told(page), /^\d+ numbers pasted\. One diagonal is left out/);
    expect(await box(page, 'frame1.keel.height').inputValue()).toBe('0-3-4+');
    expect(await page.locator('.offsets-grid .box.written').count()).toBe(0);
    await reads(offsets.locator('.in-words'), /4 numbers are still missing/);
  });
});

test('stations come and go, and are cut', async () => {
  const page = await openTable();

  await step(
    'added on the battens, renamed with their entries, taken out, and all of it undone',
    async () => {
      const offsets = cell(page, 'offsets');
      const [length] = await figures(page);
      await box(page, 'frame2.sheer.halfBreadth').fill('frame3.sheer.halfBreadth - 10 mm');
      await box(page, 'frame3.sheer.halfBreadth').focus();
      await offsets.locator('summary', { hasText: 'Stations and edges' }).click();
      const station = offsets.locator('.line-tools fieldset').first();
      await station.getByRole('button', { name: 'Add one forward of it' }).click();
      await reads(told(page), /read off the battens/);
      expect((await figures(page))[0]).toBe(length);
      expect(await page.locator('.offsets-faults').count()).toBe(0);
      await page.getByRole('button', { name: 'Undo', exact: true }).click();

      await box(page, 'frame3.sheer.halfBreadth').focus();
      const name = station.getByLabel('Name of the station');
      await name.fill('frame 2');
      await reads(station.locator('.says'), /already/);
      await name.fill('mould 3');
      await name.press('Enter');
      await expect.poll(() => page.locator('.offsets-grid tbody th').allInnerTexts()).toContain('mould 3');
      const sheer = box(page, 'frame2.sheer.halfBreadth');
      await sheer.focus();
      await expect.poll(() => sheer.inputValue()).toBe('mould3.sheer.halfBreadth - 10 mm');
      await box(page, 'mould3.sheer.halfBreadth').focus();
      await station.getByRole('button', { name: 'Take it out' }).click();
      await reads(told(page), /Mould 3 is taken out.*still named by: frame 2, sheer: half breadth/i);
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await page.getByRole('button', { name: 'Undo', exact: true }).click();
      await expect.poll(() => page.locator('.offsets-grid tbody th').allInnerTexts()).toContain('frame 3');
      await undoAll(page);
    },
  );

  await step('a number of a cut frame, and one measured, says why it does not move', async () => {
    await page.getByRole('button', { name: 'The boat’s own sheet' }).click();
    const sheet = page.locator('.boat-sheet');
    await sheet.locator('.pick select').selectOption('frame2');
    await reads(sheet.locator('[data-quantity="frame2.sheer.halfBreadth"] .mark'), 'plan');
    await sheet.getByRole('button', { name: 'Mark frame 2 as cut' }).click();
    await sheet.locator('.close-sheet').click();
    const sheer = box(page, 'frame2.sheer.halfBreadth');
    const word = page.locator('[id="held-frame2.sheer.halfBreadth"]');
    const note = page.locator('.held-note');
    await reads(word, 'cut 851');
    expect(await note.count()).toBe(0);
    const before = await figures(page);
    await sheer.fill('860');
    await reads(
      note,
      'Frame 2 stays as it is built: sheer, half-breadth is cut to 851. What is typed here moves the design alone. Frame 2 in the boat’s own sheet',
    );
    expect(await sheer.getAttribute('aria-describedby')).toBe('held-frame2.sheer.halfBreadth');
    expect(await figures(page)).toStrictEqual(before);
    // It speaks of the columns shown.
    await pick(page, 'Columns shown', 'height');
    await expect.poll(() => note.count()).toBe(0);
    await pick(page, 'Columns shown', 'all');
    await note.getByRole('button').click();
    await expect.poll(() => sheet.locator('.pick select').inputValue()).toBe('frame2');
    await pressOf(page, 'frame2.sheer.halfBreadth', 'Measured');
    await sheet.locator('[data-quantity="frame2.sheer.halfBreadth"]').getByLabel('Measured').fill('848');
    await reads(word, 'measured 848');
    await reads(note, /sheer, half-breadth measures 848/);
  });

  await step('a boat without a station opens, says what it waits for, and takes its first', async () => {
    const file = {
      format: 'battenbook boat',
      version: 1,
      hull: {
        name: 'Bare',
        unit: 'mm',
        offsetsTo: 'outside of skin',
        edges: ['keel', 'sheer'],
        stations: [],
      },
    };
    await page.locator('.desk > summary').click();
    await page.locator('input[aria-label="Boat file"]').setInputFiles({
      name: 'bare.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(file)),
    });
    await expect.poll(() => page.locator('.offsets-grid .box').count()).toBe(0);
    await reads(page.locator('.offsets-faults'), /until then there is no hull to draw.*at least 3 stations/s);
    // No hull or drawing of the boat before stands in for it.
    await expect.poll(() => page.locator('.hull-in-sight svg, .cell figure.drawing.stale').count()).toBe(0);
    expect(await leftovers(page)).toStrictEqual([]);
    await unfold(cell(page, 'offsets'), 'Stations and edges');
    await page.getByRole('button', { name: 'Add a station' }).click();
    await expect.poll(() => page.locator('.offsets-grid .box').count()).toBeGreaterThan(0);
  });
});

describe('forty stations of eight edges', () => {
  const edges = ['keel', ...[1, 2, 3, 4, 5, 6].map((n) => `chine ${n}`), 'sheer'];
  const shapeAt = (i: number, k: number) => {
    const t = i / 39;
    const y = k === 0 || i === 39 ? 0 : k * 90 * Math.sin(Math.PI * (0.15 + 0.85 * (1 - t))) + 1;
    return { x: 120 * i, y, z: 15 * k * k + 10 * k + 100 * t * t };
  };
  const file = {
    format: 'battenbook boat',
    version: 1,
    hull: {
      name: 'Long launch',
      unit: 'mm',
      offsetsTo: 'outside of skin',
      edges,
      stations: Array.from({ length: 40 }, (_, i) => ({
        name: i === 0 ? 'transom' : i === 39 ? 'stem' : `frame ${i}`,
        ...Object.fromEntries(edges.map((edge, k) => [edge, shapeAt(i, k)])),
      })),
    },
  };

  test('a letter typed draws anew only the boxes that it changes', { timeout: 120_000 }, async () => {
    const page = await openTable();
    await page.locator('.desk > summary').click();
    await page.locator('input[aria-label="Boat file"]').setInputFiles({
      name: 'long.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(file)),
    });
    await reads(page.locator('.boat-pick option').first(), 'Long launch');
    await pick(page, 'Columns shown', 'all');
    // A station's forward once, at the two ends for each edge; the keel has no half-breadth.
    const boxes = 40 * (1 + 8 + 7) + 2 * 7;
    await expect.poll(() => page.locator('.offsets-grid .box').count()).toBe(boxes);
    await box(page, 'frame20.sheer.halfBreadth').focus();
    // A box drawn anew is asked for what stands in it.
    await page.evaluate(() => {
      const own = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!;
      const asked = new Set<unknown>();
      Object.assign(globalThis, { asked });
      Object.defineProperty(HTMLInputElement.prototype, 'value', {
        ...own,
        get(this: HTMLInputElement) {
          if (this.matches('.box')) asked.add(this.closest('td')?.dataset['quantity']);
          return own.get!.call(this) as string;
        },
      });
    });
    await page.keyboard.type('x');
    await expect.poll(() => page.locator('.offsets-grid [aria-invalid]').count()).toBeGreaterThan(0);
    const asked = await page.evaluate(() => [...(globalThis as unknown as { asked: Set<string> }).asked]);
    expect(asked).toContain('frame20.sheer.halfBreadth');
    expect(asked.length).toBeLessThan(12);
  });
});

/** Wider than the window, px. */
const tooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test('nothing is wider than a phone, one edge stands there at a time, and it prints as tables', async () => {
  const page = await openTable({ width: 390, touch: true });
  expect(await tooWide(page)).toBeLessThanOrEqual(0);
  expect(await page.locator('.offsets-grid thead th[scope="col"]').count()).toBe(3);
  await pick(page, 'Columns shown', 'edge sheer');
  const wrap = page.locator('.offsets-wrap');
  expect(await wrap.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
  await page.emulateMedia({ media: 'print' });
  await page.locator('.offsets-print table').first().waitFor();
  expect(await page.locator('.offsets-print table').count()).toBe(3);
  expect(await wrap.isVisible()).toBe(false);
});

test.each([390, 1280])(
  'axe finds nothing at %i px by light and by dark, with a fault, a refused paste and all tools open',
  async (width) => {
    const page = await openTable({ width, touch: width < 500, reducedMotion: 'reduce' });
    await pick(page, 'Columns shown', 'edge chine');
    await box(page, 'frame2.chine.halfBreadth').fill('54O');
    await paste(box(page, 'frame1.chine.height'), '1\t2\t3\t4\t5');
    const tools = cell(page, 'offsets').locator('.offsets details:not([open]) > summary');
    while ((await tools.count()) > 0) await tools.first().click();
    await arrived(page);
    await page.evaluate(readFileSync(inRoot('node_modules/axe-core/axe.min.js'), 'utf8'));
    for (const colorScheme of ['light', 'dark'] as const) {
      await step(colorScheme, async () => {
        await page.emulateMedia({ colorScheme });
        const found = await page.evaluate(async () => {
          const { axe } = globalThis as unknown as { axe: { run: (place: string) => Promise<AxeResults> } };
          const { violations } = await axe.run('[data-cell="offsets"]');
          return violations.flatMap(({ id, nodes }) =>
            nodes.map(({ target }) => `${id} at ${target.join(' ')}`),
          );
        });
        expect(found).toStrictEqual([]);
        expect(await tooWide(page)).toBeLessThanOrEqual(0);
      });
    }
  },
);
