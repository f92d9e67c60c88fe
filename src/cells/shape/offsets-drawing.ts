/** The sections of the table as a body plan, with one point of it measured as the table means it. */
import { attempt, type Hull, type Station } from '../../boat';
import { centreLine, dim, type Drawing, drawing, line, mark, mm, note, type Point } from '../../drawing';
import { isIssue } from '../../measure';
import type { OnHand } from '../form/define';
import type { OffsetsValues } from './offsets-steps';

export function drawOffsets(v: OffsetsValues, { hull, say }: Pick<OnHand, 'hull' | 'say'>): Drawing {
  if (!hull) {
    return drawing({
      title: 'The sections',
      says: 'There is no hull to draw the sections of.',
      shapes: [mark([0, 0]), mark([100, 0])],
    });
  }
  const here = hull.station(v.station);
  const edge = hull.edge(v.edge);
  const drawn = hull.stations.flatMap((station) => {
    const points = attempt(() => pointsOf(station, sideOf(hull, station)));
    return isIssue(points) ? [] : [{ station, points }];
  });
  const all = drawn.flatMap(({ points }) => points);
  const [left, right] = [Math.min(0, ...all.map(([x]) => x)), Math.max(0, ...all.map(([x]) => x))];
  const top = Math.max(...all.map(([, y]) => y));
  const own = drawn.find(({ station }) => station === here)?.points ?? [];
  const at = own[edge.index];
  const halfBreadth = say(v.halfBreadth, 'length');
  const height = say(v.height, 'length');
  return drawing({
    title: `Body plan, ${here.label} in heavy line`,
    says: `Here ${here.label}, ${edge.label}: ${halfBreadth} from the centreline and ${height} above the base line.`,
    shapes: [
      centreLine([0, 0], [0, top]),
      line(
        [
          [left, 0],
          [right, 0],
        ],
        { pen: 'thin' },
      ),
      drawn.map(({ station, points }) => line(points, { pen: 'thin', part: station.name })),
      line(own, { pen: 'outline', part: here.name }),
      own.map((point) => mark(point, { form: 'dot' })),
      at ? measured(at, halfBreadth, height) : [],
      note('Sections forward of the widest stand to the right, those aft of it to the left.'),
    ],
  });
}

/** Forward of the widest station to the right, abaft it to the left, as body plans are drawn. */
const sideOf = (hull: Hull, station: Station) => (station.index >= hull.widest.index ? 1 : -1);

const pointsOf = ({ section }: Station, side: 1 | -1): Point[] =>
  section.map(([y, z]) => [side * mm(y), mm(z)]);

/** Nothing is dimensioned that has no length. */
function measured([x, y]: Point, halfBreadth: string, height: string) {
  return [
    mark([x, y], { form: 'ring' }),
    ...(Math.abs(x) > 1 ? [dim([0, y], [x, y], halfBreadth, { run: 'horizontal', side: 'above' })] : []),
    ...(Math.abs(y) > 1
      ? [dim([x, 0], [x, y], height, { run: 'vertical', side: x < 0 ? 'left' : 'right' })]
      : []),
  ];
}
