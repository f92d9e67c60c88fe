/** The lines plan and the curve of areas of the cell `lines`. */
import { type Hull } from '../../boat';
import { type Drawing, drawing, mark, type SpaceLine } from '../../drawing';
import { fullLinesPlan, type PlanCut, type PlanStation } from '../../drawing/lines-plan';
import type { Chart, OnHand, Values } from '../define';
import { skinCut, stationSection } from './lines-cuts';
import { afloatAt, numberOf, stationOf } from './lines-form';
import { shortName } from './station-names';

type Saying = Pick<OnHand, 'hull' | 'say'>;

/** Points along an edge. */
const ALONG = 49;
/** The most stations that are named on the drawing; of more, every second or third is. */
const NAMED = 9;

export function drawLines(v: Values, { hull, say }: Saying): Drawing {
  const draught = numberOf(v, 'draught');
  const apart = numberOf(v, 'waterlineSpacing');
  const out = numberOf(v, 'buttockSpacing');
  const [levels, offs] = [numberOf(v, 'waterlines'), numberOf(v, 'buttocks')];
  const title = 'Lines plan';
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title, says: 'There is no hull to draw the lines of.', shapes });
  }
  const lowest = numberOf(v, 'lowest');
  const waterline = numberOf(v, 'waterline');
  const waterlines: PlanCut[] = [
    ...runFrom(levels).map((n) => levelCut(hull, `WL ${n}`, lowest + n * apart)),
    { ...levelCut(hull, 'DWL', waterline), design: true },
  ];
  const buttocks = runFrom(offs).map((n): PlanCut => ({
    name: `B ${n}`,
    at: n * out,
    lines: skinCut(hull, 1, n * out),
  }));
  const levelWords =
    levels === 0
      ? []
      : [`${levels} waterlines ${say(apart, 'length')} apart, from the lowest point of the hull up`];
  const offWords =
    offs === 0 ? [] : [`${offs} buttocks ${say(out, 'length')} apart, from the centreline out`];
  const spaced = [...levelWords, ...offWords].join('; ');
  return fullLinesPlan({
    title,
    says: `Profile, half-breadth plan and body plan to scale, bow to the right; in the body plan sections forward of ${hull.widest.label} stand on the right, abaft it on the left. DWL: the design waterline, ${say(draught, 'length')} above the lowest point of the hull.`,
    edges: hull.edges.map((edge): SpaceLine => ({
      name: edge.name,
      pen: 'outline',
      points: edge.polyline(ALONG),
    })),
    stations: stationsOf(hull),
    waterlines,
    buttocks,
    amidships: hull.widest.x,
    notes: [...(spaced === '' ? [] : [`${spaced}.`]), panelsInWords(hull, say)],
  });
}

function panelsInWords({ panels }: Hull, say: Saying['say']): string {
  const areas = panels.map(({ label, area }) => `${label} ${say(area, 'area')}`);
  return `Panels laid flat, one side: ${areas.join(', ')}.`;
}

const runFrom = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1);

const levelCut = (hull: Hull, name: string, at: number): PlanCut => ({
  name,
  at,
  lines: skinCut(hull, 2, at),
});

function stationsOf(hull: Hull): PlanStation[] {
  const last = hull.stations.length - 1;
  const every = Math.ceil(last / (NAMED - 1));
  const isNamed = (index: number) => index === last || (index % every === 0 && last - index >= every);
  return hull.stations.map((station) => ({
    name: isNamed(station.index) ? shortName(station.label) : null,
    x: station.x,
    section: { name: station.name, pen: 'visible', points: stationSection(hull, station) },
  }));
}

export function areasChart(v: Values, { hull, say }: Saying): Chart {
  const bare = {
    title: 'Curve of areas',
    x: { label: 'From the after end of the bottom', kind: 'length' },
    y: { label: 'Section under water', kind: 'area' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to take sections of.', lines: [] };
  const waterline = numberOf(v, 'waterline');
  const water = afloatAt(hull, waterline);
  const points = water.areas;
  const most = points.reduce((best, point) => (point[1] > best[1] ? point : best));
  const station = stationOf(hull, v);
  const here = water.section(station).area;
  return {
    ...bare,
    says: `The section under water is greatest ${say(most[0], 'length')} forward: ${say(most[1], 'area')}. The area under the curve is the volume of water pushed aside; where it has a shoulder, so has the boat.`,
    lines: [{ name: 'section area', points, as: 'line' }],
    points: [{ x: station.x, y: here, label: `${station.label}: ${say(here, 'area')}` }],
  };
}
