/** Sanding: grades of paper as tables print them, dust in the air of a room, clearing it, and the mask. */
import { sand } from '../../src/cells/finish/sand';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const of = (key: string, entries: Record<string, string>) => tryCell(sand, entries).number(key);
/** One grit, a kilogram off a cubic decimetre, all of it in the air: so much dust an hour as is typed. */
const dusty = (gramsPerHour: number, entries: Record<string, string> = {}) => ({
  work: 'key',
  area: `${gramsPerHour} m^2`,
  takenOff: '1 µm',
  density: '1000 kg/m^3',
  escapes: '100 %',
  lasts: '1 h',
  ...entries,
});
const GRADES = 'tables of grades of a finishing supplier and of a site on measures';

const row = (more: Omit<Check, 'cell'>): Check => ({ cell: 'sand', ...more });
const purge = (id: string, changes: string, expected: number): Check =>
  row({
    id,
    what: 'time until a hundredth of what is in the air is left',
    input: `${changes} changes an hour`,
    expected: [expected],
    unit: 'min',
    tolerance: 0.45,
    source: 'MMWR, 28 October 1994, table S3-1, in whole minutes',
    known: 'published',
    rough: { noticed: 0.025, finer: 'C73a' },
    obtain: () => [of('clears', { changes }) / 60],
  });

export const rows: readonly Check[] = [
  purge('C73', '6', 46),
  purge('C74', '12', 23),
  row({
    id: 'C73a',
    what: 'time until a hundredth of what is in the air is left',
    input: '6 changes an hour',
    expected: [46.05],
    unit: 'min',
    tolerance: 0.01,
    source: '60 ln 100 / 6',
    known: 'closed form',
    obtain: () => [of('clears', { changes: '6' }) / 60],
  }),
  row({
    id: 'C77',
    what: 'dust in the air of a room',
    input: '10 g an hour into 60 m³, changed 6 times an hour',
    expected: [27.8],
    unit: 'mg/m³',
    tolerance: 0.1,
    source: 'steady source in a room whose air is changed: 10 / (6 × 60) g/m³',
    known: 'closed form',
    obtain: () => {
      const entries = dusty(10, { room: '60 m^3', changes: '6' });
      return [of('over', entries) * of('limit', entries) * 1e6];
    },
  }),
  row({
    id: 'C82',
    what: 'by how many times a mask has to thin the dust: 45 mg/m³ where 5 are allowed',
    input: '27 g an hour into 60 m³, changed 10 times an hour',
    expected: [9],
    unit: '',
    tolerance: 0.01,
    source: 'a safety dealer’s example: 45 over 5, so above 9',
    known: 'published',
    obtain: () => [of('over', dusty(27, { room: '60 m^3', changes: '10' }))],
  }),
  row({
    id: 'C77a',
    what: 'grains of papers marked P60, P80, P120, P150, P220, P320',
    input: 'FEPA',
    expected: [269, 201, 125, 100, 68, 46],
    unit: 'µm',
    tolerance: 0.1,
    source: GRADES,
    known: 'published',
    obtain: () =>
      ['60', '80', '120', '150', '220', '320'].map((grit) => of('grain', { grit, marked: 'fepa' }) * 1e6),
  }),
  row({
    id: 'C77b',
    what: 'grains of papers with the plain number: 240, 320 and 400 are as P280, P400 and finer than P400',
    input: 'CAMI',
    expected: [52, 35, 22],
    unit: 'µm',
    tolerance: 0.1,
    source: GRADES,
    known: 'published',
    obtain: () => ['240', '320', '400'].map((grit) => of('grain', { grit, marked: 'cami' }) * 1e6),
  }),
];
