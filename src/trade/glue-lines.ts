/** How thick a glue stays between two layers pressed together, by its kind; the sheet of the glue in hand outranks it. */
import { epoxyLine } from './adhesives';
import type { Cited } from './table';

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';
const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

/** Thickness of the line, m, under the ids of the table of glues. */
export const glueLines: Readonly<Record<string, Cited>> = {
  epoxy: epoxyLine,
  resorcinol: {
    value: 0.000115,
    source: `the middle of 0.08 to 0.15 mm (0.003 to 0.006 in), where stiff structural glues are strongest, ${HANDBOOK}`,
    known: 'published',
  },
  polyurethane: practice(0.0005, 'half a millimetre (0.02 in) between layers that lie well'),
  pva: {
    value: 0.0001,
    source: "the middle of 0.05 to 0.15 mm (0.002 to 0.006 in), a glue maker's sheet",
    known: 'published',
  },
};

/** All kinds of glue, wet, kg/m3. */
export const glueDensity: Cited = practice(1100, 'about 1.1 kg/L (69 lb/ft³) for the common kinds');
