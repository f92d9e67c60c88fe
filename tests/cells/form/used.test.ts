/** The form of a cell holds what three cells use: what one alone needs is said by a plainer way, or made of use to more. */
import { expect, test } from 'vitest';
import { type Cell, isChoice } from '../../../src/cells';
import { cells } from '../../../src/cells/all';

const ENOUGH = 3;

/** Fields that fewer cells use, and why they stand. */
const FEWER: Readonly<Record<string, string>> = {
  'cell.folded': 'one cell has more than twelve groups, the buying list',
  'cell.leaves':
    'sheets are laid on the bench one by one; what other cells cut has its patterns at full size',
  'cell.search': 'two cells ask for a search that takes longer than an edit: boards and sheets to buy',
  'cell.tall': 'the lines of a boat and a list of boards are as high as they are wide',
  'choice.without': 'words for a boat that has no chine, where a cell speaks of one',
  'option.withoutBoat': 'one choice has an answer that a boat calls by her part and a workshop by no name',
};

/** Every declaration of a kind in a cell. */
const declared: Readonly<Record<string, (cell: Cell) => readonly object[]>> = {
  cell: (cell) => [cell],
  input: ({ inputs }) => Object.values(inputs).filter((spec) => !isChoice(spec)),
  option: ({ inputs }) =>
    Object.values(inputs).flatMap((spec) =>
      isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [],
    ),
  choice: ({ inputs }) => Object.values(inputs).filter(isChoice),
  answer: ({ answers }) => answers,
  warning: ({ warnings }) => warnings,
  table: ({ table }) => (table ? [table] : []),
  column: ({ table }) => table?.columns ?? [],
  patterns: ({ patterns }) => (patterns ? [patterns] : []),
  function: ({ functions = {} }) => Object.values(functions),
  source: ({ sources }) => sources,
};

test('every field of the form is used by three cells', () => {
  const users = new Map<string, Set<string>>();
  for (const cell of cells)
    for (const [kind, all] of Object.entries(declared))
      for (const field of all(cell).flatMap((one) =>
        Object.entries(one).flatMap(([key, value]) => (value === undefined ? [] : [`${kind}.${key}`])),
      ))
        users.set(field, (users.get(field) ?? new Set()).add(cell.id));
  const few = [...users].flatMap(([field, by]) => (by.size < ENOUGH ? [field] : []));
  // What a choice and a number have in common counts as one field of an input.
  const shared = few.filter((field) => {
    const [kind, key] = field.split('.');
    return kind !== 'choice' || (users.get(`input.${key}`)?.size ?? 0) < ENOUGH;
  });
  expect(users.size).toBeGreaterThan(40);
  expect(shared.toSorted()).toStrictEqual(Object.keys(FEWER).toSorted());
});
