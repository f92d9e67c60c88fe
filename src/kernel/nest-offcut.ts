/** What is left of sheets in one piece. */
import { laidOutline, type NestPlan, type NestProblem } from './nest';
import { outlineBox } from './lying-outlines';

/**
 * The largest rectangle that is left across the whole of a sheet at its end, or along all of it at its upper edge, of
 * all sheets; a gap is kept from the pieces. m2.
 */
export function offcutOf({ sheets }: NestPlan, { pieces, stocks, gap, edge }: NestProblem): number {
  return Math.max(
    0,
    ...sheets.map(({ stock, laid }) => {
      const { length, width } = stocks[stock]!; // a plan that was checked
      const boxes = laid.map((one) => outlineBox(laidOutline(one, pieces[one.piece]!)).to);
      const along = Math.max(0, ...boxes.map(([x]) => x)) + gap;
      const across = Math.max(0, ...boxes.map(([, y]) => y)) + gap;
      const [long, wide] = [length - 2 * edge, width - 2 * edge];
      return Math.max(Math.max(0, length - edge - along) * wide, Math.max(0, width - edge - across) * long);
    }),
  );
}
