/** Notebooks of the builder's own: opened, dropped, worked in, put away, kept with the boat, and broken ones. */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { describe, expect, test } from 'vitest';
import { violations } from './axe';
import {
  answer,
  arrived,
  cell,
  field,
  fieldNumber,
  isFocused,
  leftovers,
  openNotebook,
  press,
  reads,
  reload,
  step,
  tooWide,
  type,
} from './steps';

const keelDay = `---
title: Keel day
summary: A Saturday on the keelson.
order: 50
---

The board is \`= keelScarf.thickness\` thick. Mark the taper \`= keelScarf.taper\` from the end.

## At the bench

\`\`\`cell scarf as keelScarf
thickness = 20 mm
slope = 8
\`\`\`

\`\`\`when keelScarf.taper > 200 mm
That is a long taper.
\`\`\`

- [ ] Marked on both faces.
`;

const open = (page: Page, name: string, text: string | Buffer) =>
  page.getByLabel('Notebook file').setInputFiles({
    name,
    mimeType: 'text/markdown',
    buffer: typeof text === 'string' ? Buffer.from(text) : text,
  });

const drop = async (page: Page, name: string, text: string): Promise<void> => {
  const dataTransfer = await page.evaluateHandle(
    ([called, content]) => {
      const data = new DataTransfer();
      data.items.add(new File([content!], called!));
      return data;
    },
    [name, text],
  );
  // As a hand does it, over the page again and again; it takes note once it is at rest.
  await expect
    .poll(async () => {
      await page.dispatchEvent('main', 'dragover', { dataTransfer });
      return page.locator('body.dropping').count();
    })
    .toBe(1);
  await page.dispatchEvent('main', 'drop', { dataTransfer });
  await expect.poll(() => page.locator('body.dropping').count()).toBe(0);
};

const title = (page: Page) => page.locator('#notebook-title');
const listed = (page: Page) => page.locator('.contents > details > ul > li > a').allInnerTexts();
const prose = (page: Page) => page.locator('article.prose');
const said = (page: Page) => page.locator('.notices');
const notHere = (page: Page) => page.locator('.not-here');
const keptNotebooks = (page: Page, key = 'battenbook boat') =>
  page.evaluate(
    (at) => (JSON.parse(localStorage.getItem(at) ?? '{}') as { notebooks?: unknown }).notebooks,
    key,
  );

/** What is the builder's own stands after the others, and the words of the trade last of all. */
const withKeelDay = (before: readonly string[]) => [...before.slice(0, -1), 'Keel day yours', 'Words'];

test('one that is opened is worked in like any other, and put away', async () => {
  const page = await openNotebook('scarf-and-resin');
  const before = await listed(page);

  await step('it is opened from a file', async () => {
    await open(page, 'Keel day.md', keelDay);
    await reads(title(page), 'Keel day');
    await reads(said(page), /“Keel day” is opened\. It is kept with Ferry dory\./);
    expect(new URL(page.url()).hash).toBe('#/keel-day');
    expect(await listed(page)).toStrictEqual(withKeelDay(before));
    await arrived(page);
    await expect.poll(() => isFocused(title(page))).toBe(true);
  });

  await step('a cell in it answers, and the prose with it', async () => {
    await reads(answer(page, 'keelScarf.taper'), '160 mm');
    await reads(prose(page), /Mark the taper 160 mm from the end/);
    expect(await prose(page).innerText()).not.toContain('a long taper');
    await type(page, 'keelScarf.slope', '12');
    await reads(prose(page), /Mark the taper 240 mm from the end[^]*That is a long taper/);
    await page.getByLabel('Marked on both faces.').check();
  });

  await step('a reload keeps all of it', async () => {
    await reload(page);
    await reads(title(page), 'Keel day');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
    expect(await page.getByLabel('Marked on both faces.').isChecked()).toBe(true);
    expect(await keptNotebooks(page)).toStrictEqual({ 'keel-day': { text: keelDay, away: false } });
  });

  await step('undo takes back the entry, then the opening; redo brings both', async () => {
    await press(page, 'Undo');
    await reads(answer(page, 'keelScarf.taper'), '160 mm');
    await press(page, 'Undo');
    await reads(notHere(page), /There is no notebook “keel-day” here/);
    expect(await listed(page)).toStrictEqual(before);
    await press(page, 'Redo');
    await press(page, 'Redo');
    await reads(title(page), 'Keel day');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
  });

  await step('it is put away, and undo takes that back too', async () => {
    await press(page, 'Put this notebook away');
    await reads(notHere(page), /“Keel day” is put away/);
    expect(await listed(page)).toStrictEqual(before);
    await expect.poll(() => isFocused(title(page))).toBe(true);
    await press(page, 'Undo');
    await reads(title(page), 'Keel day');
    await press(page, 'Redo');
    await reads(notHere(page), /“Keel day” is put away/);
  });

  await step('it stays put away over a reload, and comes back as it was', async () => {
    await page.reload();
    await reads(notHere(page), /“Keel day” is put away/);
    await page.locator('.notebooks-away > summary').click();
    await press(page, 'Bring Keel day back');
    await reads(title(page), 'Keel day');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
    expect(await page.locator('.notebooks-away').count()).toBe(0);
    expect(await leftovers(page)).toStrictEqual([]);
  });

  await step('what is thrown away is gone, until undo', async () => {
    await press(page, 'Put this notebook away');
    await page.locator('.notebooks-away > summary').click();
    await press(page, 'Throw Keel day away');
    await reads(notHere(page), /There is no notebook “keel-day” here/);
    await expect.poll(() => isFocused(page.locator('.notebook-keys'))).toBe(true);
    await press(page, 'Undo');
    await reads(notHere(page), /“Keel day” is put away/);
  });
});

test('one that is opened lives with the boat, in her file and through a switch of boats', async () => {
  const page = await openNotebook('scarf-and-resin');
  const before = await listed(page);
  await open(page, 'Keel day.md', keelDay);
  await arrived(page);
  await type(page, 'keelScarf.slope', '12');
  await reads(answer(page, 'keelScarf.taper'), '240 mm');

  let file = '';
  await step('it is part of the boat file, to the letter', async () => {
    await page.locator('.desk > summary').click();
    const download = page.waitForEvent('download');
    await press(page, 'Save boat to a file');
    file = await readFile(await (await download).path(), 'utf8');
    expect(JSON.parse(file)).toMatchObject({
      version: 2,
      notebooks: { 'keel-day': { text: keelDay, away: false } },
    });
    const own = page.waitForEvent('download');
    await press(page, 'Save it to a file');
    expect((await own).suggestedFilename()).toBe('keel-day.md');
    expect(await readFile(await (await own).path(), 'utf8')).toBe(keelDay);
  });

  await step('another boat has none of it', async () => {
    await page.getByLabel('Boat', { exact: true }).selectOption('creek-punt');
    await reads(notHere(page), /There is no notebook “keel-day” here/);
    expect(await listed(page)).toStrictEqual(before);
  });

  await step('a boat opened from the file brings it', async () => {
    await page
      .getByLabel('Boat file')
      .setInputFiles({ name: 'mine.boat.json', mimeType: 'application/json', buffer: Buffer.from(file) });
    await reads(title(page), 'Keel day');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
    expect(await listed(page)).toStrictEqual(withKeelDay(before));
    await reads(page.getByLabel('Boat', { exact: true }).locator('option').first(), 'Ferry dory 2');
    await press(page, 'Put this notebook away');
    await reads(notHere(page), /“Keel day” is put away/);
  });

  await step('and the boat she was saved from has her own still', async () => {
    await page.getByLabel('Boat', { exact: true }).selectOption({ label: 'Ferry dory' });
    await reads(title(page), 'Keel day');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
    expect(await leftovers(page)).toStrictEqual([]);
  });
});

test('one that is dropped where there is no boat is kept with the boat all the same', async () => {
  const page = await openNotebook('quick-scarf');
  const before = await listed(page);

  await step('it opens on the builder’s boat', async () => {
    await drop(page, 'keel-day.md', keelDay);
    await reads(title(page), 'Keel day');
    await arrived(page);
    await reads(answer(page, 'keelScarf.taper'), '160 mm');
    await reads(page.getByLabel('Boat', { exact: true }).locator('option').first(), 'Ferry dory');
  });

  await step('and is in the list where there is no boat', async () => {
    await page.locator('.contents a', { hasText: before[0]! }).first().click();
    await reads(title(page), before[0]!);
    await reload(page);
    await expect.poll(() => listed(page)).toStrictEqual(withKeelDay(before));
  });

  await step('one that knows no boat has a sheet of its own, and lies in the boat’s list too', async () => {
    await drop(
      page,
      'no-boat.md',
      `---\ntitle: Ashore\nboat: none\norder: 60\n---\n\n\`\`\`cell scarf\n\`\`\`\n`,
    );
    await reads(title(page), 'Ashore');
    await reads(page.getByLabel('Boat', { exact: true }).locator('option').first(), 'No boat here');
    await arrived(page);
    await type(page, 'scarf.slope', '9');
    await reload(page);
    await reads(title(page), 'Ashore');
    await expect.poll(() => fieldNumber(page, 'scarf.slope')).toBe(1);
    expect(await field(page, 'scarf.slope').inputValue()).toBe('1 in 9');
    expect(Object.keys((await keptNotebooks(page)) as object)).toStrictEqual(['keel-day', 'no-boat']);
  });

  await step('putting it away leads to the boat, whose undo brings it back', async () => {
    await press(page, 'Put this notebook away');
    await reads(notHere(page), /“Ashore” is put away/);
    await press(page, 'Undo');
    await reads(title(page), 'Ashore');
    await arrived(page);
    expect(await field(page, 'scarf.slope').inputValue()).toBe('1 in 9');
  });

  await step(
    'another file of the same name stands beside it; the same notebook, changed, in its place',
    async () => {
      await drop(page, 'keel-day.md', '# Another day\n');
      await reads(title(page), 'Another day');
      expect(new URL(page.url()).hash).toBe('#/keel-day-2');
      await drop(page, 'keel-day.md', keelDay.replace('slope = 8', 'slope = 10'));
      await reads(said(page), /“Keel day” is read anew\. Undo brings back the text before\./);
      await reads(answer(page, 'keelScarf.taper'), '200 mm');
      await press(page, 'Undo');
      await reads(answer(page, 'keelScarf.taper'), '160 mm');
    },
  );
});

test('a text that changes under the reader takes its cells along, and leaves the others be', async () => {
  const page = await openNotebook('scarf-and-resin');
  await open(page, 'keel-day.md', keelDay);
  await arrived(page);
  await type(page, 'keelScarf.slope', '12');
  await cell(page, 'keelScarf').evaluate((one) => one.setAttribute('data-mark', 'the same'));

  await step('what is put above comes, and the cell is the same element still', async () => {
    const more = keelDay.replace('## At', '```cell limber\n```\n\nIt bores `= limber.drill`.\n\n## At');
    await open(page, 'keel-day.md', more);
    await cell(page, 'limber').waitFor();
    expect(await cell(page, 'keelScarf').getAttribute('data-mark')).toBe('the same');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
  });

  await step('what is taken out goes, and what was typed into it waits for it', async () => {
    await open(page, 'keel-day.md', keelDay.replace(/```cell[^]*?```\n/, ''));
    await expect.poll(() => cell(page, 'keelScarf').count()).toBe(0);
    await reads(prose(page), /there is no quantity "keelScarf\.taper"/);
    await press(page, 'Undo');
    await reads(answer(page, 'keelScarf.taper'), '240 mm');
  });
});

describe('a broken one', () => {
  const broken = [
    '---',
    'title: Broken',
    'colour: red',
    '---',
    '',
    'Good `= hull.length`, bad `= hull.lenght`, worse `= 2 * 3`.',
    '',
    '```cell scarf as s1x',
    'slope = 10',
    'colour = red',
    '```',
    '',
    '```cell scraf',
    '```',
    '',
    '```cell bend as keelson',
    '```',
    '',
    '```cell limber as frame3',
    '```',
    '',
    '```when hull.length is long',
    'Words',
    '```',
    '',
    '```try More',
    'nothing.here = 3',
    '```',
    '',
    '> ```cell scarf as s1x',
    '> slope = 3',
    '> ```',
    '',
    '[a](javascript:alert(1)) <img src=x onerror="document.title=1"> <script>document.title=2</script>',
    '',
    'The end. `= s1x.taper`',
    '',
    '```cell scarf as s2x',
  ].join('\n');
  const lines = [3, 6, 8, 13, 16, 19, 22, 26, 30, 34, 38];

  test.each([1280, 390])('says where, line by line, and the rest is alive, at %i px', async (width) => {
    const page = await openNotebook('scarf-and-resin', { width });
    await open(page, 'broken.md', broken);
    await reads(title(page), 'Broken');
    await arrived(page);
    const head = page.locator('.own-notebook .notice');
    await reads(
      head,
      `Something can’t be used on ${lines.length} lines: ${lines.join(', ')}. Each is marked where it stands. The rest works.`,
    );
    // At each place a sentence with its line; on line 6 there are two.
    await expect
      .poll(async () =>
        (await prose(page).locator('.notice').allInnerTexts()).map(
          (says) => /^Line (\d+): \S/.exec(says)?.[1],
        ),
      )
      .toStrictEqual(['3', '6', '6', ...lines.slice(2).map(String)]);
    await reads(prose(page), /The end\. 180 mm/);
    await type(page, 's1x.slope', '12');
    await reads(prose(page), /The end\. 216 mm/);
    expect(await tooWide(page)).toBe(0);
    expect(await violations(page)).toStrictEqual([]);
    expect(await page.title()).toMatch(/^Ferry dory/);
    await expect.poll(() => keptNotebooks(page)).toStrictEqual({ broken: { text: broken, away: false } });
  });
});

test('hostile text does nothing', async () => {
  const page = await openNotebook('scarf-and-resin');
  page.on('dialog', (dialog) => {
    throw new Error(`a dialog opened: ${dialog.message()}`);
  });
  const before = await listed(page);

  await step('what is no notebook is refused in a sentence', async () => {
    for (const [name, content, says] of [
      [
        'giant.md',
        Buffer.alloc(1_300_000, 'word '),
        /giant\.md was not opened: it is too long; a notebook may have 300000 characters\./,
      ],
      ['long.md', Buffer.alloc(300_001, 'x'), /long\.md was not opened: it is too long/],
      [
        'picture.md',
        Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0]),
        /picture\.md was not opened: it is not a text\./,
      ],
      ['blank.md', '\n \n', /blank\.md was not opened: it is empty\./],
    ] as const) {
      await open(page, name, content);
      await reads(said(page), says);
      expect(await listed(page)).toStrictEqual(before);
    }
  });

  await step('marks, script and addresses stay words', async () => {
    await open(
      page,
      '__proto__.md',
      `# <b onclick="alert(1)">Proto</b>

<script>alert(1)</script> <img src=x onerror=alert(2)> <svg/onload=alert(3)> <iframe src="javascript:alert(4)"></iframe>

[a](javascript:alert(5)) [b](data:text/html,x) [c](<java&#10;script:alert(6)>) ![d](javascript:alert(7))

\`\`\`cell scarf as constructor
\`\`\`

\`\`\`cell __proto__
\`\`\`

\`\`\`cell scarf as s1x
__proto__ = 3
\`\`\`

\`= __proto__.x\` \`= constructor.name\` \`? toString.length: x\`
`,
    );
    await reads(title(page), '<b onclick="alert(1)">Proto</b>');
    expect(new URL(page.url()).hash).toBe('#/proto');
    for (const markup of [
      'script',
      'img',
      'svg',
      'iframe',
      'b[onclick]',
      'a[href^="javascript"]',
      'a[href^="data"]',
    ])
      expect([markup, await prose(page).locator(markup).count()]).toStrictEqual([markup, 0]);
    await reads(prose(page), /<script>alert\(1\)<\/script>/);
    expect(await page.evaluate(() => Object.keys(Object.prototype))).toStrictEqual([]);
  });

  await step('thousands of cells leave a page that answers', async () => {
    const many = Array.from({ length: 3000 }, (_, n) => `\`\`\`cell scarf as s${n}x\n\`\`\`\n`).join('\n');
    await open(page, 'many.md', `# Many\n\n${many.slice(0, 60_000)}\n`);
    await reads(title(page), 'Many');
    await reads(prose(page), /100 cells at most/);
    await page.getByText('Put this notebook away').click();
    await reads(notHere(page), /“Many” is put away/);
  });
});

test('one of the name of what comes along stands in its place, until it is put away', async () => {
  const page = await openNotebook('scarf-and-resin');
  const before = await listed(page);
  const summary = page.locator('.summary');
  await reads(summary, 'A cell of one board, and one of the whole hull.');
  await open(
    page,
    'scarf-and-resin.md',
    '---\ntitle: Scarf and resin\nsummary: My own.\norder: 2\n---\n\n```cell scarf\n```\n',
  );
  await reads(summary, 'My own.');
  await reads(said(page), /now stands in place of the one that comes along/);
  expect(await listed(page)).toHaveLength(before.length);
  await reload(page);
  await reads(summary, 'My own.');
  await press(page, 'Put this notebook away');
  await reads(summary, 'A cell of one board, and one of the whole hull.');
  expect(await listed(page)).toStrictEqual(before);
});
