/**
 * Shapes, and where they keep each other off: worked out once for all packings of a search, which lays the same pieces
 * again and again.
 */
import { makeNoFits, type NoFits } from './no-fit';
import { makeShapes, type Shapes } from './shapes';

export interface Templates {
  readonly shapes: Shapes;
  readonly noFit: NoFits;
}

export const makeTemplates = (): Templates => ({ shapes: makeShapes(), noFit: makeNoFits() });
