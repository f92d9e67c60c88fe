import { describe, expect, test } from 'vitest';
import { drawing, dim, hatch, label, line, mark, overlay, type Shape } from '../../src/drawing';
import { scarf } from './demonstrations';

const draw = (shapes: Shape[], says = 's.') => drawing({ title: 'T', says, shapes });
const texts = (shapes: readonly Shape[]): string[] => shapes.flatMap((s) => ('text' in s ? [s.text] : []));

describe('two versions in one drawing', () => {
  test('differing texts follow in brackets, equal ones stand once, and a line says which is which', () => {
    const both = overlay(scarf(19, 8), scarf(19, 10));
    expect(texts(both.shapes)).toEqual([
      '152 mm [190 mm]',
      '19 mm',
      'glue face 153.2 mm, 7.1° [glue face 190.9 mm, 5.7°]',
      'square across the face to be cut away',
      '90 mm',
      'Solid: this version. Dashed and in [brackets]: the other version.',
    ]);
  });

  test('the second is dashed, unhatched, and lies under the first lines and over the first tints', () => {
    const corners = [
      [0, 0],
      [9, 0],
      [9, 9],
    ] as const;
    const { shapes } = overlay(
      draw([
        hatch(corners),
        line([
          [0, 0],
          [1, 1],
        ]),
      ]),
      draw([
        hatch(corners),
        line([
          [0, 0],
          [2, 2],
        ]),
        mark([1, 1]),
      ]),
    );
    expect(shapes.map((s) => ('pen' in s ? `${s.shape} ${s.pen}` : s.shape))).toEqual([
      'area none',
      'line ghost',
      'line ghost',
      'line outline',
      'line visible',
      'note',
    ]);
  });

  test('an edge drawn without a pen has no ghost either', () => {
    const area = draw([
      hatch(
        [
          [0, 0],
          [9, 0],
          [9, 9],
        ],
        'plain',
        { pen: 'none' },
      ),
    ]);
    expect(overlay(area, area).shapes.filter((s) => s.shape === 'line')).toEqual([]);
  });

  test('a text that only one version has keeps its place', () => {
    const one = draw([label([0, 0], 'one')]);
    const two = draw([label([0, 0], 'two'), label([5, 5], 'more'), dim([0, 0], [1, 0], '1 mm')]);
    expect(texts(overlay(one, two).shapes).slice(0, 3)).toEqual(['one [two]', '[more]', '[1 mm]']);
    expect(texts(overlay(two, one).shapes).slice(0, 3)).toEqual(['two [one]', 'more', '1 mm']);
  });

  test('says both, by the names given', () => {
    const { says, shapes } = overlay(draw([], 'One board.'), draw([], 'Two boards.'), {
      first: 'one thick board',
      second: 'two thin ones',
    });
    expect(says).toBe('One thick board: One board. Two thin ones, dashed: Two boards.');
    expect(texts(shapes)).toEqual(['Solid: one thick board. Dashed and in [brackets]: two thin ones.']);
  });
});
