/** Names in a graph put where they cover neither each other nor the marked points. */
import { textWidth } from '../../drawing';

/** What a name belongs to, px from the upper left corner of the graph's field. */
export interface ChartName {
  readonly text: string;
  /** A point; a place on a curve; a limit drawn across at y; a limit drawn upright at x. */
  readonly of: 'point' | 'curve' | 'across' | 'upright';
  readonly x: number;
  readonly y: number;
}

export interface PlacedName {
  readonly text: string;
  readonly x: number;
  /** Middle of the line of letters. */
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const GAP = 10;

/** What a pixel of a name over a line costs against one over another name: it can be read, but not as well. */
const OVER_LINE = 0.3;
/** What a pixel of a name's way from its point costs: over a line beside it, it is known whose it is. */
const AWAY = 4;

/** @param lines places along the lines drawn, close together */
export function placeNames(
  names: readonly ChartName[],
  lines: readonly { readonly x: number; readonly y: number }[],
  field: { width: number; height: number },
  size: number,
): PlacedName[] {
  const half = 0.65 * size;
  const dots = names.flatMap(({ of, x, y }): Box[] => (of === 'point' ? [around(x, y, 7, 7)] : []));
  const drawn = lines.map(({ x, y }) => around(x, y, 3, 3));
  const taken: Box[] = [];
  return names.map((name) => {
    const width = textWidth(name.text, size);
    const boxOf = ({ x, y, anchor }: PlacedName): Box => {
      const left = anchor === 'start' ? x : x - width;
      return { left, right: left + width, top: y - half, bottom: y + half };
    };
    const cost = (box: Box) =>
      total(box, taken) +
      total(box, dots) +
      OVER_LINE * total(box, drawn) +
      outside(box, field) +
      AWAY * away(name, box);
    const [best] = candidates(name, field, half, width)
      .map((placed) => ({ placed, cost: cost(boxOf(placed)) }))
      .toSorted((a, b) => a.cost - b.cost);
    const { placed } = best!; // every kind of name has candidates
    taken.push(boxOf(placed));
    return placed;
  });
}

function candidates(
  { text, of, x, y }: ChartName,
  field: { width: number; height: number },
  half: number,
  width: number,
): PlacedName[] {
  const at = (left: number, top: number, anchor: PlacedName['anchor']): PlacedName => ({
    text,
    x: left,
    y: top,
    anchor,
  });
  switch (of) {
    case 'across':
      return [y - half - 2, y + half + 2].flatMap((row) => [
        at(field.width, row, 'end'),
        at(4, row, 'start'),
        at(field.width / 2, row, 'start'),
      ]);
    case 'upright': {
      const rows = [half + 2, 3 * half + 4, 5 * half + 6, field.height - half - 4];
      return rows.flatMap((row) => [at(x + 5, row, 'start'), at(x - 5, row, 'end')]);
    }
    case 'point':
    case 'curve': {
      // The name of a line stands beside it, or it would be taken for another's.
      const beyond = of === 'curve' ? [] : [y - 3 * GAP, y + 3 * GAP];
      const rows = [y - GAP - 2, y + GAP + 3, y, ...beyond];
      const beside = rows.flatMap((row) => [at(x + GAP, row, 'start'), at(x - GAP, row, 'end')]);
      // Over the point, or under the arch that it is on.
      const inLine = [y - 2 * GAP, y + 2 * GAP, y + 4 * GAP, y + 6 * GAP].flatMap((row) =>
        [0.5, 0.65, 0.8, 0.35].map((share) => at(x - share * width, row, 'start')),
      );
      return of === 'curve' ? beside : [...beside, ...inLine];
    }
  }
}

const around = (x: number, y: number, dx: number, dy: number): Box => ({
  left: x - dx,
  right: x + dx,
  top: y - dy,
  bottom: y + dy,
});

const total = (box: Box, others: readonly Box[]): number =>
  others.reduce((sum, other) => sum + overlap(box, other), 0);

function overlap(a: Box, b: Box): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** How far a name lies from its point, beyond what lies beside it. */
function away({ of, x, y }: ChartName, { left, right, top, bottom }: Box): number {
  if (of !== 'point' && of !== 'curve') return 0;
  const far = Math.hypot(Math.max(0, left - x, x - right), Math.max(0, top - y, y - bottom));
  return Math.max(0, far - 1.5 * GAP);
}

/** How much sticks out of the field; a little of it above is no harm. */
function outside(box: Box, { width, height }: { width: number; height: number }): number {
  const beyond = Math.max(0, -box.left) + Math.max(0, box.right - width);
  return 40 * (beyond + Math.max(0, -10 - box.top) + Math.max(0, box.bottom - height));
}
