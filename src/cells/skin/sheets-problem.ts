/** Everything that is to be cut from sheets, and the sheets that are sold. */
import type { Hull } from '../../boat';
import { endWith } from '../../boat/hull/hull';
import { letOut, transomShape } from '../../boat/hull/transom-shape';
import type { Panel } from '../../boat/hull/panel';
import type { LayoutRules } from '../../boat/joinery/panel-layouts';
import { cutPanel, type JointRule } from '../../boat/joinery/panel-spots';
import { isFlatAcross } from '../../boat/joinery/whole-bottom';
import type { OtherPiece, SheetGroup, SheetsProblem } from '../../boat/joinery/sheet-sections';
import type { Vec2 } from '../../kernel';
import type { Quarter, SheetStock } from '../../kernel/nest';
import { skinOver } from '../common/frame/frame-facts';
import type { ValuesOf } from '../form/define';
import { fact } from '../form/fact';
import { grainOf, layersOf, panelsCut } from './sheets-grain';
import type { sheetsInputs } from './sheets-inputs';
import { partKeys } from './sheets-parts';
import { GEOMETRY } from '../../trade/sources';

export type SheetsAsked = ValuesOf<typeof sheetsInputs>;

/** Whether her hull is asked at all. */
export const asksHull = ({
  skinSides,
  transoms,
  gussets,
}: Pick<SheetsAsked, 'skinSides' | 'transoms' | 'gussets'>): boolean => skinSides + transoms + gussets > 0;

const turnsFor = (grain: 'along' | 'across' | 'either'): readonly Quarter[] => {
  if (grain === 'along') return [0, 2];
  return grain === 'across' ? [1, 3] : [0, 1, 2, 3];
};

const turnsOf = (v: SheetsAsked, panel: Panel): readonly Quarter[] =>
  turnsFor(v.grain === 'better' ? grainOf(panel, v).better : v.grain);

/** Panels whose joints may stand clear of frames too, beside the places by rule: none, those above the bottom, all. */
const FREED = ['none', 'sides', 'all'] as const;
type Freed = (typeof FREED)[number];

/** What is asked for, the rules for joints kept to the letter first; distances between joints may be more than can be held. */
export const wanted = FREED.map((freed) => ({
  freed: freed !== 'none',
  problem: fact(
    'the panels laid flat, the places for joints that hold the distances, and the sheets sold',
    GEOMETRY,
    (v: SheetsAsked, at): SheetsProblem => problemOf(v, asksHull(v) ? at.hull : null, freed),
  ),
}));

function problemOf(v: SheetsAsked, hull: Hull | null, freed: Freed): SheetsProblem {
  const layers = hull ? panelsCut(v, hull.panels).flatMap((panel) => layersTo(v, panel)) : [];
  const others = [...(hull ? partsOfBoat(v, hull) : []), ...typedParts(v)];
  const thicknesses = new Map<number, { panels: number[]; others: OtherPiece[] }>();
  const of = (thickness: number) => {
    const key = Math.round(thickness * 1e4);
    const group = thicknesses.get(key) ?? { panels: [], others: [] };
    thicknesses.set(key, group);
    return group;
  };
  layers.forEach(({ panel }, i) => of(layerOf(v, panel)).panels.push(i));
  for (const { thickness, ...piece } of others) of(thickness).others.push(piece);
  if (thicknesses.size === 0) throw new Error('nothing is to be cut: give a number of sides or of parts');
  const sold = stocksOf(v);
  const { heldAt } = v;
  const rules: LayoutRules = {
    stocks: sold,
    edge: v.edge + v.outside,
    least: v.least,
    offPanel: v.offPanel,
    offSide: v.offSide,
    more: v.more,
    alike: v.skinSides < 2 || v.cutting === 'together',
  };
  return {
    panels: layers.map(({ panel, layer, count }) =>
      cutPanel(
        hull!, // panels are of a hull
        panel,
        {
          rule: ruleFor(v, panel),
          siding: v.siding,
          stands: v.stands,
          clear: v.clear,
          offBend: v.offBend,
          lap: lapOf(v, panel),
          behind: v.joint === 'scarf' ? lapOf(v, panel) : count > 1 ? 0 : v.blockLength,
          // Of layers the outermost is the one that is seen.
          held: v.heldOn === panel.name && layer === count ? heldAt : null,
          turns: turnsOf(v, panel),
          whole: v.bottomIn === 'whole' && v.skinSides === 2 && isFlatAcross(panel),
          freed: freed === 'all' || (freed === 'sides' && panel.index > 0),
        },
        panel.index === 0 ? v.over : 0,
        [layer, count],
      ),
    ),
    groups: [...thicknesses.entries()]
      .toSorted(([a], [b]) => b - a)
      .map(([key, group]): SheetGroup => {
        const thickness = key / 1e4;
        return {
          thickness,
          ...group,
          stocks: sold.map((stock) => ({ ...stock, price: (stock.price * thickness) / v.priced })),
        };
      }),
    rules,
    gap: v.kerf + 2 * v.outside,
    mirror: v.faces === 'both',
    sides: v.skinSides === 1 ? 1 : 2,
    together: v.skinSides === 2 && v.cutting === 'together',
    blocks: v.joint === 'butt' && v.blockLength > 0 ? { length: v.blockLength, gap: v.blockGap } : null,
  };
}

const lapOf = (v: SheetsAsked, { name }: Pick<Panel, 'name'>): number =>
  v.joint === 'scarf' ? v.slope * layerOf(v, { name }) : 0;

/** Thickness of one layer of a panel, m. */
const layerOf = (v: SheetsAsked, { name }: Pick<Panel, 'name'>): number =>
  skinOver(v, name) / layersOf(v, name);

const layersTo = (v: SheetsAsked, panel: Panel) => {
  const count = layersOf(v, panel.name);
  return Array.from({ length: count }, (_, i) => ({ panel, layer: i + 1, count }));
};

const ruleFor = ({ bottomAt, sideAt }: SheetsAsked, panel: Panel): JointRule =>
  panel.index === 0 ? bottomAt : sideAt;

function stocksOf(v: SheetsAsked): readonly SheetStock[] {
  const first = { length: v.length, width: v.width, price: v.price };
  const second = { length: v.otherLength, width: v.otherWidth, price: v.otherPrice };
  return second.length > 0 && second.width > 0 ? [first, second] : [first];
}

type Part = OtherPiece & { readonly thickness: number };

const rectangle = (length: number, width: number): readonly Vec2[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

/** Transoms, the larger of their faces, and the plates at the chines before they are notched. */
function partsOfBoat(v: SheetsAsked, hull: Hull): readonly Part[] {
  const transom = (role: 'transom' | 'bow transom'): Part[] => {
    const count = v.transoms;
    // What a boat does not end in is not cut, whatever stands in its field.
    if (count === 0 || endWith(hull, role) === null) return [];
    const shape = transomShape(hull, role, (panel) => skinOver(v, panel), 'outer');
    const half = letOut(shape, v.transomThickness).filter(([y]) => y > 0);
    const foot = letOut(shape, v.transomThickness)[0]!; // a shape has a corner
    const outline = [
      ...(foot[0] > 0 ? [] : [foot]),
      ...half,
      ...half.toReversed().map(([y, z]): Vec2 => [-y, z]),
    ];
    const layers = v.transomLayers;
    return [
      {
        name: layers > 1 ? `layer of the ${role}` : role,
        outline,
        turns: [0, 2],
        pairs: false,
        count: count * layers,
        thickness: v.transomThickness / layers,
      },
    ];
  };
  return [...transom('transom'), ...transom('bow transom'), ...gussetsOf(v, hull)];
}

function gussetsOf(v: SheetsAsked, hull: Hull): readonly Part[] {
  const corners = hull.frames.flatMap((frame) =>
    hull.edges.slice(1, -1).map((edge) => ({ frame, edge, angle: frame.angle(edge.name) })),
  );
  if (corners.length === 0 || v.gussets === 0) return [];
  const each = Math.ceil(v.gussets / corners.length);
  let left = v.gussets;
  return corners.flatMap(({ frame, edge, angle }): Part[] => {
    const count = Math.min(each, left);
    left -= count;
    const leg = v.gussetLeg;
    return count === 0
      ? []
      : [
          {
            name: `gusset, ${frame.label.toLowerCase()}${hull.edges.length > 3 ? ` ${edge.label.toLowerCase()}` : ''}`,
            outline: [
              [0, 0],
              [leg, 0],
              [leg * Math.cos(angle), leg * Math.sin(angle)],
            ],
            turns: [0, 1, 2, 3],
            pairs: true,
            count,
            thickness: v.gussetThickness,
          },
        ];
  });
}

function typedParts(v: SheetsAsked): readonly Part[] {
  // A line counts when those above it do.
  const end = partKeys.findIndex((key) => v[`${key}Pieces`] === 0);
  return partKeys.slice(0, end < 0 ? undefined : end).map((key, at) => ({
    name: `part ${at + 1}`,
    outline: rectangle(v[`${key}Length`], v[`${key}Width`]),
    turns: turnsFor(v.partGrain),
    pairs: false,
    count: v[`${key}Pieces`],
    thickness: v.partThickness,
  }));
}
