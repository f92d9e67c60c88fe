/** The free end of a board drawn in: by the theory of gentle slopes, and by the elastica that holds for any. */
import { elasticaOf } from '../../../kernel';
import { type CellFunction, input, type Source, step } from '../../form/define';

const GENTLE = 'beam theory for gentle slopes: F = 3 EI d / L^3';
const ELASTICA =
  'K. E. Bisshopp and D. C. Drucker, Quarterly of Applied Mathematics 3 (1945): large deflection of cantilever beams; from memory';

export const pullInputs = {
  loose: input('length', 'Free end, past the last frame', {
    from: '{self}.bay',
    preset: '600 mm',
    min: '20 mm',
    max: '20 m',
    step: '50 mm',
    note: 'along the board, from where it is held fast to where you pull',
  }),
  standOff: input('length', 'The end stands off by', {
    from: '{self}.curveOff',
    preset: '100 mm',
    min: '0 mm',
    max: '20 m',
    step: '10 mm',
    note: 'from where it has to come to, square to the board at the last frame held',
  }),
};

export const pullSteps = {
  curveOff: step(
    'length',
    'radius * (1 - cos(min(loose / radius, 1.5) * rad))',
    'how far a straight free end stands off a circle of this radius',
    'geometry; a curve that goes on for more than 1.5 radii is cut off there',
  ),
  drawnIn: step(
    'length',
    'min(standOff, 0.9 * loose)',
    'how far the end is drawn in, at most nine tenths of its length',
    'geometry: no end comes in by more than its length',
  ),
  gentlePull: step(
    'force',
    '3 * modulusNow * secondMoment * drawnIn / loose^3',
    'pull at the end that draws it in, for gentle slopes',
    GENTLE,
  ),
  endPull: step(
    'force',
    'loadOfElastica(drawnIn / loose) * modulusNow * secondMoment / loose^2',
    'the same pull, however steep the end runs',
    ELASTICA,
  ),
  amiss: step(
    'share',
    'drawnIn > 0 ? endPull / gentlePull - 1 : 0',
    'by how much the pull is more than gentle slopes have it',
    ELASTICA,
  ),
  endReach: step(
    'length',
    'loose * reachOfElastica(drawnIn / loose)',
    'how far out the end then stands, along the board at the last frame held',
    ELASTICA,
  ),
  rootShare: step(
    'share',
    'endPull * endReach * thickness / (2 * secondMoment) / ruptureNow',
    'share of breaking at the last frame held, while the end is drawn in',
    'statics: pull times reach is the moment there',
  ),
};

export const pullFunctions: Readonly<Record<'loadOfElastica' | 'reachOfElastica', CellFunction>> = {
  loadOfElastica: {
    takes: ['ratio'],
    gives: 'ratio',
    how: 'F L² / EI of a board held fast at one end and drawn over at the other by so much of its length, however steep it runs',
    run: (offset) => elasticaOf(offset).load,
  },
  reachOfElastica: {
    takes: ['ratio'],
    gives: 'ratio',
    how: 'how far out its end then stands, over its length',
    run: (offset) => elasticaOf(offset).reach,
  },
};

export const pullSources: readonly Source[] = [
  {
    text: 'K. E. Bisshopp and D. C. Drucker, Quarterly of Applied Mathematics 3 (1945): large deflection of cantilever beams, 272-275',
    known: 'from memory',
  },
];
