/** Paint: spreading rates as coating-industry sheets print them, wet films, thinning, what is lost. */
import { paint } from '../../src/cells/finish/paint';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

/** A face of its own and nothing lost, until it is said. */
const of = (key: string, entries: Record<string, string>) =>
  tryCell(paint, { where: 'typed', handLoss: '0 %', unevenLoss: '0 %', ...entries }).number(key);

const GALLON = 3.785411784e-3;
const FOOT = 0.3048;
const perGallon = (rate: number) => (rate * GALLON) / FOOT ** 2;
const perLitre = (rate: number) => rate / 1000;
const SHEETS = 'coating-industry sheets, “Theoretical spreading rate”, worked example';
const SOLIDS = 'solids by volume over the dry film';

const row = (more: Omit<Check, 'cell'>): Check => ({ cell: 'paint', ...more });

export const rows: readonly Check[] = [
  row({
    id: 'C57',
    what: 'face that a gallon covers',
    input: '65 % solids, 5 thou',
    expected: [208.52],
    unit: 'ft²/gal',
    tolerance: 0.05,
    source: SHEETS,
    known: 'published',
    obtain: () => [perGallon(of('rate', { solids: '65 %', film: '5 thou' }))],
  }),
  row({
    id: 'C58',
    what: 'face that a litre covers',
    input: '65 % solids, 125 µm',
    expected: [5.2],
    unit: 'm²/L',
    tolerance: 0.01,
    source: SHEETS,
    known: 'published',
    obtain: () => [perLitre(of('rate', { solids: '65 %', film: '125 µm' }))],
  }),
  row({
    id: 'C59',
    what: 'face that a gallon covers, of which much is lost',
    input: '52 % solids, 1.5 thou, 70 % lost',
    expected: [166.8],
    unit: 'ft²/gal',
    tolerance: 0.5,
    source: SHEETS,
    known: 'published',
    obtain: () => [perGallon(of('realRate', { solids: '52 %', film: '1.5 thou', handLoss: '70 %' }))],
  }),
  row({
    id: 'C60',
    what: 'solids of a thinned paint',
    input: '50 % solids, a tenth of thinner',
    expected: [45.45],
    unit: '%',
    tolerance: 0.01,
    source: 'a paint chemist’s note on thinning, worked example',
    known: 'published',
    obtain: () => [100 * of('thinned', { solids: '50 %', thinner: '10 %' })],
  }),
  row({
    id: 'C61',
    what: 'face that a litre covers; wet film',
    input: '48 % solids, 40 µm',
    expected: [12, 83.33],
    unit: 'm²/L; µm',
    tolerance: 0.05,
    source: SOLIDS,
    known: 'closed form',
    obtain: () => {
      const entries = { solids: '48 %', film: '40 µm' };
      return [perLitre(of('rate', entries)), of('wetFilm', entries) * 1e6];
    },
  }),
  row({
    id: 'C62',
    what: 'paint for three coats',
    input: '10 m², 48 % solids, 40 µm, 15 % lost',
    expected: [2.941],
    unit: 'L',
    tolerance: 0.005,
    source: SOLIDS,
    known: 'closed form',
    obtain: () => [
      1000 * of('volume', { ownArea: '10 m^2', solids: '48 %', film: '40 µm', coats: '3', handLoss: '15 %' }),
    ],
  }),
  row({
    id: 'C63',
    what: 'spreading rate, converted: thickness that 1000 ft²/gal leaves of a paint all solids',
    input: '1000 ft²/gal',
    expected: [24.542],
    unit: 'm²/L',
    tolerance: 0.005,
    source: 'US gallon of 231 cubic inches, international foot',
    known: 'closed form',
    obtain: () => [perLitre(of('rate', { solids: '100 %', film: `${GALLON / (1000 * FOOT ** 2)} m` }))],
  }),
  row({
    id: 'C83a',
    what: 'what to buy when a share of it is lost',
    input: '10 L on the face, 15 % of the purchase lost',
    expected: [11.76],
    unit: 'L',
    tolerance: 0.01,
    source: 'a loss taken off the purchase, not added to the need',
    known: 'closed form',
    obtain: () => [
      1000 *
        of('volume', { ownArea: '100 m^2', solids: '40 %', film: '40 µm', coats: '1', handLoss: '15 %' }),
    ],
  }),
  row({
    id: 'PT1',
    what: 'face that a litre covers; wet film, neat and thinned by a tenth',
    input: '55 % solids, 60 µm',
    expected: [9.167, 109.1, 120],
    unit: 'm²/L; µm',
    tolerance: 0.05,
    source: SOLIDS,
    known: 'closed form',
    obtain: () => {
      const entries = { solids: '55 %', film: '60 µm' };
      return [
        perLitre(of('rate', entries)),
        of('wetFilm', entries) * 1e6,
        of('wetFilm', { ...entries, thinner: '10 %' }) * 1e6,
      ];
    },
  }),
  row({
    id: 'PT2',
    what: 'face that a gallon covers',
    input: '55 % solids, 2.5 thou',
    expected: [352.9],
    unit: 'ft²/gal',
    tolerance: 0.1,
    source: SOLIDS,
    known: 'closed form',
    obtain: () => [perGallon(of('rate', { solids: '55 %', film: '2.5 thou' }))],
  }),
  row({
    id: 'PT3',
    what: 'paint for two coats',
    input: '24 m², 55 % solids, 60 µm, 15 % lost',
    expected: [6.16],
    unit: 'L',
    tolerance: 0.01,
    source: SOLIDS,
    known: 'closed form',
    obtain: () => [
      1000 * of('volume', { ownArea: '24 m^2', solids: '55 %', film: '60 µm', coats: '2', handLoss: '15 %' }),
    ],
  }),
];
