/** What the weights ask of the hull: where each part, her skin and her seams have their middle, and where things stand. */
import {
  isPost,
  alongSheer,
  chineLogs,
  frames,
  gussets,
  type Hull,
  keelson,
  skin,
  stems,
  thwarts,
  transom,
} from '../../boat';
import type { Vec3 } from '../../kernel';
import { fact } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

export const whole = fact('the hull up to her sheer', GEOMETRY, (_: {}, { hull }) => hull);

/** A mass or a size, and where its middle lies, m. */
interface Piece {
  readonly amount: number;
  readonly centre: Vec3;
}

/** The middle of several, seen from the side; nowhere in particular where there is nothing. */
function middle(pieces: readonly Piece[]): { readonly x: number; readonly z: number } {
  const total = pieces.reduce((sum, { amount }) => sum + amount, 0);
  const along = (axis: 0 | 2) =>
    total > 0 ? pieces.reduce((sum, { amount, centre }) => sum + amount * centre[axis], 0) / total : 0;
  return { x: along(0), z: along(2) };
}

/** The parts of wood, with the field that holds what each weighs. */
export const woodFields = {
  bottom: 'bottomMass',
  bilge: 'bilgeMass',
  side: 'sideMass',
  transom: 'transomMass',
  bowTransom: 'bowMass',
  keelson: 'keelsonMass',
  stem: 'stemMass',
  chineLog: 'logMass',
  sheerClamp: 'clampMass',
  rubRail: 'railMass',
  frame: 'frameMass',
  gusset: 'gussetMass',
  thwart: 'thwartMass',
} as const;

type WoodPart = keyof typeof woodFields;
type WoodMasses = { readonly [K in (typeof woodFields)[WoodPart]]: number };

const isBilge = (name: string) => name.startsWith('bilge');

/** Where each part of this boat has its middle; of what she hasn't got, nowhere. */
const partPlaces = fact(
  'the middle of all pieces of the part, on the face of the skin that the offsets are measured to',
  GEOMETRY,
  (
    { seat }: { readonly seat: number },
    { hull },
  ): ReadonlyMap<string, { readonly x: number; readonly z: number }> => {
    const has = (name: string) => hull.panels.some((panel) => panel.name === name);
    const roles = [hull.aft.role, hull.fore.role];
    const one = ({ centre }: { readonly centre: Vec3 }): readonly Piece[] => [{ amount: 1, centre }];
    const pieces: Readonly<Record<WoodPart, readonly Piece[]>> = {
      bottom: has('bottom') ? one(skin(hull, 'bottom')) : [],
      bilge: hull.panels
        .filter(({ name }) => isBilge(name))
        .map(({ name }) => skin(hull, name))
        .map(({ area, centre }) => ({ amount: area, centre })),
      side: one(skin(hull, 'side')),
      transom: roles.includes('transom') ? one(transom(hull, 'transom')) : [],
      bowTransom: roles.includes('bow transom') ? one(transom(hull, 'bow transom')) : [],
      keelson: one(keelson(hull)),
      stem: [hull.aft, hull.fore].some(({ role }) => isPost(role)) ? one(stems(hull)) : [],
      chineLog: one(chineLogs(hull)),
      sheerClamp: one(alongSheer(hull)),
      rubRail: one(alongSheer(hull)),
      frame: one(frames(hull)),
      gusset: one(gussets(hull, 1)),
      thwart: one(thwarts(hull, 1, seat)),
    };
    return new Map(
      Object.entries(pieces).flatMap(([part, of]) => (of.length > 0 ? [[part, middle(of)] as const] : [])),
    );
  },
);

/** What the list of all parts goes by, besides the wood. */
interface Aboard extends WoodMasses {
  readonly wetness: number;
  readonly sheathing: number;
  readonly pastes: number;
  readonly fastenings: number;
  readonly coats: number;
  readonly skinForward: number;
  readonly skinHeight: number;
  readonly seamForward: number;
  readonly seamHeight: number;
  readonly motor: number;
  readonly motorForward: number;
  readonly motorHeight: number;
  readonly fuel: number;
  readonly fuelForward: number;
  readonly fuelHeight: number;
  readonly crew: number;
  readonly peopleForward: number;
  readonly peopleHeight: number;
}
type Gear = 'gearA' | 'gearB' | 'gearC' | 'gearD';
type GearAboard = { readonly [K in `${Gear}${'Mass' | 'Forward' | 'Height'}`]: number };

/** A part and all that it weighs, seen from the side: kg and m. */
interface PartAboard {
  readonly mass: number;
  readonly x: number;
  readonly z: number;
}

const NONE: PartAboard = { mass: 0, x: 0, z: 0 };

/** Every part and all that goes aboard. */
export const partsAboard = fact(
  'one after the other, each with its mass and its middle',
  GEOMETRY,
  (v: Aboard & GearAboard, { ask }): ReadonlyMap<string, PartAboard> => {
    const at = ask(partPlaces);
    const onSkin = (mass: number): PartAboard => ({ mass, x: v.skinForward, z: v.skinHeight });
    const inSeams = (mass: number): PartAboard => ({ mass, x: v.seamForward, z: v.seamHeight });
    const gear = (id: Gear): readonly [string, PartAboard] => [
      id,
      { mass: v[`${id}Mass`], x: v[`${id}Forward`], z: v[`${id}Height`] },
    ];
    return new Map([
      ...Object.entries(woodFields).map(([part, field]): readonly [string, PartAboard] => {
        const place = at.get(part);
        return [part, place ? { mass: v[field] * v.wetness, ...place } : NONE];
      }),
      ['sheathing', onSkin(v.sheathing)],
      ['pastes', inSeams(v.pastes)],
      ['fastenings', inSeams(v.fastenings)],
      ['coats', onSkin(v.coats)],
      ['outboard', { mass: v.motor, x: v.motorForward, z: v.motorHeight }],
      ['petrol', { mass: v.fuel, x: v.fuelForward, z: v.fuelHeight }],
      gear('gearA'),
      gear('gearB'),
      gear('gearC'),
      gear('gearD'),
      ['people', { mass: v.crew, x: v.peopleForward, z: v.peopleHeight }],
    ]);
  },
);

export const partHere = fact(
  'the middle of all its pieces',
  GEOMETRY,
  ({ part }: { readonly part: string }, { ask }): PartAboard => ask(partsAboard).get(part)!, // it has every option
);

export const woodMiddle = fact(
  'the sum of mass times place, over the sum of the masses',
  GEOMETRY,
  (masses: WoodMasses, { ask }) => {
    const at = ask(partPlaces);
    return middle(
      Object.entries(woodFields).flatMap(([part, field]): Piece[] => {
        const place = at.get(part);
        return place ? [{ amount: masses[field], centre: [place.x, 0, place.z] }] : [];
      }),
    );
  },
);

/** What she has not got weighs nothing, whatever stands in its field. */
export const woodMass = fact(
  'the sum of the parts she has',
  GEOMETRY,
  (masses: WoodMasses & { readonly seat: number }, { ask }) => {
    const at = ask(partPlaces);
    return Object.entries(woodFields).reduce((sum, [part, field]) => {
      const mass = masses[field];
      return at.has(part) ? sum + mass : sum;
    }, 0);
  },
);

export const bowTransoms = fact('an end that is one', GEOMETRY, (_: {}, { hull }) =>
  hull.fore.role === 'bow transom' ? 1 : 0,
);

export const skinMiddle = fact('the middle of the area of all panels', GEOMETRY, (_: {}, { hull }) =>
  middle(hull.panels.map(({ area, centre }) => ({ amount: area, centre }))),
);

export const seamMiddle = fact(
  'the middle of the length of keel, chines and sheers',
  GEOMETRY,
  (_: {}, { hull }) => middle(seamPieces(hull)),
);

/** All edges; those beside the keel lie on both sides. */
const seamPieces = ({ edges }: Hull): readonly Piece[] =>
  edges.map(({ length, centre, index }) => ({ amount: index === 0 ? length : 2 * length, centre }));

export const places = fact(
  'places of the hull as it is drawn through the table',
  GEOMETRY,
  (_: {}, { hull }) => {
    const [sternX, , sternZ] = hull.aft.corners.at(-1)!; // keel and sheer at least
    const keels = hull.edges[0]!.points;
    return {
      keel: hull.widest.corners[0]![2],
      sternX,
      sternZ,
      aft: keels[0]![0],
      fore: keels.at(-1)![0],
    };
  },
);
