/** What can't be read or can't be: a sentence at the field, the text kept, everything else as it was. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { openPage } from './harness';
import {
  allAnswers,
  answer,
  cell,
  field,
  holds,
  leftovers,
  openNotebook,
  openQuestion,
  questionsOf,
  turnToQuestion,
  openSheet,
  pressOf,
  reads,
  reload,
  row,
  says,
  step,
  textOf,
  type,
  openGroups,
} from './steps';

const long = 'ab'.repeat(200);

/** The answers of every cell but those named. */
async function others(page: Page, ...but: string[]): Promise<Record<string, string>> {
  const all = Object.entries(await allAnswers(page));
  return Object.fromEntries(all.filter(([name]) => !but.some((one) => name.startsWith(`${one}.`))));
}

const nonsense: readonly (readonly [text: string, sentence: RegExp])[] = [
  ['3 kg', /is a length; "3 kg" is a mass/],
  ['5-3-9', /eighths run from 0 to 7; "5-3-9" has 9/],
  ['1/0', /divides by zero/],
  ['=', /"=" has no meaning/],
  [long, /too long/],
  ['🪵🪚', /"🪵" has no meaning/u],
  ['twelve mm', /no quantity "twelve"/],
  ['12 mm +', /nothing stands after "\+"/],
  ['<b>19</b>', /no quantity "b"/],
  ['sqrt(-1) * 1 mm', /root of a number below zero/],
  ['1e999 mm', /too large a number/],
  ['no.such', /no quantity "no\.such"/],
];

test('nonsense for a board thickness', { timeout: 120_000 }, async () => {
  const page = await openNotebook('short-build');

  await step('one text after the other', async () => {
    // Both are of the keelson.
    const before = await others(page, 'scarf', 'bend');
    for (const [text, sentence] of nonsense) {
      await type(page, 'scarf.thickness', text);
      await reads(says(page, 'scarf.thickness'), sentence);
      const said = await textOf(says(page, 'scarf.thickness'));
      // A sentence of a builder's length, not of a programmer's.
      expect(said).toMatch(/^.{10,300}\.$/s);
      expect(said).not.toMatch(/[Ee]rror|[Uu]nexpected|token|\bchar\b|function|object/);
      expect(await field(page, 'scarf.thickness').inputValue()).toBe(text);
      expect(await field(page, 'scarf.thickness').getAttribute('aria-invalid')).toBe('true');
      const described = await field(page, 'scarf.thickness').getAttribute('aria-describedby');
      expect(described?.split(' ')).toContain(await says(page, 'scarf.thickness').getAttribute('id'));
      // What depends on it waits and says for what; the rest has not moved.
      await reads(
        cell(page, 'scarf').locator('.answer[data-quantity="scarf.taper"] .figure'),
        /waits for the thickness of the keelson/,
      );
      expect(await answer(page, 'scarf.strengthKept').innerText()).toBe('80 %');
      expect(await others(page, 'scarf', 'bend')).toStrictEqual(before);
      expect(await leftovers(page)).toStrictEqual([]);
    }
    await reload(page);
    expect(await others(page, 'scarf', 'bend')).toStrictEqual(before);
    await type(page, 'scarf.thickness', '');
    await reads(answer(page, 'scarf.taper'), '144 mm');
    expect(await says(page, 'scarf.thickness').count()).toBe(0);
  });

  await step('beyond its limits: the limit is named', async () => {
    await type(page, 'scarf.thickness', '-18');
    await reads(says(page, 'scarf.thickness'), /at least 1 mm/);
    await type(page, 'scarf.thickness', '2 m');
    await reads(says(page, 'scarf.thickness'), /at most 300 mm/);
    await holds(page, 'scarf.thickness', '2 m');
    expect(await leftovers(page)).toStrictEqual([]);
    await pressOf(page, 'scarf.thickness', 'Clear');
    await reads(answer(page, 'scarf.taper'), '144 mm');
  });

  await step('a quantity that hangs on itself: the circle is named', async () => {
    const before = await others(page, 'scarf', 'bend');
    await type(page, 'scarf.thickness', 'scarf.taper');
    await reads(says(page, 'scarf.thickness'), /in a circle/);
    await reads(says(page, 'scarf.thickness'), /taper/);
    await holds(page, 'scarf.thickness', 'scarf.taper');
    expect(await others(page, 'scarf', 'bend')).toStrictEqual(before);
    expect(await leftovers(page)).toStrictEqual([]);
    await reload(page);
    await holds(page, 'scarf.thickness', 'scarf.taper');
    await reads(says(page, 'scarf.thickness'), /in a circle/);
    await pressOf(page, 'scarf.thickness', 'Clear');
    await reads(answer(page, 'scarf.taper'), '144 mm');
  });
});

test('nonsense stands as it was typed after a reload, and is told again', async () => {
  const page = await openNotebook('the-build');
  // Wherever it is typed, no answer of another cell moves: those of the keelson wait for it.
  const answersBefore = await others(page, 'scarf');
  for (const text of ['3 kg', '1/0', 'scarf.taper']) {
    await type(page, 'scarf.thickness', text);
    await reads(says(page, 'scarf.thickness'), /./);
    const moved = Object.entries(await others(page, 'scarf')).filter(
      ([name, text]) => text !== answersBefore[name],
    );
    expect(moved.filter(([, text]) => !text.startsWith('waits for '))).toStrictEqual([]);
    expect(moved.map(([name]) => name)).toContain('bend.share');
    expect(moved.length).toBeLessThan(Object.keys(answersBefore).length / 2);
  }
  await type(page, 'scarf.thickness', '');

  const entries = await page
    .locator('.cell .input[data-quantity]:has(.entry-line input)')
    .filter({ visible: true })
    // What is the boat's or the shop's is one number, wherever it is typed.
    .evaluateAll((rows) =>
      rows
        .filter((row) => !/^(boat|shop)/.test(row.querySelector('.mark')?.textContent ?? ''))
        .map((row) => row.getAttribute('data-quantity') ?? ''),
    );
  expect(entries.length).toBeGreaterThanOrEqual(nonsense.length);
  const typed = nonsense.map(([text], i) => [entries[i]!, text] as const); // as many as there are texts, or more
  for (const [name, text] of typed) await type(page, name, text);
  const told = () => Promise.all(typed.map(([name]) => textOf(says(page, name))));
  const before = await told();
  expect(before.filter((sentence) => !/^.{10,}\.$/s.test(sentence))).toStrictEqual([]);

  await reload(page);
  for (const [name, text] of typed) expect(await field(page, name).inputValue()).toBe(text);
  await expect.poll(told).toStrictEqual(before);
  expect(await leftovers(page)).toStrictEqual([]);
});

test('nonsense in the boat’s own sheet', async () => {
  const page = await openNotebook('short-build');

  await step('a flare that can’t be read is said and kept at its field', async () => {
    await openSheet(page);
    const total = await answer(page, 'resin.total').innerText();
    for (const text of ['3 kg', '=', '🪵', '90°']) {
      await type(page, 'frame3.side.flare', text);
      await reads(says(page, 'frame3.side.flare'), /.{10,}\.$/s);
      await holds(page, 'frame3.side.flare', text);
      expect(await leftovers(page)).toStrictEqual([]);
    }
    await type(page, 'frame3.side.flare', '');
    await reads(answer(page, 'resin.total'), total);
    expect(await row(page, 'frame3.side.flare').locator('.says').count()).toBe(0);
  });

  await step(
    'an offset that can’t be read: said there, the last good hull is drawn, cells without it go on',
    async () => {
      const scarf = await answer(page, 'scarf.taper').innerText();
      const resin = await answer(page, 'resin.total').innerText();
      const sheet = await openSheet(page);
      await type(page, 'frame3.sheer.halfBreadth', '5-3-9');
      await reads(says(page, 'frame3.sheer.halfBreadth'), /.{10,}\.$/s);
      await holds(page, 'frame3.sheer.halfBreadth', '5-3-9');
      await expect.poll(() => sheet.locator('figure.drawing svg path').count()).toBeGreaterThan(10);
      await reads(sheet.locator('figure.drawing figcaption').first(), /last/i);
      // The scarf of the keelson asks nothing of the sheer.
      expect(await answer(page, 'scarf.taper').innerText()).toBe(scarf);
      await reads(page.locator('.answer[data-quantity="resin.total"] .figure'), /^waits for /);
      await reads(
        cell(page, 'resin').locator('.in-words'),
        /half-breadth of the sheer at frame 3: .*"5-3-9"/is,
      );
      expect(await leftovers(page)).toStrictEqual([]);

      await reload(page);
      await openSheet(page);
      await holds(page, 'frame3.sheer.halfBreadth', '5-3-9');
      await reads(says(page, 'frame3.sheer.halfBreadth'), /.{10,}\.$/s);
      expect(await answer(page, 'scarf.taper').innerText()).toBe(scarf);
      expect(await leftovers(page)).toStrictEqual([]);
      await type(page, 'frame3.sheer.halfBreadth', '');
      await reads(answer(page, 'resin.total'), resin);
    },
  );
});

test('nonsense in every field of every cell at once leaves no leftovers', async () => {
  const page = await openQuestion('quickScarf');
  const names = await questionsOf(page);
  expect(names.length).toBeGreaterThan(15);
  const texts = ['1/0', '0', '-1', '1e300', '3 kg'];
  for (const [at, name] of names.entries()) {
    await step(name, async () => {
      await turnToQuestion(page, name);
      await openGroups(cell(page, name));
      // Each as if it were typed over: the page hears of it by the event alone.
      const typed = await cell(page, name)
        .locator('.entry-line input')
        .evaluateAll(
          (fields, { texts, at }) =>
            fields.map((field, next) => {
              const input = field as HTMLInputElement;
              input.focus();
              const text = texts[(at + next) % texts.length] ?? '';
              input.value = text;
              input.dispatchEvent(new InputEvent('input', { bubbles: true }));
              return text;
            }).length,
          { texts, at },
        );
      expect(typed).toBeGreaterThan(0);
      expect(await leftovers(page)).toStrictEqual([]);
    });
  }
  await turnToQuestion(page, 'quickScarf');
  await reads(says(page, 'quickScarf.thickness'), /./);
  expect(await leftovers(page)).toStrictEqual([]);
});

test('an address that can’t be decoded leads to the notebook all the same', async () => {
  const page = await openPage({ at: '#/the-build/%' });
  await page.locator('[data-cell=bend]').waitFor();
  expect(await page.locator('h1').innerText()).toBe('The build');
});
