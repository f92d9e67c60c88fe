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
  // What stands under the lines is known only once they are set out.
  const over = first.sheet.height - high;
  return over > 0 ? set(Math.max(LEAST_FIELD, first.field - over)) : first;
}
