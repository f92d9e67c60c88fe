/** Which way the face grain of each panel lies better: along where the sheet takes the bend, for it is stiffer so. */
import { panelBends } from '../../boat/hull/panel-bends';
import type { Panel } from '../../boat/hull/panel';
import { judge, type Verdict, worstOf } from '../../boat/joinery/plywood-bends';
import { faceShare } from '../../kernel/plies';
import {
  AIRCRAFT_PANELS,
  FORM_PANELS,
  type Grain,
  leastBendRadius,
  pickedBendRadius,
} from '../../trade/plywood-bend';
import { skinOver } from '../common/frame/frame-facts';
import { type CellFunction, step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { hardestOf } from './panels-facts';
import type { sheetsInputs } from './sheets-inputs';

type Asked = ValuesOf<typeof sheetsInputs>;

const HANDBOOK =
  'parallel plies: Wood Handbook, USDA FPL-GTR-190 (2010), ch. 12, a twentieth across the grain; from memory';

/** Layers of a panel's skin; each is of its share of the thickness. */
export const layersOf = (
  { bottomLayers, bilgeLayers, sideLayers }: Pick<Asked, 'bottomLayers' | 'bilgeLayers' | 'sideLayers'>,
  panel: string,
): number => (panel === 'bottom' ? bottomLayers : panel === 'side' ? sideLayers : bilgeLayers);

interface Way {
  readonly verdict: Verdict;
  /** Of what a common panel takes, where it bends and twists most. */
  readonly share: number;
}

const ORDER: readonly Verdict[] = ['bends', 'marginal', 'untabled', 'refuses'];

function wayOf(panel: Panel, v: Asked, grain: Grain): Way {
  const thickness = skinOver(v, panel.name) / layersOf(v, panel.name);
  const radii = (of: (grain: Grain) => number) => ({ along: of('along'), across: of('across') });
  const sheet = {
    thickness,
    grain,
    common: radii((way) => leastBendRadius(thickness, way).radius),
    picked: radii((way) => pickedBendRadius(thickness, way, v.wetness).radius),
    allowed: v.allowed,
  };
  const judged = panelBends(panel).map((place) => judge(place, sheet));
  return { verdict: worstOf(judged), share: hardestOf(judged).common.both };
}

export interface PanelGrain {
  readonly along: Way;
  readonly across: Way;
  /** Along where it bends so; else the way that takes less. */
  readonly better: Grain;
}

export function grainOf(panel: Panel, v: Asked): PanelGrain {
  const [along, across] = [wayOf(panel, v, 'along'), wayOf(panel, v, 'across')];
  const [one, other] = [ORDER.indexOf(along.verdict), ORDER.indexOf(across.verdict)];
  const eases = other < one || (other === one && across.share < along.share);
  return { along, across, better: along.verdict !== 'bends' && eases ? 'across' : 'along' };
}

/** The panels that are cut, from the keel outward. */
export const panelsCut = ({ skinSides, only }: Asked, panels: readonly Panel[]): readonly Panel[] =>
  skinSides === 0 ? [] : panels.filter(({ name }) => only === 'none' || name === only);

const grains = fact(
  'each place’s bend and twist against the least radii of both tables, as of a panel laid flat',
  `${FORM_PANELS}; ${AIRCRAFT_PANELS}`,
  (v: Asked, at) =>
    v.skinSides === 0
      ? []
      : panelsCut(v, at.hull.panels).map((panel) => ({ label: panel.label, ...grainOf(panel, v) })),
);

const percent = (share: number) => `${Math.round(100 * share)} %`;
const told = (way: Grain) =>
  tell(
    grains,
    'choice',
    `with the face grain ${way}: bend and twist of each panel, of what a common sheet takes`,
    (all) => all.map((one) => `${one.label} ${percent(one[way].share)}`).join(', ') || 'none',
  );

/** How stiff it is across the grain, over along it. */
const ACROSS = 0.05;

export const grainFunctions = {
  faceShare: {
    takes: ['count'],
    gives: 'ratio',
    how: 'plies of one thickness: of their second moment of area, what lies in those that run as the faces do',
    run: (plies = 5) => faceShare(plies),
  } satisfies CellFunction,
};

export const grainSteps = {
  takenAlong: told('along'),
  takenAcross: told('across'),
  better: tell(
    grains,
    'choice',
    'which way the face grain lies better, panel by panel',
    (all) =>
      all
        .map(({ label, better, along, across }) =>
          along.verdict === 'refuses' && across.verdict === 'refuses'
            ? `${label} neither`
            : `${label} ${better}`,
        )
        .join(', ') || 'none',
    { how: 'along where the tables let it bend so, for it is stiffer; else the way that takes less' },
  ),
  inFaces: step(
    'ratio',
    'faceShare(sheetPlies)',
    'of a sheet’s stiffness, what plies along the face grain give',
    HANDBOOK,
  ),
  stiffAlong: step(
    'ratio',
    `inFaces + ${ACROSS} * (1 - inFaces)`,
    'stiffness of the sheet along its face grain, over that of solid wood',
    HANDBOOK,
  ),
  stiffAcross: step('ratio', `1 - inFaces + ${ACROSS} * inFaces`, 'the same across its face grain', HANDBOOK),
  stiffer: step(
    'ratio',
    'stiffAlong / stiffAcross',
    'how many times as stiff it is along as across',
    HANDBOOK,
  ),
} as const;
