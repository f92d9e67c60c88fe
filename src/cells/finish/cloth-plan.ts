/** The cloth planned: which pieces cover the boat or a flat face, in the order of laying, and how they lie on the roll. */
import { endWith, type Hull } from '../../boat';
import {
  type Dart,
  type FlatFace,
  panelFace,
  rectangleFace,
  type SideKind,
  sidesOf,
  transomFace,
  wholeBottom,
} from '../../boat/hull/flat-face';
import { onceEach } from '../../boat/once';
import type { Vec2 } from '../../kernel';
import { layOnRoll, leastOfRoll } from '../../kernel/on-roll';
import { boxRound, drawnOut, outlineArea, withinBand } from '../../kernel/outline';
import type { ClothPiece, ClothRules } from './cloth-rules';
import { leastApart, runsOfLayer, seamsOf } from './cloth-runs';
import { type ClothStrip, stripPieces, stripsOn } from './cloth-strips';

/** What a face is called that belongs to no boat. */
export const FLAT_FACE = 'flat face';

/** A seam between two runs on one face, for the picture. */
export interface Seam {
  readonly face: CoveredFace;
  readonly axis: 0 | 1;
  readonly at: number;
}

/** A face under cloth. */
export interface CoveredFace {
  readonly name: string;
  readonly part: string;
  readonly face: FlatFace;
  /** How often it is there: port and starboard. */
  readonly sides: 1 | 2;
  readonly layers: number;
}

export interface ClothPlan {
  readonly pieces: readonly ClothPiece[];
  readonly places: readonly { readonly along: number; readonly across: number }[];
  /** Of the roll that they take, m. */
  readonly cut: number;
  /** No way of laying them takes less of it, m. */
  readonly least: number;
  readonly faces: readonly CoveredFace[];
  readonly seams: readonly Seam[];
  /** Least distance between a seam and one of the layer under it, m; null where no two layers have seams. */
  readonly seamsApart: number | null;
  /** Of the bottom in one piece; null where it is not. */
  readonly dart: Dart | null;
  readonly stripLength: number;
  /** Whether the bottom's runs go across the boat. */
  readonly across: boolean;
}

/** The way of which least is to be bought, of two alike the one of fewer seams; or the way that is asked for. */
export function planCloth(rules: ClothRules, hull: () => Hull): ClothPlan {
  if (rules.over === 'flat') {
    const face: CoveredFace = {
      name: FLAT_FACE,
      part: 'side',
      face: rectangleFace(rules.flatLength, rules.flatWidth),
      sides: 1,
      layers: rules.layers,
    };
    return best(rules, (across) => laidOut(rules, [{ ...runsOver(face, rules, across) }], [], null, across));
  }
  const boat = hull();
  const strips = stripsOn(boat, rules);
  const facesOf = facesUnder(boat, rules);
  // Only the bottom's runs go the other way.
  const runsAlong = onceEach((face: CoveredFace) => runsOver(face, rules, false));
  return best(rules, (across) => {
    const { faces, dart } = facesOf(across);
    const runs = faces.map((face) =>
      across && face.part === 'bottom' ? runsOver(face, rules, true) : runsAlong(face),
    );
    return laidOut(rules, runs, strips, dart, across);
  });
}

function best(rules: ClothRules, plan: (across: boolean) => ClothPlan): ClothPlan {
  if (rules.runs !== 'least') return plan(rules.runs === 'across');
  const [along, across] = [plan(false), plan(true)];
  const saved = lengthToBuy(along.cut, rules) - lengthToBuy(across.cut, rules);
  const isSame = Math.abs(saved) < 1e-6;
  return (isSame ? along.seams.length <= across.seams.length : saved < 0) ? along : across;
}

/** The plan and what is bought beyond it, rounded up to what the shop cuts, m. */
export const lengthToBuy = (cut: number, { beyond, soldBy }: Pick<ClothRules, 'beyond' | 'soldBy'>): number =>
  Math.max(0, Math.ceil((cut * (1 + beyond)) / soldBy - 1e-6)) * soldBy;

interface Faces {
  readonly faces: readonly CoveredFace[];
  readonly dart: Dart | null;
}

/** Transoms first, then from the sides inward: what works hardest lies on top. With the bottom's runs along or across. */
function facesUnder(
  hull: Hull,
  { bottomLayers, sideLayers, slack, width, turn, further }: ClothRules,
): (across: boolean) => Faces {
  const transoms = (['transom', 'bow transom'] as const).flatMap((role): CoveredFace[] => {
    const end = endWith(hull, role);
    const part = role === 'transom' ? 'transom' : 'bowTransom';
    return end ? [{ name: role, part, face: transomFace(end), sides: 1, layers: sideLayers }] : [];
  });
  const panels = hull.panels.map((panel): CoveredFace => {
    const layers = panel.name === 'bottom' ? bottomLayers : sideLayers;
    return { name: panel.label, part: panel.name, face: panelFace(hull, panel), sides: 2, layers };
  });
  const [bottom, ...others] = panels;
  const covered = (faces: readonly CoveredFace[]) => faces.filter(({ layers }) => layers > 0);
  if (!bottom || bottom.part !== 'bottom' || bottom.layers === 0)
    return () => ({ faces: covered([...transoms, ...panels.toReversed()]), dart: null });
  const { face, dart } = wholeBottom(hull, slack);
  const { low, high } = boxRound(face.outline);
  const widest = high - low + 2 * (turn + (bottom.layers - 1) * further);
  const above = covered([...transoms, ...others.toReversed()]);
  return (across) => {
    // In one piece where it goes from chine to chine without a seam; else each half laps round the keel.
    const isWhole = across || widest <= width;
    const under: CoveredFace = isWhole ? { ...bottom, face, sides: 1 } : bottom;
    return { faces: [...above, under], dart: isWhole ? dart : null };
  };
}

interface Runs {
  readonly covered: CoveredFace;
  readonly pieces: readonly ClothPiece[];
  readonly seams: readonly Seam[];
  readonly seamsApart: number | null;
}

/** One layer of a face. */
interface LayerRuns {
  readonly pieces: readonly ClothPiece[];
  /** Across the runs, in the face's own measure, m. */
  readonly seams: readonly number[];
}

/** A face cut into runs, layer by layer; each layer reaches further round the corners than the one under it. */
function runsOver(covered: CoveredFace, rules: ClothRules, across: boolean): Runs {
  const layers = Array.from({ length: covered.layers }, (_, i) => layerOver(covered, rules, across, i));
  return {
    covered,
    pieces: layers.flatMap(({ pieces }) => pieces),
    seams: (layers[0]?.seams ?? []).map((at) => ({ face: covered, axis: across ? 0 : 1, at })),
    seamsApart: leastApart(layers.map(({ seams }) => seams)),
  };
}

function layerOver(covered: CoveredFace, rules: ClothRules, across: boolean, layer: number): LayerRuns {
  const { lap, trim, turn, further } = rules;
  const { face, part, sides } = covered;
  const round = turn + layer * further;
  const isTop = part === 'side' && rules.over === 'hull';
  const out: Record<SideKind, number> = {
    inner: round,
    outer: isTop ? 0 : round,
    aft: round,
    fore: round,
    open: 0,
  };
  const upright = (point: Vec2): Vec2 => (across ? [-point[1], point[0]] : point);
  const grown = drawnOut(sidesOf(face, out)).map(upright);
  const { low, high } = boxRound(grown);
  const runs = runsOfLayer(high - low, rules, layer).map(({ from, wide }) => ({ from: low + from, wide }));
  const count = runs.length;
  const names = sides === 2 ? (['port', 'starboard'] as const) : ([''] as const);
  const pieces = names.flatMap((side) =>
    runs.flatMap(({ from, wide }, i): ClothPiece[] => {
      const outline = withinBand(grown, from, from + wide);
      if (outline.length < 3) return [];
      const { left, right } = boxRound(outline);
      const own = ([x, y]: Vec2): Vec2 => [x - left + trim, y - from];
      return [
        {
          name: nameOf(covered, side, count > 1 ? i + 1 : 0, layer),
          part,
          kind: 'cloth',
          side: side === '' ? 'both' : side,
          run: { index: i, count, across },
          layer: layer + 1,
          long: right - left + 2 * trim,
          wide,
          laid: outlineArea(outline),
          outline: outline.map(own),
          marks: face.marks.flatMap((mark) => {
            const line = cutToBand([upright(mark.from), upright(mark.to)], from, from + wide);
            return line ? [{ station: mark.station, from: own(line[0]), to: own(line[1]) }] : [];
          }),
          bias: 0,
        },
      ];
    }),
  );
  return { pieces, seams: seamsOf(runs, lap) };
}

function nameOf({ name, layers }: CoveredFace, side: string, run: number, layer: number): string {
  return [
    name,
    ...(side === '' ? [] : [side]),
    ...(run > 0 ? [`run ${run}`] : []),
    ...(layers > 1 ? [`layer ${layer + 1}`] : []),
  ].join(', ');
}

function cutToBand(
  [from, to]: readonly [Vec2, Vec2],
  low: number,
  high: number,
): readonly [Vec2, Vec2] | null {
  const rise = to[1] - from[1];
  const at = (level: number) => (rise === 0 ? 0 : (level - from[1]) / rise);
  const ends = [at(low), at(high)].toSorted((a, b) => a - b);
  const [start, stop] = rise === 0 ? [0, 1] : [Math.max(0, ends[0]!), Math.min(1, ends[1]!)];
  if (start >= stop || (rise === 0 && (from[1] < low || from[1] > high))) return null;
  const point = (share: number): Vec2 => [from[0] + share * (to[0] - from[0]), from[1] + share * rise];
  return [point(start), point(stop)];
}

function laidOut(
  rules: ClothRules,
  runs: readonly Runs[],
  strips: readonly ClothStrip[],
  dart: Dart | null,
  across: boolean,
): ClothPlan {
  const layered = [1, 2, 3, 4].flatMap((layer) =>
    runs.flatMap(({ pieces }) => pieces.filter((piece) => piece.layer === layer)),
  );
  const pieces = [...stripPieces(strips, rules), ...layered];
  const { length, places } = layOnRoll(pieces, rules.width);
  const apart = runs.flatMap(({ seamsApart }) => seamsApart ?? []);
  return {
    pieces,
    places,
    cut: length,
    least: leastOfRoll(pieces, rules.width),
    faces: runs.map(({ covered }) => covered),
    seams: runs.flatMap(({ seams }) => seams),
    seamsApart: apart.length > 0 ? Math.min(...apart) : null,
    dart,
    stripLength: strips.reduce((sum, strip) => sum + strip.length * strip.count, 0),
    across,
  };
}
