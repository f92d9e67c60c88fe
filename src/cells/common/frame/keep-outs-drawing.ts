/** The places of a frame that are kept free of screws, as thin dashed lines on a layer of their own. */
import type { FrameOutline } from '../../../boat/joinery/frame-outline';
import type { KeepOut } from '../../../boat/joinery/keep-outs';
import { line, mm, type Point, type Shape } from '../../../drawing';
import { common, type Vec2, widened } from '../../../kernel';

export const KEEP_OUT = { layer: 'keep screws out' } as const;

const onPaper = ([y, z]: Vec2): Point => [mm(y), mm(z)];

/** As much of each as lies in the wood; of a bevel the line that screws stay inside of. A limber lies in its slot. */
export function keepOutLines(keepOuts: readonly KeepOut[], { members }: FrameOutline): Shape[] {
  return keepOuts.flatMap(({ cut, at, outline, depth, clearance }): Shape[] => {
    if (cut === 'limber') return [];
    if (cut === 'planed') {
      const { inner, outer, inward } = members.find(({ panel }) => panel.name === at)!; // a member is planed
      const moved = [inner, outer].map(([y, z]): Vec2 => [
        y + (depth + clearance) * inward[0],
        z + (depth + clearance) * inward[1],
      ]);
      return [line(moved.map(onPaper), { pen: 'hidden', ...KEEP_OUT })];
    }
    const wide = widened(outline, clearance);
    return members
      .map((member) => common(wide, member.outline))
      .filter((inWood) => inWood.length > 0)
      .map((inWood) => line(inWood.map(onPaper), { pen: 'hidden', closed: true, ...KEEP_OUT }));
  });
}
