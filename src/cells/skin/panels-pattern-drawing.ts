/** The panel at full size with all its marks, and its mirror for the other side. */
import { attempt } from '../../boat';
import type { Vec2 } from '../../kernel';
import { centreLine, type Drawing, drawing, label, line, mark, mm, note, type Point } from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import { cutLine, farFaces, flat, marks } from './panels-facts';
import { openingLine } from './panels-opening';
import type { PanelsValues } from './panels-steps';

const MARKS = { layer: 'marks' } as const;

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

/** Port and starboard, both outside up; none where the panel can't be laid flat. */
export function panelPatterns(v: PanelsValues, { hull, say, ask }: Saying): readonly Drawing[] {
  if (!hull) return [];
  const made = attempt(() => ({
    laid: ask(flat),
    frames: ask(marks),
    far: ask(farFaces),
    cut: ask(cutLine),
  }));
  if (isIssue(made)) return [];
  const { laid, frames, far, cut } = made;
  const length = (metres: number) => say(metres, 'length');
  const name = laid.panel.label.charAt(0).toUpperCase() + laid.panel.label.slice(1);
  const hole = openingLine(v);
  const part = laid.panel.name;
  return (['port', 'starboard'] as const).map((side) => {
    // Of starboard the fore end lies to the left.
    const place = ([x, y]: Vec2): Point => [mm(side === 'port' ? x : laid.length - x), mm(y)];
    const draw = (points: readonly Vec2[]) => points.map(place);
    const ordinates = Array.from({ length: Math.floor(laid.length / v.every) + 1 }, (_, i) => i * v.every);
    return drawing({
      title: `${name}: ${side}, outside up`,
      says: `Full size, ${length(laid.length)} along the straight edge; saw to the whole line, ${length(v.leftOn)} outside the dashed one.`,
      shapes: [
        line(draw(cut), { pen: 'outline', closed: true, part, layer: 'saw' }),
        line(draw(laid.outline), { pen: 'hidden', closed: true, part, layer: 'panel' }),
        hole.length > 0 ? line(draw(hole), { pen: 'outline', closed: true, layer: 'cut-out' }) : [],
        centreLine(place([0, 0]), place([laid.length, 0]), MARKS),
        ...ordinates.flatMap((x) => [
          line(
            draw([
              [x, 0],
              [x, laid.width],
            ]),
            { pen: 'grid', layer: 'ordinates' },
          ),
          label(place([x, 0]), length(x), { toward: 's', layer: 'ordinates' }),
        ]),
        ...frames.map(({ line: across, station }) =>
          line(draw(across), { pen: 'visible', part: station.name, layer: 'frames' }),
        ),
        ...far.flatMap((across) =>
          across.length > 0 ? [line(draw(across), { pen: 'ghost', layer: 'frames, other face' })] : [],
        ),
        ...frames.flatMap(({ inner, outer, station }) => [
          mark(place(inner.at), MARKS),
          mark(place(outer.at), MARKS),
          label(place(outer.at), `${station.label}: ${length(outer.along)} along this edge`, { toward: 'n' }),
          label(place(inner.at), `${station.label}: ${length(inner.along)} along this edge`, { toward: 's' }),
        ]),
        note(`${name}, ${side}, outside up. Face grain ${v.grain}.`),
        note(`Below: the ${laid.panel.inner.label}, ${v.lowerJob}.`),
        note(`Above: the ${laid.panel.outer.label}, ${v.upperJob}.`),
        note('Whole frame lines: the face on the station line. Short dashes: the other face.'),
      ],
    });
  });
}
