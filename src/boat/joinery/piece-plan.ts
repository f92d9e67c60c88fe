/**
 * The plan of pieces: of what boards every long timber is laid, where its joints fall, and what section is bought for
 * it. Settled here once; *joints* shows and changes it, *scarf* counts by it, *boards* cuts it.
 */
import { laidPieces } from '../../kernel/laid-boards';
import { type BestJoints, bestJoints } from './best-joints';
import type { Edge } from '../hull/edge';
import type { Hull } from '../hull/hull';
import { type FirstBoards, type JointRules, timberOf } from './joint-layout';
import { laidBoard } from './laid-board';
import { type LongPart, longParts } from './long-parts';

/** The edges that a part lies along; a hull without a chine has no chine logs. */
export function edgesOf({ edges }: Hull, part: LongPart): readonly Edge[] {
  if (part === 'keelson') return edges.slice(0, 1);
  return part === 'chineLog' ? edges.slice(1, -1) : edges.slice(-1);
}

/** As asked of a part that the hull lacks: along the sheer. */
const edgesAsked = (hull: Hull, part: LongPart) => {
  const own = edgesOf(hull, part);
  return own.length > 0 ? own : hull.edges.slice(-1);
};

export interface TimberPiece {
  readonly part: LongPart;
  /** `chine log, port, 1 of 2`. */
  readonly name: string;
  /** Tapers, and what is left for trimming, included, m. */
  readonly length: number;
  /** Which ends are tapered. */
  readonly scarfed: { readonly aft: boolean; readonly fore: boolean };
}

/** How the boards of a part are laid; lengths in m. */
export interface LaidAs {
  readonly board: number;
  readonly taper: number;
  readonly trim: number;
  readonly first: FirstBoards;
}

/**
 * The pieces of each timber of a part, the timbers from the keel outward, port before starboard, pieces from aft.
 *
 * @throws a sentence where a board is no longer than its taper
 */
export function timberPieces(hull: Hull, part: LongPart, as: LaidAs): readonly (readonly TimberPiece[])[] {
  const edges = edgesOf(hull, part);
  const { label } = longParts.find(({ id }) => id === part)!; // ids of the list itself
  return edges.flatMap((edge) => {
    const sides = edge.index === 0 ? ([''] as const) : (['port', 'starboard'] as const);
    return sides.map((side) => {
      const first = Math.min(side === 'starboard' ? as.first.starboard : as.first.port, as.board);
      const pieces = laidPieces(edge.length + as.trim, as.board, as.taper, first);
      const timber = [edges.length > 1 ? `${label} on the ${edge.label}` : label, side];
      return pieces.map(({ from, to }, i): TimberPiece => {
        const which = pieces.length > 1 ? `${i + 1} of ${pieces.length}` : '';
        return {
          part,
          name: [...timber, which].filter((word) => word !== '').join(', '),
          length: to - from,
          scarfed: { aft: i > 0, fore: i < pieces.length - 1 },
        };
      });
    });
  });
}

/** More than these are forgotten: a slider leaves some behind at every step. */
const MOST_KEPT = 256;
const known = new Map<string, BestJoints>();

/** Edges are shared by the hulls in which they have not moved, and told apart by a number. */
const edgeNumbers = new WeakMap<Edge, number>();
let edgesSeen = 0;
function numberOf(edge: Edge): number {
  const number = edgeNumbers.get(edge) ?? (edgesSeen += 1);
  edgeNumbers.set(edge, number);
  return number;
}

/**
 * The best first boards of a part, all its timbers alike. They turn on its own edges, where the frames cross these, and
 * the rules, so that an offset of another edge leaves them as they are.
 *
 * @throws a sentence where no board can be laid
 */
export function bestOfPart(hull: Hull, part: LongPart, rules: JointRules, more: number): BestJoints {
  const timbers = edgesAsked(hull, part).map((edge) => timberOf(hull, edge, rules));
  const along = timbers.map(({ edge, frames }) => [
    numberOf(edge),
    ...frames.flatMap(({ from, to }) => [from, to]),
  ]);
  const key = JSON.stringify([along, rules, more]);
  const best = known.get(key) ?? bestJoints(timbers, more);
  if (known.size >= MOST_KEPT) known.clear();
  known.set(key, best);
  return best;
}

/**
 * Of the lengths sold, the one to lay a part in: by it the fewest rules are broken; then it makes the fewest pieces;
 * then it is the shortest.
 *
 * @throws a sentence where no length is sold, or none can be laid
 */
export function boardFor(
  hull: Hull,
  part: LongPart,
  rules: Omit<JointRules, 'board'>,
  { more, sold }: { readonly more: number; readonly sold: readonly number[] },
): number {
  const lengths = sold.filter((length) => length > 0);
  if (lengths.length === 0) throw new Error('give the length of at least one board that is sold');
  const longEnough = lengths.filter((length) => length > rules.slope * rules.thickness);
  if (longEnough.length === 0)
    throw new Error('the taper of a scarf is as long as the longest board sold: find a longer one');
  const edges = edgesAsked(hull, part);
  const inOrder = longEnough
    .map((board): Tried => ({ board, broken: 0, pieces: fewestPieces(edges, { ...rules, board }) }))
    .toSorted(byRules);
  let best: Tried | null = null;
  for (const atBest of inOrder) {
    // No rule broken in the fewest pieces that reach: this one comes to no better, and those after it neither.
    if (best && byRules(best, atBest) <= 0) break;
    const { board } = atBest;
    const { broken, pieces } = bestOfPart(hull, part, { ...rules, board }, more);
    if (!best || byRules({ board, broken, pieces }, best) < 0) best = { board, broken, pieces };
  }
  return best!.board; // one or more
}

/** A length of boards, and what a part laid in it comes to. */
interface Tried {
  readonly board: number;
  readonly broken: number;
  readonly pieces: number;
}

const byRules = (a: Tried, b: Tried) => a.broken - b.broken || a.pieces - b.pieces || a.board - b.board;

/** As many pieces as a part takes where every board is whole but the last. */
function fewestPieces(edges: readonly Edge[], { board, slope, thickness, trim }: JointRules): number {
  const perSide = edges.map((edge) => ({
    sides: edge.index > 0 ? 2 : 1,
    pieces: laidPieces(edge.length + trim, board, slope * thickness, board).length,
  }));
  return perSide.reduce((sum, { sides, pieces }) => sum + sides * pieces, 0);
}

/** What bends a timber edgewise, and of what wood it is; SI. */
export interface EdgewiseRules extends LaidAs {
  readonly thickness: number;
  readonly width: number;
  readonly modulus: number;
  readonly rupture: number;
  readonly allowed: number;
}

/** Stretch at the corner of a section that is bent through its face and edgewise at once: the greatest along an edge. */
export function cornerStrain(
  hull: Hull,
  edge: string,
  { thickness, width }: { readonly thickness: number; readonly width: number },
): number {
  const strains = laidBoard(hull, edge).places.map(
    ({ bend }) => (Math.abs(bend.flat) * thickness + Math.abs(bend.edgewise) * width) / 2,
  );
  return Math.max(...strains);
}

/**
 * Width of the board to buy for a part, m: its own where it may be sprung edgewise together with its bend, else as much
 * more as its pieces are hollow or round on their face, and are cut to.
 */
export function widthToBuy(hull: Hull, part: LongPart, rules: EdgewiseRules): number {
  const spares = edgesAsked(hull, part).map((edge) => {
    if ((rules.modulus / rules.rupture) * cornerStrain(hull, edge.name, rules) <= rules.allowed) return 0;
    return Math.max(
      ...[rules.first.port, ...(edge.index === 0 ? [] : [rules.first.starboard])].flatMap((first) =>
        laidPieces(edge.length + rules.trim, rules.board, rules.taper, Math.min(first, rules.board)).map(
          ({ from, to }) =>
            laidBoard(hull, edge.name).spareFor({ from: from - rules.trim / 2, to: to - rules.trim / 2 }),
        ),
      ),
    );
  });
  return rules.width + Math.max(...spares);
}
