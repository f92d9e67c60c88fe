/**
 * The shop: what several cells share that is no part of the boat. Written once, in its own sheet or in any cell that
 * shows it.
 */
import type { KindId } from '../../measure';
import { bendShareTexts, easyBend } from '../../trade/bend-grades';
import { BOARDS_QUOTED, pricedOtherwise } from './price-ways';
import type { Declared } from './quantity';
import { roundPreset } from './round-preset';

interface Said extends Pick<Declared, 'label' | 'source' | 'min' | 'max' | 'step' | 'otherwise' | 'options'> {
  readonly preset: string;
  /** The preset of who works in feet and inches, where no rule gives it. */
  readonly presetInch?: string;
  /** What it is, where the label does not say it as a noun. */
  readonly meaning?: string;
}

const shop = (
  key: string,
  kind: KindId,
  { label, preset, presetInch, meaning = small(label), ...more }: Said,
): Declared => ({
  name: `shop.${key}`,
  kind,
  label,
  meaning,
  ...more,
  ...roundPreset(kind, preset, presetInch),
});

const small = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** Which the yard sells; as many as a builder asks about. */
export const soldKeys = ['A', 'B', 'C', 'D'] as const;

/** By three tenths of a metre, or by two feet, as the yard of the place sells: common practice, no source. */
const soldLengths = {
  A: ['2.4 m', '8 ft'],
  B: ['3 m', '10 ft'],
  C: ['3.6 m', '12 ft'],
  D: ['4.2 m', '14 ft'],
} as const;

/** Boards that the yard sells, and what each costs. */
export const soldBoards: readonly Declared[] = soldKeys.flatMap((key, i) => [
  shop(`length${key}`, 'stockLength', {
    label: `Board ${i + 1}: length sold`,
    meaning: `length of board sold, ${i + 1}`,
    source: '0 where it is not sold; sold by 0.3 m or by two feet: common practice',
    preset: soldLengths[key][0],
    presetInch: soldLengths[key][1],
    min: '0 mm',
    max: '12 m',
    step: '0.3 m',
  }),
  shop(`price${key}`, 'timberPrice', {
    label: `Board ${i + 1}: price by volume`,
    meaning: `price of that board, ${i + 1}`,
    source: 'made up: write what your yard asks',
    preset: '1500 /m³',
    presetInch: '3.50 /bd ft',
    otherwise: pricedOtherwise('timberPrice', BOARDS_QUOTED),
    min: '0 /m³',
    max: '100000 /m³',
    step: '50 /m³',
  }),
]);

const SHEETS = 'sold as 1220 by 2440 mm or 4 by 8 ft: common practice';

export const soldSheets: readonly Declared[] = [
  shop('sheetLength', 'length', {
    label: 'Length of a sheet of plywood',
    source: SHEETS,
    preset: '2440 mm',
    min: '500 mm',
    max: '4 m',
    step: '10 mm',
  }),
  shop('sheetWidth', 'length', {
    label: 'Width of a sheet of plywood',
    source: SHEETS,
    preset: '1220 mm',
    min: '300 mm',
    max: '3 m',
    step: '10 mm',
  }),
];

/** What all cells on bending hold to. */
export const bendRules: readonly Declared[] = [
  shop('breakingShare', 'share', {
    label: 'Share of rupture allowed',
    meaning: 'share of rupture that a bend may take',
    source: bendShareTexts.source,
    preset: bendShareTexts.clear,
    min: '10 %',
    max: bendShareTexts.picked,
    step: '1 %',
  }),
  shop('easyFrom', 'number', {
    label: 'Radius from which a bend is easy, in thicknesses',
    meaning: 'thicknesses of radius from which a bend is easy, and below which it is tight',
    source: easyBend.source,
    preset: String(easyBend.value),
    min: '10',
    max: '2000',
    step: '10',
  }),
  shop('onePerson', 'force', {
    label: 'What one person holds',
    meaning: 'pull that one person holds',
    source: 'common practice: 200 to 300 N (45 to 65 lbf) at arm’s reach',
    preset: '250 N',
    min: '10 N',
    max: '2 kN',
    step: '10 N',
  }),
];

/** The air that wood, glue and coats are in. */
export const shopAir: readonly Declared[] = [
  shop('air', 'temperature', {
    label: 'Air in the shop',
    meaning: 'temperature of the air in the shop',
    preset: '20 °C',
    min: '0 °C',
    max: '60 °C',
    step: '1 °C',
  }),
  shop('humidity', 'share', {
    label: 'Humidity of the air now',
    source: 'relative, by a hygrometer beside the work; not the mean of some weeks, in which wood settles',
    preset: '60 %',
    min: '5 %',
    max: '100 %',
    step: '1 %',
  }),
];

export const shopEntries: readonly Declared[] = [...soldBoards, ...soldSheets, ...bendRules, ...shopAir];
