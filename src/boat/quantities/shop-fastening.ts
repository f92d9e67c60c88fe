/** How the shop's screws are sold, and how far apart they stand: along long timbers, on the frames, from row to row. */
import type { Declared } from './quantity';
import { inSystem, shop } from './shop-entry';

const PRACTICE = 'common practice, no source';

const pitch = { min: '10 mm', max: '1 m', step: '5 mm' } as const;

export const shopFastening: readonly Declared[] = [
  inSystem('screwsIn', 'Screws sold in', 'system that screws are sold in'),
  shop('screwPitch', 'length', {
    label: 'Screw to screw, at most',
    meaning: 'widest that screws stand apart along long timbers and blocks',
    source: 'with glue 60 to 75 mm (2 1/2 to 3 in) along chine, keelson and stem: common practice',
    preset: '75 mm',
    presetInch: '3 in',
    ...pitch,
  }),
  shop('framePitch', 'length', {
    label: 'On frames, screw to screw',
    meaning: 'widest that screws stand apart where the skin lies on a frame',
    source: 'with glue 100 to 125 mm (4 to 5 in): common practice',
    preset: '125 mm',
    presetInch: '5 in',
    ...pitch,
  }),
  shop('rowGap', 'length', {
    label: 'Screws, row to row',
    meaning: 'distance from one row of screws to the next',
    source: PRACTICE,
    preset: '20 mm',
    presetInch: '3/4 in',
    min: '3 mm',
    max: '200 mm',
    step: '1 mm',
  }),
];
