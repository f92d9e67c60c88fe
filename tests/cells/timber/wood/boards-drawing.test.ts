/** The drawing of the boards can be cut from: every text stands in the row of what it names, and names the right piece. */
import { expect, test } from 'vitest';
import { starters, type Table } from '../../../../src/boat';
import { boards } from '../../../../src/cells/timber/wood/boards';
import { type Drawing, LEAST_TEXT, setOut, type SetOut, type Sheet } from '../../../../src/drawing';
import { textSlab } from '../../../../src/drawing/set-out/collisions';
import { fitted } from '../../../../src/page/picture/fitted';
import { plainShown, type Shown } from '../../../../src/measure';
import { withOtherNames, withTwoChines } from '../../odd-boats';
import { tryCell } from '../../try-cell';

const inches: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '$' };
const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['other names', withOtherNames],
];
type Set = (of: Drawing) => Sheet;
const setAt =
  (options: SetOut): Set =>
  (of) =>
    setOut(of, options);
/** A phone, the column at 1280 px, and a page of a card. */
const sheets: readonly Set[] = [
  setAt({ width: 324, maxHeight: 1000 }),
  setAt({ width: 610, maxHeight: 1000 }),
  setAt({ width: 497, maxHeight: 560, text: LEAST_TEXT }),
];
/** As low as the page keeps it, on a narrow phone, on a wide one and in the column: so many boards as a starter buys have their room there. */
const lowSheets: readonly Set[] = [294, 324, 610].map(
  (width) => (of) => fitted(Math.min(690, 1.9 * width), of, { width, units: 'metric' }).sheet,
);

interface Row {
  readonly board: string;
  readonly top: number;
  readonly bottom: number;
  readonly pieces: { readonly text: string; readonly left: number; readonly right: number }[];
}

/** The rows as they stand on the sheet, px: each from its board's name to the next. */
function rowsOf(drawing: Drawing, { scale, origin }: Sheet): Row[] {
  const rows: Row[] = [];
  let bar: readonly number[][] = [];
  for (const shape of drawing.shapes) {
    if (shape.shape === 'area' && shape.fill === 'plain') {
      bar = shape.rings[0]!.map(([x, y]) => [origin[0] + scale * x, origin[1] - scale * y]);
      const row = rows.at(-1)!;
      const ys = bar.map(([, y]) => y!);
      Object.assign(row, { top: Math.min(...ys), bottom: Math.max(...ys) });
    } else if (shape.shape === 'note' && shape.text.startsWith('Board ')) {
      rows.push({ board: shape.text, top: 0, bottom: 0, pieces: [] });
    } else if (shape.shape === 'note' && /^\d+(:|$)/.test(shape.text)) {
      const xs = bar.map(([x]) => x!);
      rows.at(-1)!.pieces.push({ text: shape.text, left: Math.min(...xs), right: Math.max(...xs) });
    }
  }
  return rows;
}

/** The paper that a text covers, px. */
function paperOf(sheet: Sheet, text: string) {
  for (const mark of sheet.marks)
    if (mark.kind === 'text' && mark.lines.join(' ') === text) {
      const slab = textSlab(mark)!; // it has lines
      return {
        left: slab.x - slab.reachX,
        right: slab.x + slab.reachX,
        top: slab.y - slab.reachY,
        bottom: slab.y + slab.reachY,
      };
    }
  throw new Error(`"${text}" stands nowhere on the sheet`);
}

test.each(boats)('%s: every text lies in its own row, a piece’s within the piece', (_, table) => {
  for (const shown of [plainShown, inches]) {
    const { drawing, ...tried } = tryCell(boards, {}, table, shown);
    const isStarter = starters.some((one) => one.table === table);
    for (const set of [...sheets, ...(isStarter ? lowSheets : [])]) {
      const sheet = set(drawing!);
      const rows = rowsOf(drawing!, sheet);
      expect(rows).toHaveLength(tried.number('boards'));
      expect(rows.flatMap(({ pieces }) => pieces)).toHaveLength(tried.number('pieces'));
      for (const { board, top, bottom, pieces } of rows) {
        const name = paperOf(sheet, board);
        expect(Math.abs(name.top + name.bottom - top - bottom) / 2).toBeLessThan((bottom - top) / 2);
        for (const { text, left, right } of pieces) {
          const paper = paperOf(sheet, text);
          expect(paper.top).toBeGreaterThan(top);
          expect(paper.bottom).toBeLessThan(bottom);
          expect(paper.left).toBeGreaterThan(left);
          expect(paper.right).toBeLessThan(right);
        }
      }
    }
  }
});

test('a piece has the number of the cut list and the name of its part there, on the list’s board', () => {
  const tried = tryCell(boards, {}, starters[0]!.table);
  const drawing = tried.drawing!;
  const rows = rowsOf(drawing, sheets[0]!(drawing));
  const list = tried.rows.map(({ id }) => id);
  expect(list).toHaveLength(tried.number('pieces'));
  const drawn = rows.flatMap(({ board, pieces }) => pieces.map(({ text }) => ({ board, text })));
  for (const [at, row] of list.entries()) {
    const { board, text } = drawn[at]!;
    expect(board).toBe(`Board ${tried.inRow(row, 'board') as number}`);
    expect(`${at + 1}: ${tried.inRow(row, 'name') as string}`.startsWith(text)).toBe(true);
  }
});
