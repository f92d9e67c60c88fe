/**
 * How a card gives way for room. Letters are never less than 14 pt, and answers, words, warnings,
 * cautions and an entry that can't be used are never left out. All else steps down this ladder, and
 * the first rung on which the page is no higher than its paper is taken:
 *
 * 1. Roomy: figures of 38 pt, cautions in a list, a row for each input, sources named in one line, and
 *    the picture 400 px high or all it wants.
 * 2. Close: figures of 33 pt, cautions run on, inputs in groups run on below the rows; the picture 320 px.
 * 3. Tight: figures of 30 pt, all inputs run on; the picture 250 px.
 * 4. The picture narrower, with the text running on at its side, or else lower, as long as its letters
 *    stand clear of each other and leave room for what is drawn. So with all that follow, where it may
 *    be narrower still:
 * 5. inputs without what they are linked from;
 * 6. sources counted;
 * 7. inputs in groups counted, `As in the notebook: The wood (4), The glue (3)`;
 * 8. all inputs counted that do not stand out (written over, as built, unlike in the two versions);
 * 9. all inputs counted. Where inputs are counted, as many are told first as there is room for.
 * 10. Tightest: figures of 24 pt, that may break; the least there is.
 * 11. The rows of a table as far as they go, the rest counted.
 *
 * A card with a table that is not on one page by the second rung takes two: rows are to be read, not
 * counted. A card without one takes two only where it is on one page on no rung. The first page then
 * says what goes on overleaf, and each page stands on a rung of its own. What stands first stands on the
 * first page: cautions go over only where they alone are more than it holds. A table that two pages don't
 * hold whole beside the drawing goes on a third, where that holds all its rows: a cut list is cut from.
 */
import { MM_PER_INCH } from '../../measure/si';
export type Closeness = 'roomy' | 'close' | 'tight' | 'tightest';

/** In rows, run on in a line, or the least that is told of them while the rest is counted. */
export type InputsAs =
  | 'rows'
  | 'foremost in rows'
  | 'told'
  | 'named'
  | 'foremost'
  | 'standing out'
  | 'counted';

export interface Rung {
  readonly closeness: Closeness;
  readonly inputs: InputsAs;
  readonly sources: 'named' | 'counted';
  /** At least this high, px, or all the picture wants; at the text's side; as low as it can be read; or narrow at the text's side. */
  readonly picture: number | 'beside' | 'least' | 'narrow';
  readonly table: 'whole' | 'as far as it goes';
}

const TIGHT = { closeness: 'tight', table: 'whole' } as const;
const COUNTED = { inputs: 'counted', sources: 'counted' } as const;

/** Each with the picture's last forms. */
const GIVING_WAY = [
  { ...TIGHT, inputs: 'told', sources: 'named' },
  { ...TIGHT, inputs: 'named', sources: 'named' },
  { ...TIGHT, inputs: 'named', sources: 'counted' },
  { ...TIGHT, inputs: 'foremost', sources: 'counted' },
  { ...TIGHT, inputs: 'standing out', sources: 'counted' },
  { ...TIGHT, ...COUNTED },
  { ...TIGHT, ...COUNTED, closeness: 'tightest' },
] as const;

export const LADDER: readonly Rung[] = [
  { closeness: 'roomy', inputs: 'rows', sources: 'named', picture: 400, table: 'whole' },
  { closeness: 'close', inputs: 'foremost in rows', sources: 'named', picture: 320, table: 'whole' },
  { ...TIGHT, inputs: 'told', sources: 'named', picture: 250 },
  ...GIVING_WAY.flatMap((rung): Rung[] => {
    const forms =
      rung.inputs === 'told' ? (['beside', 'least'] as const) : (['beside', 'least', 'narrow'] as const);
    return forms.map((picture) => ({ ...rung, picture }));
  }),
  { ...COUNTED, closeness: 'tightest', picture: 'least', table: 'as far as it goes' },
];

/** How far a card with a table steps down before it takes a second page. */
export const BEFORE_A_TABLE_GOES_OVER = 2;
/** How many rungs lower the first page may stand before its picture is put on the second. */
export const BEFORE_A_PICTURE_GOES_OVER = 2;

/** Within the margins of A4 and of Letter alike, less what another machine's letters may take, px. */
export const PAGE_HEIGHT = Math.floor(((259 - 3) / MM_PER_INCH) * 96);

/**
 * Widths and heights of a picture at the text's side, the best first: parts of the card's width, and px.
 * How much text runs on beside it is seen, not reckoned.
 */
export const BESIDE: Readonly<
  Record<'beside' | 'narrow', readonly (readonly [width: number, height: number])[]>
> = {
  beside: [
    [0.6, 460],
    [0.6, 360],
    [0.6, 280],
  ],
  narrow: [
    [0.5, 360],
    [0.5, 280],
    [0.5, 220],
    [0.42, 280],
    [0.42, 220],
  ],
};
