/**
 * Quick answers: a list of questions by stage, one of which opens alone. On a phone each is answered in three taps at
 * most from a fresh page, with answer and fields in one view; none knows a boat, and what was typed can be taken to one.
 */
import type { Locator, Page } from 'playwright';
import { beforeAll, describe, expect, test } from 'vitest';
import { violations } from './axe';
import { onePage, openPage } from './harness';
import { onPaper } from './paper';
import {
  allColours,
  answer,
  arrived,
  cell,
  field,
  holds,
  numberIn,
  openQuestion,
  questionsOf,
  reads,
  textOf,
  tooSmall,
  tooWide,
  turnToQuestion,
  type,
  wear,
} from './steps';

const phone = { width: 390, height: 844, touch: true, reducedMotion: 'reduce' } as const;

/** Whether all of it lies in the window, with nothing over its middle. */
const isInView = (place: Locator): Promise<boolean> =>
  place.evaluate((at) => {
    const { left, right, top, bottom } = at.getBoundingClientRect();
    const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return top >= 0 && bottom <= innerHeight && (at.contains(over) || over?.contains(at) === true);
  });

/** A thumb that taps what is in view, and counts. */
function thumbOn(page: Page) {
  let taps = 0;
  return {
    taps: () => taps,
    tap: async (place: Locator) => {
      await place.waitFor();
      await expect.poll(() => isInView(place), { message: `${String(place)} is not in view` }).toBe(true);
      taps += 1;
      await place.tap();
    },
    /** One entry after the other, each in the field that Enter has led to. */
    type: async (...entries: readonly string[]) => {
      for (const [at, entry] of entries.entries()) {
        if (at > 0) await page.keyboard.press('Enter');
        // Left as it stands.
        if (entry !== '') await page.keyboard.type(entry);
      }
    },
  };
}

interface Journey {
  readonly what: string;
  readonly stage: string;
  readonly question: string;
  /** The field that is tapped, and what is typed in it and in those after it. */
  readonly first: string;
  readonly typed: readonly string[];
  /** The answers, each with the number worked out by hand. */
  readonly answers: Readonly<Record<string, string | RegExp>>;
  /** Whether all deciding fields are in view with the answer when the question opens. */
  readonly isShort?: boolean;
}

const M = 0.0254;
/** mm, to the tenth. */
const mm = (metres: number) => Math.round(metres * 1e4) / 10;

const journeys: readonly Journey[] = [
  {
    what: 'the taper of a 3/4 in board at 1 in 8',
    stage: 'Joints and fastenings',
    question: 'quickScarf',
    first: 'thickness',
    typed: ['3/4 in', '8'],
    // Slope times thickness: 8 x 19.05 mm. Two boards of 2.4 m less one taper.
    answers: { taper: `${mm(8 * 0.75 * M)} mm`, joinedLength: `${Math.round(4800 - 152.4)} mm` },
    isShort: true,
  },
  {
    what: 'screws for 1/4 in ply on a 1 1/2 in log',
    stage: 'Joints and fastenings',
    question: 'quickFasten',
    first: 'topThickness',
    typed: ['1/4 in'],
    // Of 4.2 m, 42 mm off either end, at 75 mm at most: 55 spaces, 56 screws, a tenth to spare: 62.
    answers: { toBuy: String(Math.ceil((Math.ceil((4200 - 2 * 42.06) / 75) + 1) * 1.1)) },
    isShort: true,
  },
  {
    what: 'whether a 1 1/2 in board goes round 10 ft',
    stage: 'Timber',
    question: 'quickBend',
    first: 'thickness',
    typed: ['1 1/2 in', '10 ft'],
    // Pure bending: t / 2R of stretch, by a modulus of 13.4 GPa and a tenth for shear, of a strength of 85 MPa
    // (Douglas-fir, coast, at 12 %: Wood Handbook, Table 5-3).
    answers: { share: `${Math.round(((1.5 / 240) * 13.4e3 * 1.1 * 1000) / 85) / 10} %` },
    isShort: true,
  },
  {
    what: 'beads for a 16 ft seam',
    stage: 'Glue and fillets',
    question: 'quickBeads',
    first: 'length',
    typed: ['16 ft', '1 1/2 in'],
    // A film of 0.5 mm over 16 ft by 1 1/2 in, and 15 % of waste; a cartridge holds 300 mL.
    answers: {
      volume: `${Math.round(16 * 12 * M * 1.5 * M * 0.0005 * 1.15 * 1e6)} mL`,
      packs: '1',
    },
    isShort: true,
  },
  {
    what: 'clamps for a seam',
    stage: 'Glue and fillets',
    question: 'quickClamps',
    first: 'length',
    typed: ['16 ft', '1 1/2 in'],
    // On an easy run every 150 to 200 mm, 175 in the middle (common practice): so many spaces, then evenly.
    answers: {
      clamps: String(Math.ceil((16 * 12 * M) / 0.175)),
      evenPitch: `${mm((16 * 12 * M) / 28)} mm`,
    },
    isShort: true,
  },
  {
    what: 'limbers for a keelson',
    stage: 'Frames',
    question: 'quickLimber',
    first: 'keelsonWidth',
    typed: ['3 1/2 in', '3/4 in', '1/2 in'],
    // The keelson and a limber on either side: 88.9 + 2 x 12.7 mm.
    answers: { slotWidth: `${mm(3.5 * M + 2 * 0.5 * M)} mm` },
    isShort: true,
  },
  {
    what: 'boards for a list of lengths at my prices',
    stage: 'Timber',
    question: 'quickBoards',
    first: 'otherPieces',
    // Four of 1.1 m, two of 2 m, none beside; boards of 2.4, 3, 3.6 and 4.2 m as they stand, at 10, 14, 17 and 21.
    typed: ['4', '1.1 m', '2', '2 m', '0', '', '10', '', '14', '', '17', '', '21'],
    // Two of 1.1 m fill a board of 2.4 m, one of 2 m another: four boards at 10. No metre is cheaper in a longer one.
    answers: { boards: '4', cost: '40.00' },
  },
  {
    what: 'resin for an area of cloth',
    stage: 'Finish',
    question: 'quickResin',
    first: 'flatArea',
    typed: ['4 m^2'],
    // The first coat soaks in 150 µm deep, half the weight of 1.1 x 4 m² of 6 oz cloth is resin again, three coats of
    // 90 µm fill the weave; 15 % on top. Two parts to one, so a third is hardener.
    answers: (() => {
      const cloth = 1.1 * 4 * 0.20343; // kg
      const litre = (2 * 1.16 + 1) / 3; // kg of the mix: two parts at 1.16, one at 1.0
      const total = (4 * 0.15 + cloth / litre + 4 * 3 * 0.09) * 1.15;
      return {
        total: `${total.toFixed(2)} L`,
        hardener: `${Math.round((total / 3) * 1000)} mL`,
      };
    })(),
    isShort: true,
  },
];

describe('from a fresh page on a phone, in three taps', () => {
  test.each(journeys.map((journey) => [journey.what, journey] as const))('%s', async (_, journey) => {
    const { stage, question, first, typed, answers, isShort } = journey;
    const page = await openPage(phone);
    const thumb = thumbOn(page);
    await thumb.tap(page.locator('.stages').getByRole('link', { name: stage, exact: true }));
    await thumb.tap(page.locator(`.by-stage a[data-question="${question}"]`));
    const at = field(page, `${question}.${first}`);
    await at.waitFor();
    await arrived(page);
    const place = cell(page, question);
    const leading = place.locator('.answer .figure.first b').first();
    expect(await isInView(leading)).toBe(true);
    const inputs = place.locator('.inputs').first().locator('.input :is(.entry-line input, select)');
    const deciding = isShort ? await inputs.all() : [at];
    expect(await Promise.all(deciding.map(isInView))).toStrictEqual(deciding.map(() => true));
    await thumb.tap(at);
    await thumb.type(...typed);
    expect(thumb.taps()).toBeLessThanOrEqual(3);
    for (const [of, text] of Object.entries(answers)) await reads(answer(page, `${question}.${of}`), text);
    // The answer stays in sight while one types: in its place, or at the window's upper edge.
    expect(await isInView(page.locator('.input :focus'))).toBe(true);
    const edge = place.locator('.in-sight dd').first();
    expect((await isInView(leading)) || (await isInView(edge))).toBe(true);
    await page.keyboard.press('Enter');
  });
});

describe('the list', () => {
  const page = onePage({ ...phone, at: '#/quick-answers' });
  const last = () => page().locator('.used-last a');

  test('leads to each question and back, by its own key and by the browser’s', async () => {
    await arrived(page());
    expect(await last().count()).toBe(0);
    const link = page().locator('.by-stage a[data-question="quickMoisture"]');
    await link.tap();
    await cell(page(), 'quickMoisture').waitFor();
    expect(new URL(page().url()).hash).toBe('#/quick-answers/quickMoisture');
    expect(await page().locator('.cell[data-cell]').count()).toBe(1);
    expect(await page().locator('.question-list').isVisible()).toBe(false);
    await page().getByRole('link', { name: 'Questions', exact: true }).tap();
    await expect.poll(() => link.evaluate((at) => at === document.activeElement)).toBe(true);
    expect(await isInView(link)).toBe(true);
    await page().goBack();
    await cell(page(), 'quickMoisture').waitFor();
    await page().goBack();
    await expect.poll(() => page().locator('.cell[data-cell]').count()).toBe(0);
    expect(await page().locator('.question-list').isVisible()).toBe(true);
  });

  test('has what was used last on top, and knows it when the page is opened again', async () => {
    await turnToQuestion(page(), 'quickScarf');
    await page().getByRole('link', { name: 'Questions', exact: true }).tap();
    await expect.poll(() => last().count()).toBe(2);
    await page().reload();
    await arrived(page());
    await turnToQuestion(page(), 'quickMoisture');
    await page().getByRole('link', { name: 'Questions', exact: true }).tap();
    await expect
      .poll(() => last().evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset['question'])))
      .toStrictEqual(['quickMoisture', 'quickScarf']);
  });

  test.each(['quickScarf.slope', 'cell-quickScarf', 'question-quickScarf'])(
    'is passed by an address that leads into a question: %s',
    async (place) => {
      await page().evaluate((to) => void (location.hash = `#/quick-answers/${to}`), place);
      await cell(page(), 'quickScarf').waitFor();
      await arrived(page());
      const target = place.includes('.') ? field(page(), place) : page().locator(`#${place}`);
      await expect.poll(() => target.evaluate((at) => at === document.activeElement)).toBe(true);
      await page().evaluate(() => void (location.hash = '#/quick-answers'));
      await page().locator('.question-list').waitFor();
    },
  );

  test('prints as a list, and a question as its cell', async () => {
    await page().evaluate(() => void (location.hash = '#/quick-answers'));
    await page().locator('.question-list').waitFor();
    const list = await onPaper(page());
    for (const words of await page().locator('.by-stage a').allTextContents())
      expect(list.text).toContain(words);
    expect(list.text).not.toContain('Used last');
    expect(list.text).toContain('· mm, kg ·');
    await turnToQuestion(page(), 'quickScarf');
    const { text } = await onPaper(page());
    expect(text).toContain(await cell(page(), 'quickScarf').locator('.question').innerText());
    expect(text).toContain(await answer(page(), 'quickScarf.taper').innerText());
    expect(text).not.toContain('Which screw');
    expect(text).not.toMatch(/Start again|Take this|‹/);
  });
});

describe('what was typed', () => {
  test('stays, is cleared by one press that can be undone, and goes to the boat by another', async () => {
    const page = await openQuestion('quickScarf', phone);
    const keys = page.locator('.typed-keys .keys');
    const again = page.getByRole('button', { name: 'Start again' });
    expect(await keys.count()).toBe(0);
    await type(page, 'quickScarf.thickness', '20');
    await type(page, 'quickScarf.slope', '12');
    await reads(answer(page, 'quickScarf.taper'), `${12 * 20} mm`);
    await page.reload();
    await arrived(page);
    await reads(answer(page, 'quickScarf.taper'), '240 mm');

    await again.tap();
    await reads(answer(page, 'quickScarf.taper'), `${8 * 18} mm`);
    expect(await keys.count()).toBe(0);
    const back = page.getByRole('button', { name: 'Bring them back' });
    expect(await back.evaluate((at) => at === document.activeElement)).toBe(true);
    await back.tap();
    await reads(answer(page, 'quickScarf.taper'), '240 mm');
    expect(await again.evaluate((at) => at === document.activeElement)).toBe(true);

    await page.getByRole('button', { name: 'Take this to my boat' }).tap();
    const done = page.locator('.typed-keys .done');
    await reads(
      done,
      /Taken to Ferry dory, into “Scarf joint”: Thickness 20 mm; Slope of the scarfs 1 in 12\./,
    );
    expect(await textOf(done)).toContain('They hold only there');
    await done.getByRole('link', { name: 'Go to “Scarf joint” on Ferry dory' }).tap();
    await cell(page, 'scarf').waitFor();
    await arrived(page);
    await reads(answer(page, 'scarf.taper'), '240 mm');
    await holds(page, 'scarf.thickness', '20 mm');
    // By one step of hers.
    await page.getByRole('button', { name: 'Undo', exact: true }).tap();
    await reads(answer(page, 'scarf.taper'), '144 mm');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });
});

describe.each([
  ['a phone', { ...phone, width: 360 }],
  ['a wide window', { width: 1280, height: 900, reducedMotion: 'reduce' }],
] as const)('in %s', (_, options) => {
  const page = onePage({ ...options, at: '#/quick-answers' });
  let names: string[] = [];
  beforeAll(async () => {
    await arrived(page());
    names = await questionsOf(page());
  });

  test.each(allColours)('axe, %s: the list and a question', async (colours) => {
    await page().evaluate(() => void (location.hash = '#/quick-answers'));
    await page().locator('.question-list').waitFor();
    await wear(page(), colours);
    expect(await violations(page())).toStrictEqual([]);
    await turnToQuestion(page(), 'quickBend');
    expect(await violations(page())).toStrictEqual([]);
  });

  test('nothing is wider than the window, keys are wide enough, and nothing of a boat is seen', async () => {
    expect(names.length).toBeGreaterThan(20);
    for (const name of names) {
      await turnToQuestion(page(), name);
      expect([name, await tooWide(page())]).toStrictEqual([name, 0]);
      expect(await page().locator('.boat-pick, .alongside').count()).toBe(0);
      expect(numberIn(await cell(page(), name).locator('.answer .figure').first().innerText())).not.toBeNaN();
      const small = 'touch' in options ? await tooSmall(page()) : [];
      expect([name, small]).toStrictEqual([name, []]);
    }
  });
});
