/** Boats side by side: each keeps what was done on her, through any switch and any end of the page; notebooks that bring a boat, or none. */
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { watch } from './harness';
import {
  allAnswers,
  answer,
  arrived,
  cell,
  field,
  openNotebook,
  openQuestion,
  press,
  reads,
  reload,
  textOf,
  type,
} from './steps';

const boat = (page: Page) => page.getByLabel('Boat', { exact: true });
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });
const onBench = (page: Page, name: string) =>
  expect.poll(() => page.title()).toMatch(new RegExp(`^${name} ·`));
const begin = async (page: Page, label: string) => {
  await boat(page).selectOption({ label });
  await onBench(page, label);
};
const names = (page: Page) => page.locator('.own-boats li .own-boat-name').allInnerTexts();

/** Waits until a text that was typed is in what the browser keeps. */
const saved = (page: Page, text: string) =>
  expect.poll(() => page.evaluate(() => Object.values(localStorage).join('\n'))).toContain(text);

/** The page is closed without a word to it, as when a browser is killed; another one is opened in its place. */
async function killed(page: Page, typed: string): Promise<Page> {
  // Edits are written after a pause; a page killed within it loses the last key press at most.
  await saved(page, typed);
  const url = page.url();
  const next = await page.context().newPage();
  watch(next);
  await page.close({ runBeforeUnload: false });
  await next.goto(url);
  await arrived(next);
  return next;
}

test('three boats, each as she was left, after the page was killed; and undo goes back on each', async () => {
  const first = await openNotebook('scarf-and-resin');
  await type(first, 'scarf.thickness', '20');
  await type(first, 'scarf.slope', '10');
  await reads(answer(first, 'scarf.taper'), '200 mm');
  await begin(first, 'Class skiff');
  await type(first, 'scarf.thickness', '22');
  await press(first, 'Keep this and try another');
  await type(first, 'scarf.slope', '12');
  await reads(answer(first, 'scarf.taper', 'second'), `${12 * 22} mm`);
  await begin(first, 'Creek punt');
  await type(first, 'scarf.thickness', '30');
  await reads(answer(first, 'scarf.taper'), '240 mm');
  const punt = await allAnswers(first);

  const page = await killed(first, '30 mm');
  await onBench(page, 'Creek punt');
  expect(await allAnswers(page)).toStrictEqual(punt);
  await boat(page).selectOption({ label: 'Ferry dory' });
  await onBench(page, 'Ferry dory');
  await reads(answer(page, 'scarf.taper'), '200 mm');
  await press(page, 'Undo');
  await reads(answer(page, 'scarf.taper'), '160 mm');
  await press(page, 'Undo');
  await reads(answer(page, 'scarf.taper'), '144 mm');
  await expect.poll(() => undo(page).isDisabled()).toBe(true);
  await press(page, 'Redo');
  await reads(answer(page, 'scarf.taper'), '160 mm');

  await boat(page).selectOption({ label: 'Class skiff' });
  await onBench(page, 'Class skiff');
  await reads(answer(page, 'scarf.taper'), `${8 * 22} mm`);
  await reads(answer(page, 'scarf.taper', 'second'), `${12 * 22} mm`);
  for (let n = 0; n < 3; n += 1) await press(page, 'Undo');
  await reads(answer(page, 'scarf.taper'), '144 mm');
  expect(await page.locator('.figure.second').count()).toBe(0);

  // What was gone back to is what is kept; the step undone is there to be redone.
  await reload(page);
  await reads(answer(page, 'scarf.taper'), '144 mm');
  await press(page, 'Redo');
  await reads(answer(page, 'scarf.taper'), `${8 * 22} mm`);
  await boat(page).selectOption({ label: 'Ferry dory' });
  await reads(answer(page, 'scarf.taper'), '160 mm');
});

test('two windows on two boats: each reloads its own', async () => {
  const one = await openNotebook('scarf-and-resin');
  await type(one, 'scarf.thickness', '20');
  await reads(answer(one, 'scarf.taper'), '160 mm');
  await saved(one, '20 mm');
  const other = await one.context().newPage();
  watch(other);
  await other.goto(one.url());
  await arrived(other);
  await begin(other, 'Vee launch');
  await type(other, 'scarf.thickness', '25');
  await reads(answer(other, 'scarf.taper'), '200 mm');
  await type(one, 'scarf.thickness', '21');
  await reads(answer(one, 'scarf.taper'), '168 mm');
  await reload(one);
  await onBench(one, 'Ferry dory');
  await reads(answer(one, 'scarf.taper'), '168 mm');
  await reload(other);
  await onBench(other, 'Vee launch');
  await reads(answer(other, 'scarf.taper'), '200 mm');
  expect(await one.getByRole('alert').locator('p').count()).toBe(0);
});

describe('the list of boats', () => {
  test('names, copies, opens, puts away and brings back; all of it holds after a reload', async () => {
    const page = await openNotebook('scarf-and-resin');
    await type(page, 'scarf.thickness', '20');
    await boat(page).selectOption('list');
    const name = page.getByLabel('Name of the boat in hand');
    await name.fill('Evening dory');
    await name.blur();
    await onBench(page, 'Evening dory');
    await reads(page.locator('article.prose'), /bench now is called\s+Evening dory/);
    await press(page, 'The boat’s own sheet');
    // The drawing is called by her, for whom it is read out.
    await expect
      .poll(() => page.locator('.boat-sheet figure svg').first().getAttribute('aria-label'))
      .toMatch(/Evening dory in profile/);
    await press(page, 'Close the boat’s sheet');
    await press(page, 'Copy Evening dory');
    await onBench(page, 'Evening dory 2');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    await type(page, 'scarf.thickness', '30');
    await reads(answer(page, 'scarf.taper'), '240 mm');
    expect(await names(page)).toStrictEqual(['Evening dory', 'Evening dory 2 (in hand)']);
    await press(page, 'Put Evening dory 2 away');
    await onBench(page, 'Evening dory');
    await reads(answer(page, 'scarf.taper'), '160 mm');

    await reload(page);
    await onBench(page, 'Evening dory');
    expect(await boat(page).locator('optgroup').first().locator('option').allInnerTexts()).not.toContain(
      'Evening dory 2',
    );
    await boat(page).selectOption('list');
    await press(page, 'Bring Evening dory 2 back');
    await press(page, 'Open Evening dory 2');
    await onBench(page, 'Evening dory 2');
    await reads(answer(page, 'scarf.taper'), '240 mm');
    // A copy has the steps of the boat it was made from.
    await press(page, 'Undo');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    await name.fill(' ');
    await name.blur();
    await reads(page.locator('.boat-name .says'), 'A boat needs a name.');
    await onBench(page, 'Evening dory 2');
    await press(page, 'Close the list');
    expect(await page.locator('.own-boats').count()).toBe(0);
  });

  test('a starter looked at and left as she was leaves nothing behind', async () => {
    const page = await openNotebook('scarf-and-resin');
    await type(page, 'scarf.thickness', '20');
    await begin(page, 'Class skiff');
    await begin(page, 'Vee launch');
    await press(page, 'Back to Class skiff');
    await onBench(page, 'Class skiff');
    await boat(page).selectOption('list');
    await expect.poll(() => names(page)).toStrictEqual(['Ferry dory', 'Class skiff (in hand)']);
  });
});

describe('a notebook without a boat', () => {
  test('shows none, takes nothing from the one that is kept and gives her nothing', async () => {
    const page = await openNotebook('quick-scarf');
    const fresh = await allAnswers(page);
    expect(await page.locator('.hull-in-sight').count()).toBe(0);
    expect(await textOf(boat(page).locator('option').first())).toBe('No boat here');
    await type(page, 'quickScarf.thickness', '24');
    await reads(answer(page, 'quickScarf.taper'), '192 mm');
    await page.evaluate(() => void (location.hash = '#/scarf-and-resin'));
    await onBench(page, 'Ferry dory');
    await arrived(page);
    await type(page, 'scarf.thickness', '20');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    await begin(page, 'Creek punt');
    await page.evaluate(() => void (location.hash = '#/quick-scarf'));
    await arrived(page);
    expect(await allAnswers(page)).toStrictEqual({ ...fresh, ...(await answersOf(page, 'quickScarf')) });
    await reads(answer(page, 'quickScarf.taper'), '192 mm');
    await press(page, 'Undo');
    await expect.poll(() => allAnswers(page)).toStrictEqual(fresh);
    await press(page, 'Redo');
    await reload(page);
    await reads(answer(page, 'quickScarf.taper'), '192 mm');
    const kept = await page.evaluate(() =>
      Object.entries(localStorage).filter(([key]) => /^battenbook boat( \d+)?$/.test(key)),
    );
    expect(kept.length).toBeGreaterThan(0);
    for (const [, text] of kept) expect(text).not.toContain('quickScarf');
  });

  test('shows nothing of one', async () => {
    const page = await openQuestion('quickScarf');
    expect(await page.locator('.boat-pick, .alongside, .hull-in-sight, .ripple').count()).toBe(0);
    expect(await field(page, 'quickScarf.thickness').inputValue()).toBe('18 mm');
  });
});

describe('a story that is true of one boat', () => {
  test('brings her on a sheet of her own, and leaves the builder’s alone', async () => {
    const page = await openNotebook('scarf-and-resin');
    await boat(page).selectOption('list');
    const name = page.getByLabel('Name of the boat in hand');
    await name.fill('Evening dory');
    await name.blur();
    await begin(page, 'Creek punt');
    await type(page, 'scarf.thickness', '20');
    await reads(answer(page, 'scarf.taper'), '160 mm');
    await page.evaluate(() => void (location.hash = '#/misread'));
    await arrived(page);
    await onBench(page, 'Creek punt');
    await press(page, 'Bring Ferry dory');
    await onBench(page, 'Ferry dory');
    await reads(page.locator('.notices .whose-boat p'), /Your boat, Creek punt, lies untouched/);
    await reads(page.locator('article.prose'), /Her sheer stands\s+851 mm/);
    await page.locator('.try-this', { hasText: 'read as a 0' }).getByRole('button').click();
    await page.locator('.versions').waitFor();

    // Another notebook is read with the builder’s own boat again.
    await page.evaluate(() => void (location.hash = '#/scarf-and-resin'));
    await onBench(page, 'Creek punt');
    await arrived(page);
    await reads(answer(page, 'scarf.taper'), '160 mm');
    expect(await page.locator('.figure.second').count()).toBe(0);
    await page.evaluate(() => void (location.hash = '#/misread'));
    await onBench(page, 'Ferry dory');
    await page.locator('.notices .whose-boat').getByRole('button', { name: 'Back to your boat' }).click();
    await onBench(page, 'Creek punt');
    await boat(page).selectOption('list');
    await expect.poll(() => names(page)).toStrictEqual(['Evening dory', 'Creek punt (in hand)']);
  });
});

const answersOf = (page: Page, name: string) =>
  cell(page, name)
    .locator('.answer')
    .evaluateAll((all) =>
      Object.fromEntries(
        all.map((one) => [
          one.getAttribute('data-quantity') ?? '',
          one.querySelector('dd')?.textContent ?? '',
        ]),
      ),
    );
