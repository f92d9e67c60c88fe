/** What the cell `lines` knows of the hull: how she floats, and the cuts that the plan shows. */
import { afloatAt, draughtAt, heightsOf } from '../../boat/hull/afloat';
import { portSkin } from '../../boat/hull/port-skin';
import type { PlanCut, PlanStation } from '../../drawing/lines-plan-places';
import { fact } from '../form/fact';
import type { LinesAsked } from './lines-inputs';
import { endName, shortName } from './station-names';
import { GEOMETRY } from '../../trade/sources';

const MESH = 'geometry: divergence theorem over the panels as they are ruled; exact for a box and a prism';
export const ARCHIMEDES = 'Archimedes’ principle';

export const heights = fact('the lowest point of the skin', GEOMETRY, (_: LinesAsked, { hull }) =>
  heightsOf(hull),
);

export const deep = fact(
  'the draught typed, or the one at which the water pushed aside weighs what she weighs',
  ARCHIMEDES,
  ({ by, draught, weight, density }: LinesAsked, { hull }) =>
    by === 'weight' ? draughtAt(hull, weight / density) : draught,
);

type AtWater = LinesAsked & { readonly waterline: number };

/** The hull floating level at the waterline. */
export const afloat = fact(
  'the part of the closed hull below the level',
  MESH,
  ({ waterline }: AtWater, { hull }) => afloatAt(hull, waterline),
);

export const here = fact('the station looked at', GEOMETRY, ({ station }: LinesAsked, { hull }) =>
  hull.station(station),
);

/** The section under water at the station looked at. */
export const sectionHere = fact('the section below the level, both sides', GEOMETRY, (_: AtWater, { ask }) =>
  ask(afloat).section(ask(here)),
);

const skin = fact('the panels as they are ruled', GEOMETRY, (_: LinesAsked, { hull }) => portSkin(hull));

const runFrom = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1);

type Spaced = AtWater & {
  readonly lowest: number;
  readonly waterlineSpacing: number;
  readonly buttockSpacing: number;
};

/** The waterlines of the plan, and the one that she floats at. */
export const levels = fact(
  'the skin cut by level planes',
  GEOMETRY,
  ({ waterlines, waterlineSpacing, lowest, waterline }: Spaced, { ask }): readonly PlanCut[] => {
    const level = (name: string, at: number) => ({ name, at, lines: ask(skin).cut(2, at) });
    return [
      ...runFrom(waterlines).map((n) => level(`WL ${n}`, lowest + n * waterlineSpacing)),
      { ...level('DWL', waterline), design: true },
    ];
  },
);

export const uprights = fact(
  'the skin cut by upright planes along the boat',
  GEOMETRY,
  ({ buttocks, buttockSpacing }: Spaced, { ask }): readonly PlanCut[] =>
    runFrom(buttocks).map((n) => ({
      name: `B ${n}`,
      at: n * buttockSpacing,
      lines: ask(skin).cut(1, n * buttockSpacing),
    })),
);

export const sections = fact(
  'the skin cut by the planes of the stations',
  GEOMETRY,
  (_: LinesAsked, { hull, ask }): readonly PlanStation[] =>
    hull.stations.map((station) => ({
      name: station.role === 'frame' ? shortName(station.label) : endName(station),
      x: station.x,
      section: { name: station.name, pen: 'visible', points: ask(skin).section(station) },
    })),
);
