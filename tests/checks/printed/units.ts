/** Units in which the sources print, in SI; not those of the project's own table, which stands beside them. */
export const IN = 0.0254;
export const FT = 0.3048;
export const PSI = (0.45359237 * 9.80665) / 0.0254 ** 2;

/** Printed numbers by their path in src/trade: file, export, row, column. */
export type Printed = Readonly<Record<string, number>>;

/** `a | 1 | 2` by lines: the head of each line, and the numbers after it; an empty place is null. */
export const linesOf = (
  text: string,
): readonly (readonly [id: string, numbers: readonly (number | null)[]])[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [id = '', ...cells] = line.split('|').map((cell) => cell.trim());
      return [id, cells.map((cell) => (cell === '' ? null : Number(cell)))] as const;
    });

/** Columns of a table as paths, each number times the unit of its column; empty places are left out. */
export function tableOf(
  path: string,
  columns: readonly (readonly [key: string, unit: number])[],
  text: string,
): Printed {
  return Object.fromEntries(
    linesOf(text).flatMap(([id, numbers]) =>
      columns.flatMap(([key, unit], i) => {
        const number = numbers[i] ?? null;
        return number === null ? [] : [[`${path}.${id}.${key}`, number * unit] as const];
      }),
    ),
  );
}
