/** A cell asked further: drawn against a number by two presses, kept with the boat, and worked backwards; and a sweep that a notebook places. */
import { expect, test } from 'vitest';
import { violations } from './axe';
import { answer, cell, openNotebook, press, reads, reload, step, tooWide } from './steps';

test('a scarf asked further', async () => {
  const page = await openNotebook('ask-further', { width: 360 });
  const scarf = cell(page, 'furtherScarf');

  await step('a sweep of the notebook has a line for each value, and its numbers in a table', async () => {
    const placed = page.locator('.sweep-shown');
    await placed.locator('figure.chart svg').waitFor();
    expect(await placed.locator('.chart-says').first().textContent()).toContain(
      // Eight thicknesses of 10 and of 40 mm.
      'At 1 in 8: it rises from 80 mm at 10 mm to 320 mm at 40 mm.',
    );
  });

  await step('two presses draw an answer against an input, with the point where it stands', async () => {
    await scarf.getByText('Ask further', { exact: true }).press('Enter');
    await scarf.getByRole('button', { name: 'Draw it against a number' }).press('Enter');
    await scarf.getByLabel('against', { exact: true }).selectOption('furtherScarf.thickness');
    await expect
      .poll(() => scarf.locator('.sweep-picture svg').getAttribute('aria-label'))
      .toContain('by thickness');
    await scarf.getByLabel('from', { exact: true }).fill('thick');
    await expect.poll(() => scarf.locator('.sweep-picture .says').textContent()).toContain('thick');
    await scarf.getByLabel('from', { exact: true }).fill('10');
    await scarf.getByLabel('to', { exact: true }).fill('30 mm');
    await scarf.getByLabel('to', { exact: true }).press('Tab');
    await expect
      .poll(() => scarf.locator('.sweep-picture .chart-says').textContent())
      .toBe('It rises from 80 mm at 10 mm to 240 mm at 30 mm.');
  });

  await step('backwards it says which number brings what is wanted, and writes it', async () => {
    await scarf.getByRole('button', { name: 'Work backwards' }).press('Enter');
    await scarf.getByLabel('by changing').selectOption('furtherScarf.thickness');
    await scarf.getByLabel('what is wanted').fill('200');
    await scarf.getByLabel('what is wanted').press('Tab');
    await expect
      .poll(() => scarf.locator('.found [role="status"]').textContent())
      .toContain('It is 200 mm at 25 mm.');
    expect(await violations(page, { within: '.further-asked' })).toStrictEqual([]);
    expect(await tooWide(page)).toBe(0);
    await scarf.getByRole('button', { name: /^Write it/ }).press('Enter');
    await reads(answer(page, 'furtherScarf.taper'), '200 mm');
  });

  await step('what is drawn is kept with the boat, and Undo takes it back', async () => {
    await reload(page);
    await scarf.getByText('Ask further', { exact: true }).click();
    await scarf.locator('.sweep-picture svg').waitFor();
    expect(await scarf.getByLabel('to', { exact: true }).inputValue()).toBe('30 mm');
    await press(page, 'Undo');
    await reads(answer(page, 'furtherScarf.taper'), '144 mm');
    await press(page, 'Undo');
    await expect.poll(() => scarf.getByLabel('to', { exact: true }).inputValue()).toBe('');
  });

  await step('what matters is told in order, with a doubt that may be written over', async () => {
    await scarf.getByRole('button', { name: 'What matters' }).press('Enter');
    const matters = scarf.locator('.matters');
    const advice = () => matters.locator('.advice').textContent();
    const doubt = matters.getByLabel('thickness: give or take', { exact: false }).first();
    // A caliper's tenth, at 1 in 8.
    await expect
      .poll(advice)
      .toMatch(/^\s*Measure the .*thickness.* again: it moves the .* by 0\.8 mm\.\s*$/);
    await doubt.fill('a hair');
    await expect
      .poll(() => matters.locator('.swing-row .says').first().textContent())
      .toContain('there is no quantity');
    await doubt.fill('1 mm');
    await doubt.press('Tab');
    await expect.poll(advice).toMatch(/by 8 mm\.\s*$/);
    await matters.getByLabel('The range beside the answer').check();
    await reads(
      page.locator('.answer[data-quantity="furtherScarf.taper"] .figure.first i'),
      'from 136 mm to 152 mm',
    );
    expect(await violations(page, { within: '.matters' })).toStrictEqual([]);
    expect(await tooWide(page)).toBe(0);
  });
});
