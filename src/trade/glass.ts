/**
 * Glass for sheathing: what cloth and mat weigh, how much of a lay-up is glass, and how heavy both parts are.
 *
 * Cloth is sold by ounces per square yard, mat by ounces per square foot: nine times as much for the
 * same figure. Weights are those of dry glass; shares are by mass.
 */
import { FOOT, INCH, OUNCE } from '../measure/si';
import type { Cited, TradeTable } from './table';

/** g/m2 in 1 oz/yd2 and in 1 oz/ft2, from the international ounce, foot and yard. */
const PER_YARD = (OUNCE * 1000) / (3 * FOOT) ** 2;
const PER_FOOT = (OUNCE * 1000) / FOOT ** 2;
const UNITS = 'international avoirdupois ounce and foot';

const grams = (value: number, source: string, known: Cited['known']): { weight: Cited } => ({
  weight: { value: value / 1000, source, known },
});
const cloth = (ounces: number, id: string) => ({
  id,
  label: `Cloth, ${ounces} oz/yd²`,
  cells: grams(ounces * PER_YARD, UNITS, 'calculated'),
});
const mat = (ounces: number, id: string) => ({
  id,
  label: `Chopped-strand mat, ${ounces} oz/ft²`,
  cells: grams(ounces * PER_FOOT, UNITS, 'calculated'),
});
const metric = (value: number, id: string, name: string) => ({
  id,
  label: `${name}, ${value} g/m²`,
  cells: grams(value, 'Practical Action, technical brief "Fibreglass boat building"', 'published'),
});

/** Dry mass per area of the fabrics a boatbuilder is offered. */
export const glass: TradeTable<'weight'> = {
  id: 'glass',
  columns: { weight: { kind: 'areaDensity', meaning: 'dry weight' } },
  rows: [
    cloth(4, 'cloth4'),
    cloth(6, 'cloth6'),
    cloth(7.5, 'cloth7Half'),
    cloth(10, 'cloth10'),
    cloth(12, 'cloth12'),
    cloth(17, 'cloth17'),
    mat(0.75, 'mat3Quarter'),
    mat(1.5, 'mat1Half'),
    metric(300, 'mat300', 'Chopped-strand mat'),
    metric(450, 'mat450', 'Chopped-strand mat'),
    metric(600, 'roving600', 'Woven roving'),
    metric(800, 'roving800', 'Woven roving'),
  ],
};

const ISO = 'ISO 12215-5, Annex C';

/** Share of glass in a lay-up by mass, by the way it is laid. */
export const layups: TradeTable<'glassShare'> = {
  id: 'layup',
  columns: { glassShare: { kind: 'share', meaning: 'share of glass by mass' } },
  rows: [
    {
      id: 'clothSqueegeed',
      label: 'Plain cloth, squeegeed',
      cells: {
        glassShare: {
          value: 0.5,
          source: 'B. Niederer, "Estimating Epoxy Amounts": resin and cloth 50:50 by weight',
          known: 'published',
        },
      },
    },
    {
      id: 'clothRolled',
      label: 'Plain cloth, roller only, first boat',
      cells: {
        glassShare: {
          value: 0.425,
          source: 'common practice, no source: the middle of 40 to 45 %',
          known: 'common practice',
        },
      },
    },
    {
      id: 'mat',
      label: 'Chopped-strand mat, by hand',
      cells: { glassShare: { value: 0.3, source: ISO, known: 'from memory' } },
    },
    {
      id: 'wovenRoving',
      label: 'Woven roving, by hand',
      cells: { glassShare: { value: 0.48, source: ISO, known: 'from memory' } },
    },
    {
      id: 'stitched',
      label: 'Stitched cloth',
      cells: { glassShare: { value: 0.5, source: ISO, known: 'from memory' } },
    },
    {
      id: 'unidirectional',
      label: 'Cloth of one direction',
      cells: { glassShare: { value: 0.55, source: ISO, known: 'from memory' } },
    },
  ],
};

/** Density of E-glass. Published figures run from 2540 to 2600 kg/m3. */
export const glassDensity: Cited = {
  value: 2560,
  source: 'ISO 12215-5, implied by its thickness formula',
  known: 'from memory',
};

/** Density of cured laminating resin; unfilled epoxy runs from 1140 to 1200 kg/m3. */
export const curedResinDensity: Cited = {
  value: 1200,
  source: 'ISO 12215-5, implied by its thickness formula',
  known: 'from memory',
};

function ounces(value: number): Cited {
  return { value: (value * PER_YARD) / 1000, source: UNITS, known: 'calculated' };
}

function practice(millimetres: number): Cited {
  return { value: millimetres / 1000, source: 'common practice, no source', known: 'common practice' };
}

/** How far the edge of the wood is rounded so that dry cloth lies down over it, by the heaviest cloth that it serves. */
export const rounding: TradeTable<'upTo' | 'radius'> = {
  id: 'rounding',
  columns: {
    upTo: { kind: 'areaDensity', meaning: 'heaviest cloth' },
    radius: { kind: 'length', meaning: 'least radius of the edge' },
  },
  rows: [
    { id: 'light', label: 'Cloth to 6 oz/yd²', cells: { upTo: ounces(6), radius: practice(6) } },
    { id: 'middling', label: 'Cloth to 12 oz/yd²', cells: { upTo: ounces(12), radius: practice(10) } },
    { id: 'heavy', label: 'Heavier cloth', cells: { radius: practice(12) } },
  ],
};

/** Widths of the rolls that cloth comes on, m: 30, 38, 50, 60 and 72 in. 38, 50 and 60 by a glass dealer’s page; else common practice, no source. */
export const rollWidths = [30, 38, 50, 60, 72].map((inches) => inches * INCH);
