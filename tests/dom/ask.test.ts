/** A question at the desk: nothing of its answer is in the page before the guess is written and the answer asked for. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import { afterEach, expect, test } from 'vitest';
import { cells } from '../../src/cells/all';
import { isIssue, plainShown } from '../../src/measure';
import { saidIn } from '../../src/notebook/lesson/write-lesson';
import { AskView } from '../../src/page/ask/ask-view';
import { type Bench, BenchContext } from '../../src/page/bench';
import { blockViews } from '../../src/page/blocks/kinds';
import { use } from '../../src/page/html';
import { askedOf, fence, SCARF } from '../notebook/lesson/asked-of';

const host = document.body.appendChild(document.createElement('div'));
afterEach(() => render(null, host));

/** What was pressed or typed is drawn by the next frame. */
const drawn = () => new Promise((then) => requestAnimationFrame(() => requestAnimationFrame(then)));

function laid(...lines: string[]) {
  const { asks, book, page } = askedOf(
    `${SCARF}\n${fence('ask a', 'question: How long is the taper?', ...lines)}`,
  );
  const bench = {
    book,
    shown: signal(plainShown),
    wall: signal(null),
    asked: signal(null),
    instances: signal(new Map()),
  } as unknown as Bench; // what a question asks for
  const showing = {
    notebook: page.id,
    blocks: (inside: Parameters<typeof blockViews>[0]) => blockViews(inside, page.id),
  };
  render(use(BenchContext.Provider, { value: bench }, use(AskView, { ask: asks[0]!, showing })), host);
  const key = (words: string) =>
    [...host.querySelectorAll('button')].find((one) => one.textContent === words);
  const press = async (words: string) => {
    key(words)!.click();
    await drawn();
  };
  const type = async (text: string, selector = '.ask-guess :is(input, textarea)') => {
    const field = host.querySelector<HTMLInputElement>(selector)!;
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await drawn();
  };
  return { book, press, type, key, said: () => saidIn(book.state.peek(), page.id, 'a') };
}

test('there is no key to the answer before a guess is written, and no figure of it', async () => {
  expect(cells.length).toBeGreaterThan(0);
  const { press, type, key, said } = laid('answer: askScarf.taper', 'see: Eight thicknesses.');
  expect(key('Show the answer')).toBeUndefined();
  expect(host.innerHTML).not.toMatch(/144|Eight thicknesses/);
  await press('Write it down');
  expect(host.textContent).toContain('Nothing is written yet.');
  await type('5 kg');
  await press('Write it down');
  expect(host.textContent).toMatch(/is a length; "5 kg" is a mass/);
  expect(said()).toMatchObject({ draft: '5 kg', guesses: [] });
  await type('100');
  await press('Write it down');
  expect(host.textContent).toContain('Too low.');
  expect(host.innerHTML).not.toMatch(/144|Eight thicknesses/);
  await type('145');
  await press('Write it down');
  expect(host.textContent).toContain('Near enough.');
  await press('Show the answer');
  expect(host.textContent).toMatch(
    /You wrote: 100, then 145\.\s*It is 144.mm\. Your guess was 1 mm too high/,
  );
  expect(host.textContent).toContain('Eight thicknesses.');
});

test('each is a step that Undo takes back, and a sentence is kept as it is typed', async () => {
  const { book, press, type, said } = laid('answer: askScarf.taper');
  await type('100');
  await press('Write it down');
  await press('Show the answer');
  await type('Thick', '.ask-field textarea');
  await type('Thicker boards run longer.', '.ask-field textarea');
  expect(said()).toMatchObject({ shown: true, sentence: 'Thicker boards run longer.' });
  book.undo();
  expect(said()).toMatchObject({ shown: true, sentence: '' });
  book.undo();
  await drawn();
  expect(said()).toMatchObject({ shown: false, guesses: ['100'] });
  expect(host.innerHTML).not.toContain('144');
  await press('Begin this question anew');
  expect(said().guesses).toStrictEqual([]);
  book.undo();
  expect(said().guesses).toStrictEqual(['100']);
});

test('of three answers none is told before it is asked for', async () => {
  const { press, said } = laid('answer: askScarf.taper', 'change: askScarf.slope = 12');
  await press('It stays as it is');
  expect(said().guesses).toStrictEqual(['stays']);
  expect(host.textContent).not.toMatch(/not so|right/i);
  await press('Show the answer');
  expect(host.textContent).toContain('You wrote: it stays as it is.');
  expect(host.textContent).toContain('It rises. Your guess was another.');
});

test('in words, markup is text, and the writer’s own words stand with the answer', async () => {
  const { press, type } = laid('words: The glue.');
  await type('<b>glue</b>');
  await press('Write it down');
  expect(host.textContent).not.toContain('The glue.');
  await press('Show the answer');
  expect(host.textContent).toContain('You wrote: <b>glue</b>.');
  expect(host.textContent).toContain('The glue.');
});

test('hints come one by one, and a step is judged as it is filled in', async () => {
  const { press, type, key } = laid('answer: 3', 'hint: One.', 'hint: Two.', 'step: The run | 144 mm');
  expect(host.textContent).not.toContain('One.');
  expect(host.textContent).toMatch(/144.mm/);
  await press('A hint');
  expect(host.textContent).toContain('One.');
  expect(host.textContent).not.toContain('Two.');
  await press('Another hint');
  expect(key('Another hint')).toBeUndefined();
  await press('Again, with one step more to fill in');
  expect(host.textContent).not.toContain('144');
  await type('9 in', '.ask-blank input');
  expect(host.textContent).toContain('Too high.');
  await type('14.4 cm', '.ask-blank input');
  expect(host.textContent).toContain('Near enough.');
});

test('the answer follows an edit', async () => {
  const { book, press, type } = laid('answer: askScarf.taper');
  await type('100');
  await press('Write it down');
  await press('Show the answer');
  book.write({ 'askScarf.thickness': '24 mm' });
  await drawn();
  // Eight thicknesses of 24 mm.
  expect(host.textContent).toMatch(/It is 192.mm\./);
  expect(isIssue(book.first.value.value('askScarf.taper'))).toBe(false);
});
