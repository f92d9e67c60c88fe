/** What a mend does besides to its line: the lean of the frame side, its panel, what the boat floats. */
import type { Hull } from '../../boat';
import type { Effect, OnHand } from '../form/define';
import { displacementOf, leanAt, panelUnder } from './fair-facts';
import { type LongLine, longLine } from './long-line';
import { type Move, movedHull } from './moved-hull';

/** @param draught from the lowest of the keel, m */
export function effectsOf(
  hull: Hull,
  line: LongLine,
  moves: readonly Move[],
  draught: number,
  say: OnHand['say'],
): readonly Effect[] {
  const mended = movedHull(hull, moves);
  const panel = panelUnder(hull, line);
  const most = moves.reduce((a, b) => (Math.abs(b.by) > Math.abs(a.by) ? b : a));
  const station = hull.station(most.station);
  const effect = (label: string, kind: Effect['kind'], of: (hull: Hull) => number): Effect => ({
    label,
    kind,
    before: of(hull),
    after: of(mended),
  });
  return [
    panel.index === 0
      ? effect(
          `Deadrise of the ${panel.label} at ${station.label}`,
          'angle',
          (of) => Math.PI / 2 - leanAt(of, panel, station),
        )
      : effect(`Flare of the ${panel.label} at ${station.label}`, 'angle', (of) =>
          leanAt(of, panel, station),
        ),
    effect(`Each ${panel.label}`, 'area', (of) => of.panels[panel.index]!.area), // the same panels
    effect(`Displacement to ${say(draught, 'length')}`, 'volume', (of) => displacementOf(of, draught)),
    effect(
      'Deepest hollow of the line',
      'length',
      (of) =>
        Math.max(0, ...longLine(of, of.edges[line.edge.index]!, line.view).hollows.map(({ depth }) => depth)), // the same edges
    ),
  ];
}
