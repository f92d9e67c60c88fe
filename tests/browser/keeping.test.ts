/** Nothing typed is lost: reloads, units, other boats, files, other windows, and browsers that keep nothing. */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { fetchedFrom, watch } from './harness';
import {
  allAnswers,
  answer,
  arrived,
  field,
  fieldNumber,
  holds,
  leftovers,
  openNotebook,
  openSheet,
  press,
  reads,
  reload,
  row,
  step,
  textOf,
  type,
  undoAll,
} from './steps';

const SHELF = 'battenbook boat';

interface Kept {
  readonly entries: Readonly<Record<string, string>>;
  readonly second: Readonly<Record<string, string | null>> | null;
  readonly table: unknown;
}

/** What the browser keeps of the boat, but for the units it is shown in and the count of savings. */
async function kept(page: Page): Promise<Kept> {
  const text = await page.evaluate((key) => localStorage.getItem(key), SHELF);
  const { entries, second, table } = JSON.parse(text ?? '{}') as Kept;
  return { entries, second, table };
}

/** Waits until an entry has been saved. */
async function saved(page: Page, name: string, text: string): Promise<void> {
  await expect.poll(async () => (await kept(page)).entries?.[name]).toBe(text);
}

const units = (page: Page) => page.getByLabel('Units', { exact: true });
const boat = (page: Page) => page.getByLabel('Boat', { exact: true });
const openFile = (page: Page, name: string, text: string) =>
  page
    .getByLabel('Boat file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

async function savedFile(page: Page): Promise<string> {
  const desk = page.locator('.desk:not([open]) > summary');
  if ((await desk.count()) > 0) await desk.click();
  const download = page.waitForEvent('download');
  await press(page, 'Save boat to a file');
  const file = await download;
  expect(file.suggestedFilename()).toBe('ferry-dory.boat.json');
  return readFile(await file.path(), 'utf8');
}

test('after a reload all is as it was: entries, second version, units, notebook', async () => {
  const page = await openNotebook('scarf-and-resin');
  await type(page, 'scarf.thickness', '20');
  await openSheet(page);
  await type(page, 'frame3.side.flare', '31');
  await press(page, 'Keep this and try another');
  const slope = field(page, 'scarf.slope');
  await slope.fill('12');
  await slope.blur();
  await reads(answer(page, 'scarf.taper', 'second'), `${12 * 20} mm`);
  await units(page).selectOption('ft-in 1/16, lb');
  // 160 mm and 240 mm to the nearest sixteenth: 6.299 and 9.449 inches.
  await reads(answer(page, 'scarf.taper'), '6 5/16 in');
  await reads(answer(page, 'scarf.taper', 'second'), '9 7/16 in');
  expect(Math.round((160 / 25.4) * 16)).toBe(6 * 16 + 5);
  expect(Math.round((240 / 25.4) * 16)).toBe(9 * 16 + 7);
  const before = await allAnswers(page);

  await reload(page);
  expect(await page.locator('h1').first().innerText()).toBe('Scarf and resin');
  // The resin takes the glue from a cell of another notebook, which comes when the page is at rest.
  await expect.poll(() => allAnswers(page)).toStrictEqual(before);
  expect(await units(page).inputValue()).toBe('ft-in 1/16, lb');
  // As typed, whatever the units shown.
  expect(await field(page, 'scarf.thickness').inputValue()).toBe('20 mm');
  expect(await page.getByRole('radio', { name: 'the version tried' }).isChecked()).toBe(true);
  await openSheet(page);
  await holds(page, 'frame3.side.flare', '31°');
});

test('what is kept is read before anything can be written in its place, and no sheet without it is seen', async () => {
  const page = await openNotebook('quick-scarf');
  await type(page, 'quickScarf.thickness', '20');
  let bring = () => {};
  const held = new Promise<void>((resolve) => {
    bring = resolve;
  });
  await page.route(fetchedFrom('saved'), async (route) => {
    await held;
    await route.continue();
  });
  const cellHasCome = page.waitForResponse(fetchedFrom('src/cells/timber/joints/scarf.ts'));
  await page.reload();
  await cellHasCome;
  await page.locator('main .fetching').waitFor();
  await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
  expect(await page.locator('main .fetching').count()).toBe(1);
  expect(await field(page, 'quickScarf.thickness').count()).toBe(0);
  bring();
  await arrived(page);
  expect(await field(page, 'quickScarf.thickness').inputValue()).toBe('20 mm');
  await reads(answer(page, 'quickScarf.taper'), '160 mm');
});

test('leaving at once, other units, another boat', async () => {
  const page = await openNotebook('scarf-and-resin');

  await step('leaving at once after a key press loses nothing', async () => {
    await field(page, 'scarf.thickness').fill('21');
    await reload(page);
    await reads(answer(page, 'scarf.taper'), `${8 * 21} mm`);
    expect(await field(page, 'scarf.thickness').inputValue()).toBe('21 mm');
    await undoAll(page);
    await reads(answer(page, 'scarf.taper'), '144 mm');
  });

  await step('units to and fro change nothing that is kept', async () => {
    await type(page, 'scarf.thickness', '3/4 in');
    await type(page, 'scarf.boardLength', '2.4 m');
    await saved(page, 'keelson.boardLength', '2.4 m');
    const before = await kept(page);
    const shown = await allAnswers(page);
    expect(before.entries).toStrictEqual({ 'keelson.thickness': '3/4 in', 'keelson.boardLength': '2.4 m' });
    await reads(answer(page, 'scarf.taper'), '152.4 mm');
    for (const [choice, taper] of [
      ['ft-in 1/8, lb', '6 in'],
      ['ft-in 1/32, lb', '6 in'],
      ['decimal in, lb', '6 in'],
      ['mm, kg', '152.4 mm'],
    ] as const) {
      await units(page).selectOption(choice);
      await reads(answer(page, 'scarf.taper'), taper);
      await field(page, 'scarf.thickness').focus();
      await field(page, 'scarf.thickness').blur();
    }
    await page.reload();
    await arrived(page);
    expect(await kept(page)).toStrictEqual(before);
    expect(await allAnswers(page)).toStrictEqual(shown);
    await undoAll(page);
  });

  await step('another boat on the bench, and the first one back as she was left', async () => {
    await type(page, 'scarf.thickness', '20');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    const before = await allAnswers(page);
    await boat(page).selectOption({ label: 'Class skiff' });
    await reads(
      page.locator('.notice p'),
      'Class skiff is on the bench now. Ferry dory is kept as you left her.',
    );
    await expect.poll(() => page.title()).toMatch(/^Class skiff/);
    await expect.poll(() => textOf(boat(page).locator('option').first())).toBe('Class skiff');
    await reads(answer(page, 'scarf.taper'), '144 mm');
    expect(await allAnswers(page)).not.toStrictEqual(before);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    await press(page, 'Back to Ferry dory');
    await expect.poll(() => allAnswers(page)).toStrictEqual(before);
    await expect.poll(() => page.title()).toMatch(/^Ferry dory/);
  });
});

test('as a file', { timeout: 120_000 }, async () => {
  const page = await openNotebook('scarf-and-resin');
  const elsewhere = await openNotebook('scarf-and-resin');

  await step('saved, and opened in another browser, gives the same answers', async () => {
    await type(page, 'scarf.thickness', '2 * 11 mm');
    await openSheet(page);
    await type(page, 'frame3.side.flare', '33');
    await reads(answer(page, 'scarf.taper'), `${8 * 22} mm`);
    const before = await allAnswers(page);
    const text = await savedFile(page);

    await boat(elsewhere).selectOption({ label: 'Vee launch' });
    await expect.poll(() => elsewhere.title()).toMatch(/^Vee launch/);
    await openFile(elsewhere, 'mine.json', text);
    await expect.poll(() => allAnswers(elsewhere)).toStrictEqual(before);
    await holds(elsewhere, 'scarf.thickness', '2 * 11 mm');
    await openSheet(elsewhere);
    await holds(elsewhere, 'frame3.side.flare', '33°');
    await press(page, 'Close the boat’s sheet');
    await undoAll(page);
  });

  await step('with both versions, and the same in hand', async () => {
    await press(page, 'Keep this and try another');
    await type(page, 'scarf.thickness', '25');
    await reads(answer(page, 'scarf.taper', 'second'), '200 mm');
    const kept = await textOf(answer(page, 'scarf.taper'));
    const text = await savedFile(page);
    await openFile(elsewhere, 'tried.json', text);
    await reads(answer(elsewhere, 'scarf.taper', 'second'), '200 mm');
    await reads(answer(elsewhere, 'scarf.taper'), kept);
    expect(await elsewhere.getByRole('radio', { name: 'the version tried' }).isChecked()).toBe(true);
    await undoAll(page);
  });

  await step('refused in words where it is no boat; the bench stays as it was', async () => {
    await type(page, 'scarf.thickness', '20');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    const good = JSON.parse(await savedFile(page)) as Record<string, unknown>;
    const before = await allAnswers(page);
    const hostile: readonly (readonly [name: string, text: string])[] = [
      ['empty.json', ''],
      ['page.json', '<!doctype html><script>alert(1)</script>'],
      ['number.json', '42'],
      ['nothing.json', 'null'],
      ['list.json', '[[[[]]]]'],
      ['cut.json', JSON.stringify(good).slice(0, 200)],
      ['proto.json', '{"__proto__": {"polluted": true}, "format": "battenbook boat", "version": 1}'],
      ['deep.json', `${'['.repeat(50_000)}${']'.repeat(50_000)}`],
      ['huge.json', ' '.repeat(5_000_000)],
      ['stations.json', JSON.stringify({ ...good, hull: { ...(good['hull'] as object), stations: 7 } })],
    ];
    for (const [name, text] of hostile) {
      await openFile(page, name, text);
      await reads(page.locator('.notice p'), new RegExp(`^${name} was not opened: .{8,300}\\.$`, 's'));
      expect(await textOf(page.locator('.notice p'))).not.toMatch(
        /JSON\.|Unexpected|token|undefined|Expected|object/,
      );
      expect(await allAnswers(page)).toStrictEqual(before);
      await press(page, 'Understood');
    }
    expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
    await undoAll(page);
  });

  await step('of a boat without stations: opened, and each cell says what it waits for', async () => {
    const good = JSON.parse(await savedFile(page)) as { hull: object };
    await openFile(page, 'bare.json', JSON.stringify({ ...good, hull: { ...good.hull, stations: [] } }));
    await reads(page.locator('.answer[data-quantity="resin.total"] .figure'), /^waits for /);
    await reads(answer(page, 'scarf.taper'), '144 mm');
    await openSheet(page);
    expect(await leftovers(page)).toStrictEqual([]);
    await press(page, 'Back to Ferry dory');
    await expect.poll(() => answer(page, 'resin.total').count()).toBe(1);
  });

  await step('with an entry that can’t be read: opened, and said at its field', async () => {
    await type(page, 'scarf.thickness', '20');
    const text = (await savedFile(page)).replace('"20 mm"', '"3 kg"');
    await openFile(page, 'odd.json', text);
    await holds(page, 'scarf.thickness', '3 kg');
    await reads(row(page, 'scarf.thickness').locator('.says'), /length/);
    expect(await answer(page, 'scarf.strengthKept').innerText()).toBe('80 %');
  });
});

describe('two windows', () => {
  /** The same boat in two windows of one browser, changed first in the other. */
  async function twoWindows(): Promise<readonly [Page, Page]> {
    const mine = await openNotebook('scarf-and-resin');
    await type(mine, 'scarf.boardLength', '3 m');
    await saved(mine, 'keelson.boardLength', '3 m');
    const other = await mine.context().newPage();
    watch(other);
    await other.goto(mine.url());
    await arrived(other);
    await type(other, 'scarf.thickness', '22');
    await saved(other, 'keelson.thickness', '22 mm');
    await type(mine, 'scarf.thickness', '30');
    await reads(mine.getByRole('alert').locator('p'), /changed in another window.*which/is);
    return [mine, other];
  }

  test('the conflict is said; this window’s boat kept, the other’s set aside', async () => {
    const [mine] = await twoWindows();
    await reads(answer(mine, 'scarf.taper'), '240 mm');
    // Until one is chosen, nothing is overwritten.
    await saved(mine, 'keelson.thickness', '22 mm');
    await press(mine, 'Keep this window’s');
    await saved(mine, 'keelson.thickness', '30 mm');
    const aside = await mine.evaluate((key) => localStorage.getItem(`${key} aside 1`), SHELF);
    expect(aside).toContain('22 mm');
    await expect.poll(() => mine.getByRole('alert').locator('p').count()).toBe(0);
  });

  test('the other window’s boat taken, and this one’s back by Undo', async () => {
    const [mine] = await twoWindows();
    await press(mine, 'Take the other window’s');
    await reads(answer(mine, 'scarf.taper'), `${8 * 22} mm`);
    expect(await fieldNumber(mine, 'scarf.boardLength')).toBe(3);
    await press(mine, 'Undo');
    await reads(answer(mine, 'scarf.taper'), '240 mm');
    await saved(mine, 'keelson.thickness', '30 mm');
  });
});

describe('a browser that keeps nothing', () => {
  test('has its storage full, then forbids it: said, and the work goes on', async () => {
    const page = await openNotebook('scarf-and-resin', { alone: true });

    await step('full, it is said once', async () => {
      await page.evaluate(() => {
        Storage.prototype.setItem = () => {
          throw new DOMException('exceeded the quota', 'QuotaExceededError');
        };
      });
      await type(page, 'scarf.thickness', '20');
      await reads(page.locator('.notice p'), /storage is full.*not kept.*file/s);
      await reads(answer(page, 'scarf.taper'), '160 mm');
      await press(page, 'Understood');
      await type(page, 'scarf.thickness', '21');
      await reads(answer(page, 'scarf.taper'), '168 mm');
      expect(await page.locator('.notice').count()).toBe(0);
    });

    await step('forbidden', async () => {
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get() {
            throw new DOMException('The operation is insecure.', 'SecurityError');
          },
        });
      });
      await reload(page);
      await reads(page.locator('.notice p'), /keeps nothing.*goes on.*file/s);
      await type(page, 'scarf.thickness', '20');
      await reads(answer(page, 'scarf.taper'), '160 mm');
      await press(page, 'Understood');
      await type(page, 'scarf.thickness', '21');
      await reads(answer(page, 'scarf.taper'), '168 mm');
      expect(await savedFile(page)).toContain('21 mm');
    });
  });

  test('holds a spoilt text: said, set aside, and the notebook begins afresh', async () => {
    const page = await openNotebook('scarf-and-resin', {
      storage: { [SHELF]: '{"form":"battenbook saved boat","ver' },
    });
    await reads(page.locator('.notice p'), /can't be read.*set aside/s);
    await reads(answer(page, 'scarf.taper'), '144 mm');
    const aside = await page.evaluate((key) => localStorage.getItem(`${key} aside 1`), SHELF);
    expect(aside).toBe('{"form":"battenbook saved boat","ver');
  });
});
