/** A link carries a boat and a place from one browser to another, changes nothing that is there, and is refused when it is damaged. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { violations } from './axe';
import { openPage } from './harness';
import {
  allAnswers,
  answer,
  arrived,
  openNotebook,
  press,
  reads,
  step,
  tooSmall,
  tooWide,
  type,
} from './steps';

const sheet = (page: Page) => page.locator('.link-sheet');
const boats = (page: Page) =>
  page.getByLabel('Boat', { exact: true }).locator('optgroup').first().locator('option').allInnerTexts();
const isWell = async (page: Page) => {
  expect(await violations(page, { within: '.link-sheet' })).toStrictEqual([]);
  expect(await tooWide(page)).toBe(0);
};

test('a boat goes from one browser to another in a link, versions and place and all', async () => {
  const from = await openNotebook('scarf-and-resin');
  await type(from, 'scarf.thickness', '20');
  await press(from, 'Keep this and try another');
  await type(from, 'scarf.slope', '12');
  await reads(answer(from, 'scarf.taper', 'second'), '240 mm');
  const sent = await allAnswers(from);
  await from.locator('.desk > summary').click();
  await press(from, 'Make a link');
  const made = sheet(from).locator('textarea');
  await expect.poll(() => made.inputValue()).toMatch(/#link=[\w-]{100,}$/);
  const link = await made.inputValue();
  const hash = link.slice(link.indexOf('#'));
  expect(await sheet(from).innerText()).toContain(`The link, ${link.length} letters long`);
  await isWell(from);

  const to = await openPage({ small: true, at: hash, width: 360, height: 740, touch: true });
  await step('what it brings is shown before anything is taken', async () => {
    await reads(sheet(to).getByRole('heading'), 'A link brings Ferry dory');
    expect(await sheet(to).innerText()).toMatch(/A second version, which differs in 1 number/);
    await arrived(to);
    await isWell(to);
    expect(await tooSmall(to)).toStrictEqual([]);
    expect(await to.evaluate(() => localStorage.getItem('battenbook boat 2'))).toBeNull();
  });
  await step('she is taken as a boat of her own, and the address is the plain one', async () => {
    await sheet(to).getByRole('button', { name: 'Take Ferry dory' }).click();
    await arrived(to);
    await expect.poll(() => allAnswers(to)).toStrictEqual(sent);
    expect(new URL(to.url()).hash).toMatch(/^#\/scarf-and-resin(\/\w+)?$/);
  });
  await step('one that is damaged says so and changes nothing', async () => {
    const before = [new URL(to.url()).hash, await boats(to), await allAnswers(to)];
    await to.evaluate(
      (cut) => {
        location.hash = cut;
      },
      hash.slice(0, -20),
    );
    await reads(
      to.locator('.notices .notice p').first(),
      'The link was not opened: it is cut short or damaged. Ask for it again, or copy the whole of it.',
    );
    expect([new URL(to.url()).hash, await boats(to), await allAnswers(to)]).toStrictEqual(before);
  });
  await step('the same again lays no second one on the shelf', async () => {
    await to.evaluate((again) => {
      location.hash = again;
    }, hash);
    await reads(sheet(to).locator('p').first(), /She is on your shelf already/);
    await sheet(to).getByRole('button', { name: 'Leave it' }).click();
    expect(new URL(to.url()).hash).toMatch(/^#\/scarf-and-resin/);
  });
});
