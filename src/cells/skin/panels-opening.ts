/** The cut-out of a panel, and what it leaves. */
import { ordinateAt } from '../../boat/hull/ordinates';
import { distanceToSide, type Vec2 } from '../../kernel';
import { fact } from '../form/fact';
import { farFaces, flat, marks, type PanelsAsked } from './panels-facts';
import { GEOMETRY } from '../../trade/sources';

/** Steps round each end. */
const STEPS = 24;

type OpeningAsked = Pick<PanelsAsked, 'opening' | 'openingAt' | 'openingUp' | 'openingLong' | 'openingWide'>;

/** Its outline on the flat panel, m; none where there is no cut-out. A slot shorter than it is wide is a hole. */
export function openingLine(v: OpeningAsked): readonly Vec2[] {
  if (v.opening === 'none') return [];
  const radius = v.openingWide / 2;
  const reach = v.opening === 'hole' ? 0 : Math.max(0, v.openingLong / 2 - radius);
  return Array.from({ length: 2 * STEPS + 2 }, (_, i): Vec2 => {
    const end = i <= STEPS ? 1 : -1;
    const angle = ((i <= STEPS ? i : i - 1) / STEPS) * Math.PI - Math.PI / 2;
    return [v.openingAt + end * reach + radius * Math.cos(angle), v.openingUp + radius * Math.sin(angle)];
  });
}

type FitAsked = OpeningAsked & Pick<PanelsAsked, 'panel' | 'siding' | 'stands'>;

/** What is left round it, m, below zero where it runs over the edge; and how many frames it crosses. */
export const openingFit = fact(
  'the cut-out’s outline against the panel’s, and against both faces of each frame',
  GEOMETRY,
  (asked: FitAsked, { ask }) => {
    const { outline, width } = ask(flat);
    const line = openingLine(asked);
    const wood = line.map((at) => {
      const over = ordinateAt(outline, at[0]);
      const inside = over !== null && at[1] > over.lower && at[1] < over.upper;
      const nearest = Math.min(
        ...outline.map((from, i) => distanceToSide(from, outline[(i + 1) % outline.length]!, at)),
      );
      return inside ? nearest : -nearest;
    });
    const crossed = ask(marks).filter((mark, i) => {
      const faces = [mark.line, ask(farFaces)[i]!]; // a face a frame
      const sides = line.map((at) => Math.sign(at[0] - acrossAt(faces[0]!, at[1])));
      const farSides = line.map((at) => Math.sign(at[0] - acrossAt(faces[1]!, at[1])));
      return new Set([...sides, ...(faces[1]!.length > 0 ? farSides : [])]).size > 1;
    });
    return { wood: line.length === 0 ? width : Math.min(...wood), frames: crossed.length };
  },
);

/** Where a frame's line stands at a height over the straight edge; straight on beyond its ends. */
function acrossAt(line: readonly Vec2[], up: number): number {
  const after = line.findIndex(([, y]) => y >= up);
  const i = after < 0 ? line.length - 1 : Math.max(1, after);
  const [from, to] = [line[i - 1], line[i]];
  if (!from || !to || to[1] === from[1]) return from?.[0] ?? 0;
  return from[0] + ((up - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
}
