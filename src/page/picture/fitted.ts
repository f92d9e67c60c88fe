/** A drawing set out so that it stays within a height, its scale bar and the words under it included. */
import { type Drawing, type ScaleUnits, setOut, type Sheet } from '../../drawing';

export interface Fitted {
  readonly sheet: Sheet;
  /** What the drawing's lines were given of the height, px. */
  readonly field: number;
}

interface Options {
  /** px */
  readonly width: number;
  readonly units: ScaleUnits;
  /** Size of the letters, px. */
  readonly text?: number;
}

/** What its lines may always take, px, however much is written under them. */
const LEAST_FIELD = 150;
/** How much higher than before is much. */
const MUCH = 1.25;

/**
 * @param high what all may take, px; more where what is written leaves the lines less than they need
 * @param last the last setting out of the same drawing, so that nothing jumps while a slider moves
 */
export function fitted(
  high: number,
  drawing: Drawing,
  { width, units, text }: Options,
  last?: Fitted,
): Fitted {
  const options = { width, units, ...(text === undefined ? {} : { text }) };
  const held = last?.sheet.width === options.width ? last : undefined;
  const set = (field: number): Fitted => ({
    field,
    sheet: setOut(drawing, { ...options, maxHeight: field, ...(held ? { like: held.sheet } : {}) }),
  });
  const first = set(held?.field ?? high);
  // While a slider moves the lines keep their size; they are sized anew for what has become much higher.
  if (held && first.sheet.height <= MUCH * Math.max(high, held.sheet.height)) return first;
  // What stands under the lines is known only once they are set out, and it grows where they leave letters no room.
  const over = first.sheet.height - high;
  if (over <= 0) return first;
  const all = [first];
  for (const less of [over, over / 2, 1.5 * over]) {
    const lower = set(Math.max(LEAST_FIELD, first.field - less));
    if (lower.sheet.height <= high) return lower;
    all.push(lower);
  }
  return all.reduce((best, one) => (one.sheet.height < best.sheet.height ? one : best));
}
