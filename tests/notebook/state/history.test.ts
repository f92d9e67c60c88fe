import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { advance, type History, redo, settle, startHistory, undo } from '../../../src/notebook/state/history';

const go = (...steps: [present: string, run?: string][]): History<string> =>
  steps.reduce((history, [next, run]) => advance(history, next, run), startHistory('start'));
const times = <T>(history: History<T>, n: number, step: (history: History<T>) => History<T>) =>
  Array.from({ length: n }).reduce<History<T>>((at) => step(at), history);

describe('undo and redo', () => {
  test('each edit is a step', () => {
    const history = go(['a'], ['b'], ['c']);
    expect(history.past).toStrictEqual(['start', 'a', 'b']);
    expect(undo(history).present).toBe('b');
    expect(undo(undo(history)).present).toBe('a');
    expect(redo(undo(history)).present).toBe('c');
  });

  test('stop at either end', () => {
    const start = startHistory('start');
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
  });

  test('a new edit gives up what was undone', () => {
    const history = advance(undo(go(['a'], ['b'])), 'c');
    expect(history).toMatchObject({ past: ['start', 'a'], present: 'c', future: [] });
    expect(redo(history)).toBe(history);
  });

  test('an edit that changes nothing is no step', () => {
    const history = go(['a']);
    expect(advance(history, 'a')).toBe(history);
  });

  test('going all the way back and forth loses nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { maxLength: 30 }), (edits) => {
        const history = edits.reduce((at, edit) => advance(at, { edit }), startHistory({ edit: -1 }));
        const n = history.past.length;
        expect(n).toBe(edits.length);
        const back = times(history, n, undo);
        expect(back).toMatchObject({ past: [], present: { edit: -1 } });
        expect(back.future).toHaveLength(n);
        expect(times(back, n, redo)).toStrictEqual({ ...history, run: null });
      }),
      { seed: 3 },
    );
  });
});

describe('a run of edits', () => {
  test('is one step, undone at once', () => {
    const history = go(['1', 'slope'], ['12', 'slope'], ['12 m', 'slope']);
    expect(history).toMatchObject({ past: ['start'], present: '12 m', run: 'slope' });
    expect(undo(history).present).toBe('start');
    expect(redo(undo(history)).present).toBe('12 m');
  });

  test('ends where another begins', () => {
    expect(go(['a', 'slope'], ['b', 'width'], ['c', 'slope']).past).toStrictEqual(['start', 'a', 'b']);
    expect(go(['a', 'slope'], ['b'], ['c', 'slope']).past).toStrictEqual(['start', 'a', 'b']);
  });

  test('ends when settled', () => {
    const history = settle(go(['a', 'slope']));
    expect(history.run).toBeNull();
    expect(advance(history, 'b', 'slope').past).toStrictEqual(['start', 'a']);
    expect(settle(history)).toBe(history);
  });

  test('does not go on after an undo or a redo', () => {
    const undone = undo(go(['a', 'slope'], ['b', 'width']));
    for (const run of ['slope', 'width'])
      expect(advance(undone, 'c', run).past).toStrictEqual(['start', 'a']);
    expect(advance(redo(undone), 'c', 'width').past).toStrictEqual(['start', 'a', 'b']);
  });

  test('edits without a key never join', () => {
    expect(go(['a'], ['b']).past).toStrictEqual(['start', 'a']);
  });
});
