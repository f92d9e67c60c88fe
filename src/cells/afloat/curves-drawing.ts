/** The profile with her centres at one level of the water after the other, and her displacement against draught. */
import { type Drawing, drawing, label, line, mark, mm, note, type Point } from '../../drawing';
import type { Chart, OnHand } from '../form/define';
import { forms, heights } from './curves-facts';
import type { CurvesValues } from './curves-steps';

const TITLE = 'Her centres, as she goes deeper';
const ALONG = 49;

type On = Pick<OnHand<CurvesValues>, 'hull' | 'say' | 'ask'>;

export function drawCurves(v: CurvesValues, { hull, say, ask }: On): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to sink.', shapes });
  }
  const levels = ask(forms);
  const at = (x: number, z: number): Point => [mm(x), mm(z)];
  const ends = [hull.aft, hull.fore];
  const [from, to] = [hull.aft.corners.at(-1)![0], hull.fore.corners.at(-1)![0]];
  const beyond = 0.05 * (to - from);
  return drawing({
    title: TITLE,
    says: `Profile, bow to the right, with the water ${say(v.draught, 'length')} up. The middle of the water pushed aside lies ${say(v.buoyancyForward, 'length')} forward, that of the waterplane ${say(v.flotation, 'length')} forward.`,
    shapes: [
      ...hull.edges.map((edge) =>
        line(
          edge.polyline(ALONG).map(([x, , z]) => at(x, z)),
          { pen: 'outline', part: edge.name },
        ),
      ),
      ...ends.map(({ corners }) =>
        line(
          corners.map(([x, , z]) => at(x, z)),
          { pen: 'outline' },
        ),
      ),
      line([at(from - beyond, v.waterline), at(to + beyond, v.waterline)], { pen: 'thin' }),
      line(
        levels.map(({ centre }) => at(centre[0], centre[2])),
        { pen: 'hidden' },
      ),
      line(
        levels.flatMap(({ height, waterplane }) =>
          waterplane.centroid ? [at(waterplane.centroid[0], height)] : [],
        ),
        { pen: 'hidden' },
      ),
      mark(at(v.buoyancyForward, v.buoyancyHeight), { form: 'dot' }),
      label(at(v.buoyancyForward, v.buoyancyHeight), 'of the water aside', { toward: 'se' }),
      mark(at(v.flotation, v.waterline), { form: 'cross' }),
      label(at(v.flotation, v.waterline), 'of the waterplane', { toward: 'nw' }),
      note('Broken: where both middles go as she sinks from her keel to her lowest sheer.'),
    ],
  });
}

export function displacementChart(v: CurvesValues, { hull, say, ask }: On): Chart {
  const bare = {
    title: 'Displacement against draught',
    x: { label: 'Draught, level', kind: 'length' },
    y: { label: 'Boat and all aboard', kind: 'mass' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to sink.', lines: [] };
  const { lowest } = ask(heights);
  const points = ask(forms).map(({ height, volume }) => [height - lowest, volume * v.density] as const);
  return {
    ...bare,
    says: `The deeper, the more she carries: at ${say(v.draught, 'length')} it is ${say(v.mass, 'mass')}, and each 10 mm (3/8 in) more there takes ${say(v.sinks, 'mass')}.`,
    lines: [{ name: 'displacement', points: [[0, 0], ...points], as: 'line' }],
    points: [{ x: v.draught, y: v.mass, label: say(v.mass, 'mass') }],
  };
}
