// The order in which a ripple is told, on invented ones: common sense of what a builder wants to know first, no source.

import { expect, test } from 'vitest';
import { inOrder, type LineKind, type Nearness, type RippleLine } from '../../../src/page/told/order';

interface Named extends RippleLine {
  readonly name: string;
}

const line = (name: string, kind: LineKind, place: Nearness, size = 1, notebook?: string): Named => ({
  name,
  kind,
  place,
  size,
  notebook: notebook ?? (place === 'boat' ? '' : place === 'elsewhere' ? 'other' : 'open'),
});

const names = (lines: readonly Named[]) => lines.map(({ name }) => name);

test('what stops comes first, then what wants minding, then what is kept again, then the first answer in hand', () => {
  const { told, folded } = inOrder([
    line('pull', 'answer', 'in hand', 87),
    line('share', 'first answer', 'in hand', 2),
    line('kept', 'clear', 'open'),
    line('look', 'mind', 'in view'),
    line('breaks', 'stop', 'open'),
  ]);
  expect(names(told)).toStrictEqual(['breaks', 'look', 'kept', 'share', 'pull']);
  expect(folded).toStrictEqual([]);
});

test('first answers of cells in view come before larger moves elsewhere', () => {
  const { told } = inOrder([
    line('far', 'first answer', 'open', 500),
    line('beside', 'first answer', 'in view', 1),
    line('beside too', 'answer', 'in view', 300),
    line('here', 'first answer', 'in hand', 0.1),
    line('farther', 'answer', 'open', Number.POSITIVE_INFINITY),
  ]);
  expect(names(told)).toStrictEqual(['here', 'beside', 'beside too', 'farther', 'far']);
});

test('in the open notebook the largest move comes first, and after its cells the boat', () => {
  const { told } = inOrder([
    line('beam', 'main number', 'boat', 900),
    line('small', 'answer', 'open', 2),
    line('large', 'answer', 'open', 30),
    line('equal', 'answer', 'open', 2),
  ]);
  expect(names(told)).toStrictEqual(['large', 'small', 'equal', 'beam']);
});

test('a limit passed in a notebook that nobody has opened is told, but after what is in view', () => {
  const { told } = inOrder([
    line('stop there', 'stop', 'elsewhere'),
    line('mind there', 'mind', 'elsewhere'),
    line('mind here', 'mind', 'open'),
    line('answer here', 'first answer', 'in view'),
    line('not in view', 'answer', 'open', 99),
  ]);
  expect(names(told)).toStrictEqual(['mind here', 'answer here', 'stop there', 'mind there', 'not in view']);
});

test('numbers of a notebook that nobody has opened are folded, however far they moved', () => {
  const { told, folded } = inOrder([
    line('a', 'first answer', 'elsewhere', 1e6, 'thin layers'),
    line('b', 'answer', 'elsewhere', 1e9, 'holding'),
    line('c', 'other', 'open'),
    line('d', 'other', 'boat'),
    line('e', 'answer', 'elsewhere', 5, 'thin layers'),
  ]);
  expect(told).toStrictEqual([]);
  // What is here, then the boat, then the others; answers in the order of their size.
  expect(folded.map(({ notebook, lines }) => [notebook, names(lines)])).toStrictEqual([
    ['open', ['c']],
    ['', ['d']],
    ['holding', ['b']],
    ['thin layers', ['a', 'e']],
  ]);
});

test('there is room for so many numbers; limits never lie under a fold', () => {
  const { told, folded } = inOrder(
    [
      ...[5, 4, 3, 2].map((size) => line(`moved ${size}`, 'answer', 'open', size)),
      ...[1, 2, 3].map((at) => line(`stop ${at}`, 'stop', 'elsewhere')),
    ],
    2,
  );
  expect(names(told)).toStrictEqual(['stop 1', 'stop 2', 'stop 3', 'moved 5', 'moved 4']);
  expect(folded.map(({ lines }) => names(lines))).toStrictEqual([['moved 3', 'moved 2']]);
});
