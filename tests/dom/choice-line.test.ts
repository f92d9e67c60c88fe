/** A field that is a choice: label and answer share a line, or have one each; nothing is cut and no row stands half empty. */
import '@fontsource/source-sans-3/400.css';
import '@fontsource/source-sans-3/600.css';
import '../../src/page/style/page.css';
import '../../src/page/style/input.css';
import { render } from 'preact';
import { beforeAll, expect, test } from 'vitest';
import { html, use } from '../../src/page/html';
import { FieldLine } from '../../src/page/input/field-line';

beforeAll(async () => {
  await Promise.all(['400', '600'].map((cut) => document.fonts.load(`${cut} 16px "Source Sans 3"`)));
});

const labels = [
  'Stage',
  'Driven by',
  'Swamped she is to float',
  'The label gives its ratio',
  'Where it is fastened',
];
/** Of all lengths up to the longest that a cell may have, in narrow letters and in wide ones. */
const answers = [
  'no',
  'level',
  'by volume',
  'some way or other',
  'wetting out cloth',
  'in two rope cradles',
  'an outboard on the transom',
  'mahogany from the home farm',
  'glued: screws clamp while it sets',
  'Spruce, white (also spruce-pine-fir)',
  'some minutes: while it is bent on',
];
const asked = labels.flatMap((label) => answers.map((answer) => ({ label, answer })));

/** What a key takes with the air beside it, px. */
const KEY = 64;

/** Between words and what stands beside them, px. */
const AIR = 3;

const over = (a?: DOMRect, b?: DOMRect) =>
  a && b && a.left < b.right + AIR && b.left < a.right + AIR && a.top < b.bottom - 1 && b.top < a.bottom - 1;

/** Where the words of a label stand in its box. */
function written(line: Element): DOMRect {
  const range = document.createRange();
  range.selectNodeContents(line.querySelector('label')!);
  return range.getBoundingClientRect();
}

/** How wide each answer stands in full, px. */
function widths(host: HTMLElement): number[] {
  render(
    asked.map(
      ({ answer }) =>
        html`<div class="line"><select style="flex: none; max-width: none"><option>${answer}</option></select></div>`,
    ),
    host,
  );
  return [...host.querySelectorAll('select')].map((one) => one.getBoundingClientRect().width);
}

/** As narrow as on a phone of 360 px, as in a column beside a drawing, and as wide as a field comes. */
test.each([284, 294, 330, 420])('at %i px label and answer share the line, or each has its own', (width) => {
  const host = document.body.appendChild(document.createElement('div'));
  host.style.width = `${width}px`;
  host.style.fontFamily = '"Source Sans 3"';
  const wanted = widths(host);
  const lines = (keyed: boolean) =>
    asked.map(
      ({ label, answer }) =>
        html`<div class="input">${use(FieldLine, {
          id: 'one',
          label,
          letters: answer.length,
          field: html`<select id="one"><option>${answer}</option></select>`,
          mark: keyed ? 'this cell' : '',
          words: '',
          ...(keyed && { turn: () => undefined }),
        })}</div>`,
    );
  render([...lines(true), ...lines(false)], host);
  const amiss = [...host.querySelectorAll('.line')].flatMap((line, index) => {
    const { label: called, answer } = asked[index % asked.length]!;
    const box = (what: string) => line.querySelector(what)?.getBoundingClientRect();
    const [label, select, key] = [box('label')!, box('select')!, box('.more-key')];
    const all = line.getBoundingClientRect();
    const isBelow = select.top > label.top + 15;
    const ends = key && select.bottom > key.top + 1 ? key.left : all.right;
    return [
      ...(select.width < wanted[index % asked.length]! - 1 ? ['cut'] : []),
      ...(over(written(line), select) || over(written(line), key) || over(select, key) ? ['too close'] : []),
      ...(isBelow && (select.left > all.left + 1 || select.right < ends - KEY) ? ['row half empty'] : []),
      ...(key && (key.height < 44 || key.width < 44) ? ['key too small'] : []),
      ...(all.height > 92 ? [`${all.height} px high`] : []),
    ].map((fault) => `${called}: ${answer}: ${fault}`);
  });
  expect(amiss).toStrictEqual([]);
  render(null, host);
  host.remove();
});
