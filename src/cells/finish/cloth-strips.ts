/** Strips of cloth over joints and round corners: where they lie, and how they are cut, with the thread or on the bias. */
import { type Hull, isPost, type Panel, type Station } from '../../boat';
import { endLength } from '../../boat/hull/flat-face';
import type { Vec2 } from '../../kernel';
import { biasStrips } from '../../kernel/on-roll';
import type { ClothPiece, ClothRules } from './cloth-rules';

/** A strip over a seam or a joint. */
export interface ClothStrip {
  readonly name: string;
  readonly part: string;
  readonly length: number;
  readonly count: number;
  /** Round a corner, where a cut on the bias serves. */
  readonly corner: boolean;
}

/** Over the joints of the panels and the corners of the transoms; if asked, along chines, keel and stem too. */
export function stripsOn(
  hull: Hull,
  { strips, sideJoints, sideJointLong, bottomJoints, bottomJointLong }: ClothRules,
): readonly ClothStrip[] {
  if (strips === 'none') return [];
  const joint = (panel: Panel, length: number) => ({
    name: `${panel.label} joint`,
    part: panel.name,
    length,
    count: 2,
    corner: false,
  });
  const [bottom, side] = [hull.panels[0]!, hull.panels.at(-1)!]; // every hull has a panel
  const joints = [
    ...Array.from({ length: sideJoints }, () => joint(side, sideJointLong)),
    ...(strips === 'joints'
      ? []
      : Array.from({ length: bottomJoints }, () => joint(bottom, bottomJointLong))),
  ];
  const ends = [hull.aft, hull.fore];
  const corners = ends.filter(({ role }) => !isPost(role)).flatMap((end) => cornersOf(hull.panels, end));
  const along: ClothStrip[] = [
    ...hull.edges.slice(1, -1).map(({ label, name, length }) => ({
      name: label,
      part: name,
      length,
      count: 2,
      corner: true,
    })),
    { name: 'keel', part: 'keelson', length: hull.edges[0]!.length, count: 1, corner: true },
    ...ends
      .filter(({ role }) => isPost(role))
      .map(({ label, corners: line }) => ({
        name: label,
        part: 'stem',
        length: Math.hypot(...line[0]!.map((value, axis) => line.at(-1)![axis]! - value)),
        count: 1,
        corner: true,
      })),
  ];
  return [...joints, ...corners, ...(strips === 'all' ? along : [])].filter(({ length }) => length > 1e-6);
}

const cornersOf = (panels: readonly Panel[], end: Station): ClothStrip[] =>
  panels.map((panel) => ({
    name: `${panel.label} to ${end.label}`,
    part: end.role === 'transom' ? 'transom' : 'bowTransom',
    length: endLength(panel, end),
    count: 2,
    corner: true,
  }));

export function stripPieces(
  strips: readonly ClothStrip[],
  { stripWidth, stripCut, width, lap }: ClothRules,
): ClothPiece[] {
  return strips.flatMap(({ name, part, length, count, corner }): ClothPiece[] => {
    const piece = {
      name,
      part,
      kind: 'strip' as const,
      side: 'both' as const,
      run: { index: 0, count: 1, across: false },
      layer: 1,
      laid: length * stripWidth,
      marks: [],
    };
    if (!corner || stripCut === 'straight') {
      const outline: Vec2[] = [
        [0, 0],
        [length, 0],
        [length, stripWidth],
        [0, stripWidth],
      ];
      const one: ClothPiece = { ...piece, long: length, wide: stripWidth, outline, bias: 0 };
      return Array.from({ length: count }, () => one);
    }
    // A block so wide that the strips cut across it at 45 degrees are long enough; over the whole roll they are joined.
    const whole = biasStrips(width, stripWidth, 0).each;
    const each = Math.min(length, whole);
    const number = count * (length <= whole ? 1 : Math.ceil((length - lap) / (whole - lap) - 1e-9));
    const wide = each / Math.SQRT2;
    const { roll } = biasStrips(wide, stripWidth, number);
    const step = stripWidth * Math.SQRT2;
    const outline: Vec2[] = [
      [0, 0],
      [number * step, 0],
      [number * step + wide, wide],
      [wide, wide],
    ];
    return [{ ...piece, laid: count * piece.laid, long: roll, wide, outline, bias: number }];
  });
}
