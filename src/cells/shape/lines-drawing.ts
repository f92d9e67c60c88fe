/** The lines plan and the curve of areas of the cell `lines`. */
import type { Hull, Station } from '../../boat';
import { type Drawing, drawing, mark } from '../../drawing';
import {
  fullLinesPlan,
  type FullLines,
  type PlanCut,
  type PlanEdge,
  type PlanStation,
  reduced,
} from '../../drawing/lines-plan';
import type { Chart, OnHand, Values } from '../form/define';
import { skinCut, stationSection } from './lines-cuts';
import { afloatAt, numberOf, stationOf } from './lines-form';
import { shortName } from './station-names';

type Saying = Pick<OnHand, 'hull' | 'say'>;

/** Points along an edge. */
const ALONG = 49;

export function drawLines(v: Values, { hull, say }: Saying): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to draw the lines of.', shapes });
  }
  return fullLinesPlan(planOf(v, hull, say));
}

/** Text of a printed sheet is 4.2 mm high: with the space between two rows, mm. */
const SHEET_ROW = 6;

/** The plan as a sheet to hang on a wall, at a round scale. */
export function wallSheet(v: Values, { hull, say }: Saying): readonly Drawing[] {
  if (!hull) return [];
  const by = numberOf(v, 'wall');
  const plan = planOf(v, hull, say);
  return [
    fullLinesPlan({
      ...reduced(plan, by),
      heading: `${plan.heading}, 1 : ${by}`,
      notes: [...plan.notes, plan.says],
      row: SHEET_ROW,
    }),
  ];
}

const TITLE = 'Lines plan';

function planOf(v: Values, hull: Hull, say: Saying['say']): FullLines {
  const apart = numberOf(v, 'waterlineSpacing');
  const out = numberOf(v, 'buttockSpacing');
  const [levels, offs] = [numberOf(v, 'waterlines'), numberOf(v, 'buttocks')];
  const lowest = numberOf(v, 'lowest');
  const waterlines: PlanCut[] = [
    ...runFrom(levels).map((n) => levelCut(hull, `WL ${n}`, lowest + n * apart)),
    { ...levelCut(hull, 'DWL', numberOf(v, 'waterline')), design: true },
  ];
  const buttocks = runFrom(offs).map((n): PlanCut => ({
    name: `B ${n}`,
    at: n * out,
    lines: skinCut(hull, 1, n * out),
  }));
  return {
    title: TITLE,
    says: `Profile, half-breadth plan and body plan to scale, bow to the right. In the body plan sections forward of ${hull.widest.label} stand on the right, abaft it on the left. DWL: the design waterline, ${say(numberOf(v, 'deep'), 'length')} above the lowest point of the hull.`,
    heading: hull.offsets.boat === undefined ? TITLE : `${hull.offsets.boat}: lines plan`,
    edges: hull.edges.map((edge): PlanEdge => ({
      name: edge.name,
      label: edge.label,
      pen: 'outline',
      points: edge.polyline(ALONG),
    })),
    stations: stationsOf(hull),
    waterlines,
    buttocks,
    amidships: hull.widest.x,
    notes: [
      `Length ${say(hull.length, 'length')}, breadth ${say(hull.beam, 'length')}, depth ${say(hull.depth, 'length')}.`,
      ...(levels === 0
        ? []
        : [`Waterlines ${say(apart, 'length')} apart, from the lowest point of the hull up.`]),
      ...(offs === 0 ? [] : [`Buttocks ${say(out, 'length')} apart, from the centreline out.`]),
      panelsInWords(hull, say),
    ],
  };
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
  return hull.stations.map((station) => ({
    name: station.role === 'frame' ? shortName(station.label) : endName(station),
    x: station.x,
    section: { name: station.name, pen: 'visible', points: stationSection(hull, station) },
  }));
}

/** An end by its own name; a bow that is a transom is called so, whatever the table calls it. */
function endName({ label, role }: Station): string {
  return role === 'bow transom' && !/transom/i.test(label) ? role : label;
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
