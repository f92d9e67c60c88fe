/** Every notebook in windows of all widths: drawings that can be read out, nothing wider than the window, keys for a thumb. */
import { describe, expect, test } from 'vitest';
import { arrived, notebooks, openNotebook, unfold, lookThrough } from './steps';

describe.each(notebooks)('drawings of %s', (notebook) => {
  test('each is an image with a label that says its numbers; graphs come when near', async () => {
    const page = await openNotebook(notebook, { reducedMotion: 'reduce' });
    await lookThrough(page);
    const drawings = page.locator('figure.drawing > svg, .chart-place > svg, .chart-place > figure > svg');
    const labels = await drawings.evaluateAll((all) =>
      all.map((svg) => [svg.getAttribute('role'), svg.getAttribute('aria-label') ?? '']),
    );
    const cells = await page.locator('.cell[data-cell]').count();
    expect(labels.length).toBeGreaterThanOrEqual(cells);
    for (const [role, label] of labels) {
      expect(role).toBe('img');
      expect(label).toMatch(/.{20,}/);
    }
    const figures = await page
      .locator('figure.drawing > svg')
      .evaluateAll((all) => all.filter((svg) => !/\d/.test(svg.getAttribute('aria-label') ?? '')).length);
    expect(figures).toBe(0);
    // A graph has its numbers in a table besides.
    expect(await page.locator('figure.chart:not(:has(details.chart-data))').count()).toBe(0);
  });

  test.each([360, 1280])('nothing wider than a window of %i px', async (width) => {
    const page = await openNotebook(notebook, { width, touch: width < 500, reducedMotion: 'reduce' });
    await lookThrough(page);
    const scroll = () =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(await scroll()).toBeLessThanOrEqual(0);
    for (const name of ['Working', 'more input'])
      await unfold(page.locator('.cell[data-cell]').first(), name);
    await arrived(page);
    expect(await scroll()).toBeLessThanOrEqual(0);
  });

  test('keys and fields are wide enough for a thumb', async () => {
    const page = await openNotebook(notebook, { width: 390, touch: true, reducedMotion: 'reduce' });
    await page.locator('.desk > summary').click();
    // A notebook without a boat has nothing alongside on a phone.
    if (notebook !== 'quick-answers')
      await page.getByRole('button', { name: /the hull and what moved/ }).click();
    const small = await page.evaluate(() => {
      const found: string[] = [];
      const all = document.querySelectorAll<HTMLElement>(
        'button, input:not([type="range"], [type="file"]), select, summary, a[href]',
      );
      for (const element of all) {
        const { width, height } = element.getBoundingClientRect();
        if (width === 0 || height === 0 || element.closest('.skip, .unseen')) continue;
        // In running text a link is as high as its line, and the trade's rule for it is 24 px.
        const inline = element.matches('.live, .jump, a, p button');
        // A radio key is pressed by its label.
        const target = element.matches('[type="radio"]') ? element.closest('label') : element;
        const box = target?.getBoundingClientRect() ?? { width, height };
        const least = inline ? 24 : 44;
        // Half a pixel for rounding.
        if (Math.min(box.height, inline ? 1e3 : box.width) < least - 0.5)
          found.push(
            `${element.tagName} ${element.className} "${element.textContent?.trim().slice(0, 30)}" ${Math.round(box.width)} x ${Math.round(box.height)}`,
          );
      }
      return [...new Set(found)];
    });
    expect(small).toStrictEqual([]);
  });
});

test.each(['the-build', 'fair-lines', 'frames-standing-true'] as const)(
  'no table of %s is cut in a window of 1280 px',
  async (notebook) => {
    const page = await openNotebook(notebook, { reducedMotion: 'reduce' });
    await lookThrough(page);
    expect(await page.locator('.cell table').filter({ visible: true }).count()).toBeGreaterThan(2);
    const cut = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.cell table')]
          .filter((table) => table.offsetWidth > (table.parentElement?.clientWidth ?? 0))
          .map((table) => table.textContent.trim().slice(0, 40)),
      );
    expect(await cut()).toStrictEqual([]);
    await page.locator('.unit-pick').selectOption('ft-in 1/16, lb');
    await expect.poll(() => page.locator('.cell-table').first().innerText()).toContain(' in');
    await expect.poll(cut).toStrictEqual([]);
  },
);
