/** The log as it stands at a cell: an entry is added, what can't be read is told and kept, and Undo takes it back. */
import { signal } from '@preact/signals';
import { render } from 'preact';
import { afterEach, expect, test } from 'vitest';
import { demoBoat } from '../../src/boat';
import { plainShown } from '../../src/measure';
import { createBook } from '../../src/notebook/book';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { freshState } from '../../src/notebook/state/state';
import { type Bench, BenchContext } from '../../src/page/bench';
import { use } from '../../src/page/html';
import { listenForUndo } from '../../src/page/layout/undo-keys';
import { LogBook } from '../../src/page/log/log-book';
import { LogPaper } from '../../src/page/log/log-paper';
import { entry } from '../notebook/log/entries';

const host = document.body.appendChild(document.createElement('div'));
afterEach(() => render(null, host));

/** What was pressed or typed is drawn by the next frame. */
const drawn = () => new Promise((then) => requestAnimationFrame(then));

function laid(cell: string | null) {
  const book = createBook(freshState(demoBoat), () => looseCatalogue([]));
  const bench = {
    book,
    name: signal('Ferry dory'),
    shown: signal(plainShown),
    instances: signal(new Map()),
    boatless: signal(false),
  } as unknown as Bench; // what the log asks for
  render(use(BenchContext.Provider, { value: bench }, use(LogBook, { cell })), host);
  const key = (words: string) =>
    [...host.querySelectorAll('button')].find((one) => one.textContent === words)!;
  const press = async (words: string) => {
    key(words).click();
    await drawn();
  };
  const field = (name: string) => host.querySelector<HTMLInputElement>(`[data-log="${name}"]`)!;
  const type = (name: string, text: string) => {
    field(name).value = text;
    field(name).dispatchEvent(new Event('input', { bubbles: true }));
  };
  const leave = async (name: string) => {
    field(name).dispatchEvent(new FocusEvent('blur'));
    await drawn();
  };
  return { book, bench, key, press, field, type, leave };
}

test('an entry of a cell is written as it is typed, and its fields and keys hand the focus on', async () => {
  const { book, press, field, type, leave } = laid('scarf');
  await press('Add an entry');
  expect(document.activeElement).toBe(field('hours'));
  type('hours', '2');
  type('hours', '2.5');
  // Before anything is drawn: neither field loses what the other was given.
  type('note', '<img src=x onerror="document.title = 1">');
  await leave('note');
  const { e1 } = book.state.value.log;
  expect(e1).toMatchObject({ cell: 'scarf', hours: '2.5', note: '<img src=x onerror="document.title = 1">' });
  expect(e1?.day).toMatch(/^\d{4}-\d\d-\d\d$/);
  await press('Done');
  expect((document.activeElement as HTMLElement).dataset['entry']).toBe('e1');
  expect(host.querySelector('.log-lines')?.textContent).toContain('2.5 h');
  expect(host.querySelector('img')).toBeNull();
  await press('Change');
  await press('Take this entry out');
  expect(book.state.value.log).toStrictEqual({});
  expect((document.activeElement as HTMLElement).textContent).toBe('Add an entry');
  book.undo();
  expect(book.state.value.log['e1']?.hours).toBe('2.5');
});

test('what can’t be read is told at its field once it is left, and stays', async () => {
  const { book, press, field, type, leave } = laid('scarf');
  await press('Add an entry');
  for (const [name, text, says] of [
    ['day', '31 Nov 2026', 'There is no 31 Nov 2026.'],
    ['hours', 'long', 'The hours can’t be read; write 3, 2.5 or 1 h 20 min.'],
    ['money', '3 mm', 'The amount can’t be read; write 12 or 12.50.'],
  ] as const) {
    const told = () => document.getElementById(field(name).getAttribute('aria-describedby')!)?.textContent;
    type(name, text);
    await drawn();
    expect(told()).toBe('');
    await leave(name);
    expect(told()).toBe(says);
    expect(field(name).getAttribute('aria-invalid')).toBe('true');
    expect(field(name).value).toBe(text);
    expect(book.state.value.log['e1']?.[name]).toBe(text);
  }
});

test('in a note the browser’s own undo of letters comes first; outside it the step is taken back', async () => {
  const { book, press, field, type } = laid('scarf');
  listenForUndo(book);
  await press('Add an entry');
  type('note', 'Planed.');
  await drawn();
  const undoIn = (element: Element) => {
    const event = new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, bubbles: true, cancelable: true });
    element.dispatchEvent(event);
    return event.defaultPrevented;
  };
  expect(undoIn(field('note'))).toBe(false);
  expect(book.state.value.log['e1']?.note).toBe('Planed.');
  expect(undoIn(host)).toBe(true);
  expect(book.state.value.log['e1']?.note).toBe('');
});

test('all entries stand under the stages of the notebooks, with what each comes to, on the page and on paper alike', async () => {
  const log = {
    e1: entry({ cell: 'scarf', hours: '2.5', money: '40', note: '<i>Planed</i>' }),
    e2: entry({ cell: 'limber', hours: '90 min' }),
    e3: entry({ hours: 'six', money: '2' }),
  };
  const { book, bench } = laid(null);
  book.open({ ...book.state.value, log });
  await drawn();
  const titles = ['Frames, standing true', 'Bend, join, fasten', 'The build as a whole'];
  const heads = (level: string) => [...host.querySelectorAll(level)].map((one) => one.textContent);
  expect(heads('h3')).toStrictEqual(titles);
  expect([...host.querySelectorAll('.log-sum')].map((one) => one.textContent)).toStrictEqual([
    'Together 1.5 h, 0.00.',
    'Together 2.5 h, 40.00.',
    'Together 0 h, 2.00; 1 can’t be read and is not counted.',
    'In all 4 h, 42.00; 1 can’t be read and is not counted.',
  ]);
  render(use(BenchContext.Provider, { value: bench }, use(LogPaper, { today: new Date(2026, 2, 4) })), host);
  expect(heads('h2')).toStrictEqual(titles);
  expect(host.querySelector('p')?.textContent).toBe(
    'Printed 4 Mar 2026. In all 4 h, 42.00; 1 can’t be read and is not counted.',
  );
  const rows = [...host.querySelectorAll('tbody tr')].map((row) =>
    [...row.querySelectorAll('td')].map((one) => one.textContent),
  );
  expect(rows.map((row) => row.slice(2))).toStrictEqual([
    ['1.5 h', '', ''],
    ['2.5 h', '40.00', '<i>Planed</i>'],
    ['six (not counted)', '2.00', ''],
  ]);
});
