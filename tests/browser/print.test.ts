/** On paper: both versions, whose boat it is, and no notices. Every notebook is printed in `desk.test.ts`. */
import { expect, test } from 'vitest';
import { onPaper } from './paper';
import { atRest, openNotebook, press, type } from './steps';

test('heads the print with boat, notebook and units, and prints both versions', async () => {
  const page = await openNotebook('scarf-and-resin');
  await press(page, 'Keep this and try another');
  await type(page, 'scarf.thickness', '24');
  await expect.poll(() => page.locator('.figure.second').count()).toBeGreaterThan(0);
  await page.emulateMedia({ media: 'print' });
  const head = page.locator('.print-head');
  expect(await head.isVisible()).toBe(true);
  expect(await head.innerText()).toMatch(
    /^Ferry dory, kept and trying · Scarf and resin · mm, kg · \d+ \w+ \d{4}$/,
  );
  expect((await onPaper(page)).text).toMatch(/Kept 144 mm.*Trying 192 mm.*\+48 mm/);
});

test('graph, table, cautions and changes go on paper, closed as they are, and stay closed after', async () => {
  const page = await openNotebook('misread');
  await page.locator('.boat-pick').selectOption('ferry-dory-misread');
  const lines = page.locator('.cell[data-cell="lines"]');
  const fair = page.locator('.cell[data-cell="fair"]');
  await fair.locator('.offer-keys button').first().waitFor();
  await atRest(page);
  const { text } = await onPaper(page);
  expect(text).toContain('Form by station');
  expect(text).toContain('The line at every station');
  expect(text).toMatch(/Frame 2, sheer: 5\d(\.\d)? mm outboard/);
  const cautions = (await import('../../src/cells/shape/fair')).fair.cautions;
  expect(cautions.length).toBeGreaterThan(1);
  for (const caution of cautions) expect(text).toContain(caution);
  expect(await lines.locator('details[open]').count()).toBe(0);
  expect(await fair.locator('details[open]').count()).toBe(0);
});

test('no notice of the page is printed', async () => {
  const page = await openNotebook('scarf-and-resin');
  await page.getByRole('combobox', { name: 'Boat' }).selectOption({ label: 'Class skiff' });
  const notices = page.locator('.notices');
  await expect.poll(() => notices.isVisible()).toBe(true);
  await page.emulateMedia({ media: 'print' });
  expect(await notices.isVisible()).toBe(false);
});

test('on a sheet upright and across, the question stands under the title and the drawing under the fields, none cut', async () => {
  const page = await openNotebook('scarf-and-resin');
  await page.emulateMedia({ media: 'print' });
  for (const width of [680, 1000]) {
    await page.setViewportSize({ width, height: 900 });
    const amiss = await page.locator('.cell[data-cell]').evaluateAll((cells) =>
      cells.flatMap((cell) => {
        const box = (what: string) => cell.querySelector(what)!.getBoundingClientRect();
        const cut = [...cell.querySelectorAll('select')].filter((select) => {
          const { width: stands } = select.getBoundingClientRect();
          select.style.maxWidth = 'none';
          select.style.width = 'max-content';
          const { width: wants } = select.getBoundingClientRect();
          select.removeAttribute('style');
          return stands > 0 && wants > stands + 1;
        });
        return [
          ...(box('.question').top < box('.cell-title').bottom - 1 ? ['question beside title'] : []),
          ...(box('.pictures').top < box('.entries').bottom - 1 && !cell.querySelector('.cell-body.wide')
            ? ['drawing beside fields']
            : []),
          ...cut.map((select) => `${select.id} cut`),
          ...[...cell.querySelectorAll<HTMLElement>('.line:has(.entry-line) > label')]
            .filter((label) => label.clientHeight > 30 && label.textContent.length < 30)
            .map((label) => `${label.textContent} in two lines`),
        ];
      }),
    );
    expect(amiss, `${width} px`).toStrictEqual([]);
  }
});

test('no paper is left bare under a drawing, nor by what holds its place on the page', async () => {
  const page = await openNotebook('offsets');
  await page.emulateMedia({ media: 'print' });
  const bare = await page.locator('.cell-body > .pictures').evaluateAll((all) =>
    all.map((pictures) => {
      const inside = [...pictures.querySelectorAll('svg, p, summary')].map(
        (part) => part.getBoundingClientRect().bottom,
      );
      return pictures.getBoundingClientRect().bottom - Math.max(...inside);
    }),
  );
  expect(bare.length).toBeGreaterThan(0);
  expect(Math.max(...bare)).toBeLessThan(40);
});
