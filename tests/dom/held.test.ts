/** What is typed on is one step for Undo, however long it takes; after a pause another begins. */
import { render } from 'preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Bench, BenchContext } from '../../src/page/bench';
import { use } from '../../src/page/html';
import { type TypedAhead, useHeld } from '../../src/page/writing/held';

const host = document.body.appendChild(document.createElement('div'));
beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  render(null, host);
  vi.useRealTimers();
});

function laid() {
  const written: { text: string; run: string }[] = [];
  let held: TypedAhead | undefined;
  const Field = () => {
    held = useHeld((text, run) => written.push({ text, run }));
    return null;
  };
  const bench = { keeping: { save: () => {} } } as unknown as Bench; // what it asks for
  render(use(BenchContext.Provider, { value: bench }, use(Field, {})), host);
  return { written, type: (text: string) => held!.type(text) };
}

test('letters that come without a pause go on with one step, though they are written again and again', () => {
  const { written, type } = laid();
  type('M');
  vi.advanceTimersByTime(300);
  for (let at = 1; at <= 20; at += 1) {
    type('M'.repeat(at));
    vi.advanceTimersByTime(150);
  }
  vi.advanceTimersByTime(300);
  expect(written.map(({ text }) => text.length)).toStrictEqual([1, 20]);
  expect(new Set(written.map(({ run }) => run)).size).toBe(1);
});

test('after a pause another step begins, and each field has steps of its own', () => {
  const first = laid();
  first.type('Mark');
  vi.advanceTimersByTime(2500);
  first.type('Mark it');
  vi.advanceTimersByTime(300);
  render(null, host);
  const second = laid();
  second.type('Saw');
  vi.advanceTimersByTime(300);
  expect(first.written.map(({ text }) => text)).toStrictEqual(['Mark', 'Mark it']);
  expect(new Set([...first.written, ...second.written].map(({ run }) => run)).size).toBe(3);
});
