/** The bottom member with the keelson's slot and its limbers, seen along the boat, in millimetres. */
import { centreLine, dim, type Drawing, drawing, hatch, label, mm, note } from '../../drawing';
import { drilled, slottedFrame, slottedKeelson } from './keelson-slot-drawing';

export interface LimberSeen {
  readonly frame: string;
  readonly keelsonWidth: number;
  readonly limberWidth: number;
  readonly holeDiameter: number;
  readonly holeFromCentre: number;
  readonly holeAboveBottom: number;
  readonly slotWidth: number;
  readonly cutDepth: number;
  readonly depthThere: number;
  readonly deadrise: number;
}

export function limberView(v: LimberSeen, say: (metres: number) => string, drill: string): Drawing {
  const out = mm(v.holeFromCentre);
  const up = mm(v.holeAboveBottom);
  const radius = mm(v.holeDiameter) / 2;
  const slot = mm(v.slotWidth) / 2;
  const depth = mm(v.cutDepth);
  const half = mm(v.keelsonWidth) / 2;
  // A member that is cut through is drawn deeper, or there would be nothing to see.
  const board = Math.max(mm(v.depthThere), depth * 1.15);
  const rise = Math.tan(v.deadrise);
  const reach = slot + Math.max(board * 0.5, slot * 0.4);
  return drawing({
    title: 'Keelson slot and limbers',
    says: `A slot ${say(v.slotWidth)} wide and ${say(v.cutDepth)} deep; hole centres ${say(v.holeFromCentre)} each side of the centreline and ${say(v.holeAboveBottom)} above the bottom; the keelson sits in the middle and leaves ${say(v.limberWidth)} free on each side.`,
    shapes: [
      slottedFrame({ slot, depth, radius, board, reach, rise }, v.frame),
      hatch(slottedKeelson(half, depth, rise), 'cedar', { part: 'keelson' }),
      drilled([out, up], radius, v.frame),
      drilled([-out, up], radius, v.frame),
      centreLine([0, -board * 0.15], [0, board * 1.15]),
      dim([0, up], [out, up], say(v.holeFromCentre), { side: 'above', run: 'horizontal' }),
      dim([out, 0], [out, up], say(v.holeAboveBottom), { side: 'right', run: 'vertical' }),
      dim([-slot, slot * rise], [slot, slot * rise], say(v.slotWidth), {
        side: 'below',
        run: 'horizontal',
        level: 1,
      }),
      dim([-half, half * rise], [half, half * rise], say(v.keelsonWidth), {
        side: 'below',
        run: 'horizontal',
      }),
      dim([-slot, 0], [-slot, depth], say(v.cutDepth), { side: 'left', run: 'vertical' }),
      board > mm(v.depthThere)
        ? []
        : dim([-reach, reach * rise], [-reach, board + reach * rise], say(v.depthThere), {
            side: 'left',
            run: 'vertical',
          }),
      label([half * 0.5, depth * 0.6], 'keelson', { toward: 's' }),
      label([-out - radius * 0.6, up], `${drill} drill`, { toward: 'nw' }),
      note('Looking forward; port and starboard alike.'),
    ],
  });
}
