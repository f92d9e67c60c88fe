/**
 * What two lengths taped from one point to two marks tell, as functions for formulas: the mark on the jig's
 * centreline and a frame's sheer marks, or the stem's mark and the transom's corners.
 */
import { apexOver, levelPart } from '../../kernel/triangle';
import type { CellFunction } from '../form/define';

export const TWO_LENGTHS = {
  towardPort: {
    takes: ['length', 'length', 'length'],
    gives: 'length',
    how: 'where the lengths to the port and to the starboard mark meet: along the line between the marks, from its middle, + to port: (starboard² − port²) / (2 × distance between the marks)',
    run: (toPort: number, toStarboard: number, apart: number) => apexOver(toPort, toStarboard, apart).along,
  },
  squareOff: {
    takes: ['length', 'length', 'length'],
    gives: 'length',
    how: 'where the lengths to the port and to the starboard mark meet: square off the line between the marks, by Pythagoras',
    run: (toPort: number, toStarboard: number, apart: number) => apexOver(toPort, toStarboard, apart).off,
  },
  levelPart: {
    takes: ['length', 'length'],
    gives: 'length',
    how: 'the level part of a slanting length, from its rise, by Pythagoras',
    run: levelPart,
  },
} as const satisfies Readonly<Record<string, CellFunction>>;
