/** What the curves of form ask of the hull: her heights, and her form under one level water after the other. */
import { afloatAt, draughtUpTo, heightsOf } from '../../boat/hull/afloat';
import { curvesOfForm } from '../../kernel';
import { fact } from '../form/fact';
import type { CurvesAsked } from './curves-inputs';
import { GEOMETRY } from '../../trade/sources';

export const FORM =
  'K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 3: curves of form; from memory';
/** Levels drawn, and rows of the table. */
const LEVELS = 24;
const ROWS = 6;

export const heights = fact(
  'the lowest point of the hull, and the sheer where it is lowest',
  GEOMETRY,
  (_: {}, { hull }) => heightsOf(hull),
);

export const levelDraught = fact(
  'the closed hull held level and sunk until she pushes aside what all aboard weigh, to her lowest sheer at most',
  FORM,
  ({ laden, density }: CurvesAsked, { hull }) => draughtUpTo(hull, laden / density),
);

/** Even steps of draught up to the lowest place of the sheer. */
const draughts = (steps: number, { lowest, leastSheer }: ReturnType<typeof heightsOf>) =>
  Array.from({ length: steps }, (_, i) => ((i + 1) * (leastSheer - lowest)) / steps);

/** The hull level at the draught looked at; a sentence where the water meets none of her. */
export const form = fact(
  'the closed hull cut by the level water',
  FORM,
  ({ draught }: CurvesAsked, { hull, ask }) => {
    const height = ask(heights).lowest + draught;
    const { aft, fore } = afloatAt(hull, height).waterplane;
    const [at] = curvesOfForm(hull.body, [height]);
    if (!at) throw new Error('no part of her is under this water: give a greater draught');
    return { at, waterlineLength: fore - aft };
  },
);

/** The same at each level of the chart. */
export const forms = fact('the same at each of 24 draughts', FORM, (_: {}, { hull, ask }) => {
  const known = ask(heights);
  return curvesOfForm(
    hull.body,
    draughts(LEVELS, known).map((deep) => known.lowest + deep),
  );
});

export const draughtRows = fact(
  'six even steps up to the lowest place of the sheer',
  GEOMETRY,
  (_: {}, { ask }) =>
    draughts(ROWS, ask(heights)).map((value, i) => ({
      id: `level${i + 1}`,
      label: `level ${i + 1} of ${ROWS}`,
      value,
    })),
);
