/** What the transom’s cell knows of it: its shape inside the skin. */
import { breadthAt } from '../../boat/hull/breadth';
import { letOut, transomShape } from '../../boat/hull/transom-shape';
import { type SkinAsked, skinOver } from '../common/frame/frame-facts';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

export interface TransomAsked extends SkinAsked {
  readonly end: 'transom' | 'bowTransom';
  readonly face: 'outer' | 'inner';
}

/** No value where the boat has no such transom. */
export const shape = fact(
  'the planes of the skin moved in by their thickness and cut with the plane of the transom',
  GEOMETRY,
  (asked: TransomAsked, { hull }) =>
    transomShape(
      hull,
      asked.end === 'bowTransom' ? 'bow transom' : 'transom',
      (panel) => skinOver(asked, panel),
      asked.face,
    ),
);

/** The corner looked at: inside the skin, and above the outside of the bottom, plumb. */
export const corner = fact(
  shape.how,
  GEOMETRY,
  ({ corner: edge }: TransomAsked & { readonly corner: string }, { hull, ask }) => {
    const { heights, foot, inside } = ask(shape);
    const { index } = hull.edge(edge);
    return { rise: heights[index]! - foot, halfBreadth: inside[index]![0] }; // one of each an edge
  },
);

/** Corners of the larger of the two faces. */
export const largerFace = fact(
  'the larger of the two faces, bevels still on it',
  GEOMETRY,
  ({ thickness }: TransomAsked & { readonly thickness: number }, { ask }) => letOut(ask(shape), thickness),
);

export const halfAtCut = fact(
  'half-breadth inside the skin at the bottom of the cut-out',
  GEOMETRY,
  ({ alongFace }: TransomAsked & { readonly alongFace: number }, { ask }) => {
    const { inside } = ask(shape);
    const ups = inside.map(([, up]) => up);
    return breadthAt(inside, Math.min(Math.max(alongFace, Math.min(...ups)), ups.at(-1)!)) ?? 0;
  },
);
