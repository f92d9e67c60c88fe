/** The sheet on its curve, seen on edge, beside the tightest that the tables let it bend. */
import { type Drawing, drawing, hatch, label, line, mm, note, type Point } from '../../drawing';
import type { OnHand } from '../form/define';

interface Bent {
  readonly bendsTo: number;
  readonly common: number;
  readonly picked: number;
  readonly plyThickness: number;
}

/** Half the length of what is drawn, as an angle of the tightest of the three. */
const WIDEST = 1.1;
/** Straight pieces of a curve. */
const POINTS = 48;

export function plyBendView(v: Bent, { say }: Pick<OnHand, 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  // As long a piece of each, from the middle to both sides, so that they can be compared.
  const half = WIDEST * mm(Math.min(v.bendsTo, v.common, v.picked));
  const curve = (radius: number, inside = 0): Point[] =>
    Array.from({ length: POINTS + 1 }, (_, i) => {
      const turn = (half / radius) * ((2 * i) / POINTS - 1);
      return [(radius - inside) * Math.sin(turn), (radius - inside) * Math.cos(turn) - radius];
    });
  const [bent, common, picked] = [mm(v.bendsTo), mm(v.common), mm(v.picked)];
  const thick = Math.max(mm(v.plyThickness), half / 60);
  const end = (points: readonly Point[], side: 'left' | 'right'): Point =>
    (side === 'left' ? points[0] : points.at(-1))!; // a curve has points
  return drawing({
    title: 'The sheet on its curve, on edge',
    says: `The sheet is bent to ${length(v.bendsTo)}; a common panel bends to ${length(v.common)} at the tightest, a picked one to ${length(v.picked)}.`,
    shapes: [
      hatch([...curve(bent), ...curve(bent, thick).toReversed()], 'ply'),
      line(curve(common), { pen: 'hidden' }),
      line(curve(picked), { pen: 'hidden' }),
      label(end(curve(bent), 'left'), `R ${length(v.bendsTo)}`, { toward: 'w' }),
      label(end(curve(common), 'right'), `common panel, R ${length(v.common)}`, { toward: 'se' }),
      label(end(curve(picked), 'left'), `picked panel, R ${length(v.picked)}`, { toward: 'sw' }),
      note('Dashed: the same length at the tightest.'),
      ...(thick > mm(v.plyThickness) ? [note('The sheet is drawn thicker than it is.')] : []),
    ],
  });
}
