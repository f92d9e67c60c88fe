/** The lines plan and the curve of areas of the cell `lines`. */
import type { Hull } from '../../boat';
import { type Drawing, drawing, mark } from '../../drawing';
import { fullLinesPlan, reduced } from '../../drawing/lines-plan';
import type { FullLines, PlanEdge } from '../../drawing/lines-plan-places';
import type { Chart, OnHand } from '../form/define';
import { afloat, here as stationHere, levels, sectionHere, sections, uprights } from './lines-facts';
import type { LinesValues } from './lines-steps';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

/** Points along an edge. */
const ALONG = 49;

export function drawLines(v: LinesValues, { hull, say, ask }: Saying): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to draw the lines of.', shapes });
  }
  return fullLinesPlan(planOf(v, { hull, say, ask }));
}

/** Text of a printed sheet is 4.2 mm high: with the space between two rows, mm. */
const SHEET_ROW = 6;

/** The plan as a sheet to hang on a wall, at a round scale. */
export function wallSheet(v: LinesValues, { hull, say, ask }: Saying): readonly Drawing[] {
  if (!hull) return [];
  const by = v.wall;
  const plan = planOf(v, { hull, say, ask });
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

function planOf(v: LinesValues, { hull, say, ask }: Saying & { readonly hull: Hull }): FullLines {
  return {
    title: TITLE,
    says: `Length ${say(hull.length, 'length')}, breadth ${say(hull.beam, 'length')}, depth ${say(hull.depth, 'length')}. ${panelsInWords(hull, say)} The design waterline lies ${say(v.deep, 'length')} above the lowest point of the hull.`,
    heading: hull.offsets.boat === undefined ? TITLE : `${hull.offsets.boat}: lines plan`,
    edges: hull.edges.map((edge): PlanEdge => ({
      name: edge.name,
      label: edge.label,
      pen: 'outline',
      points: edge.polyline(ALONG),
    })),
    stations: ask(sections),
    waterlines: ask(levels),
    buttocks: ask(uprights),
    amidships: hull.widest.x,
    notes: [
      `Bow to the right. In the body plan sections forward of ${hull.widest.label} stand on the right, abaft it on the left. DWL: the design waterline.`,
      ...(v.waterlines === 0
        ? []
        : [`Waterlines ${say(v.waterlineSpacing, 'length')} apart, from the lowest point of the hull up.`]),
      ...(v.buttocks === 0
        ? []
        : [`Buttocks ${say(v.buttockSpacing, 'length')} apart, from the centreline out.`]),
    ],
  };
}

function panelsInWords({ panels }: Hull, say: Saying['say']): string {
  const areas = panels.map(({ label, area }) => `${label} ${say(area, 'area')}`);
  return `Panels laid flat, one side: ${areas.join(', ')}.`;
}

export function areasChart(_: LinesValues, { hull, say, ask }: Saying): Chart {
  const bare = {
    title: 'Curve of areas',
    x: { label: 'From the after end of the bottom', kind: 'length' },
    y: { label: 'Section under water', kind: 'area' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to take sections of.', lines: [] };
  const points = ask(afloat).areas;
  const most = points.reduce((best, point) => (point[1] > best[1] ? point : best));
  const station = ask(stationHere);
  const here = ask(sectionHere).area;
  return {
    ...bare,
    says: `The section under water is greatest ${say(most[0], 'length')} forward: ${say(most[1], 'area')}. The area under the curve is the volume of water pushed aside; where it has a shoulder, so has the boat.`,
    lines: [{ name: 'section area', points, as: 'line' }],
    points: [{ x: station.x, y: here, label: `${station.label}: ${say(here, 'area')}` }],
  };
}
