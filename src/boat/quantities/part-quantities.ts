/**
 * What the parts of the boat offer to the notebook: lengths, areas, volumes and masses by the scantlings
 * in hand.
 */
import { attempt } from '../attempt';
import { issue } from '../../measure';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import { fromBoth } from './make-derived';
import {
  alongSheer,
  chineLogs,
  frames,
  gussets,
  keelson,
  type Sheets,
  skin,
  stems,
  type Sticks,
  thwarts,
  transom,
} from '../joinery/parts';
import type { Derived, Given, Read } from './quantity';
import { type PartKind, partKinds, sizesOf, skinKind } from './scantlings';
import { woodOf } from './part-woods';
import { isPost, type Role } from '../hull/station';

const SIZES = 'geometry, with the scantlings in hand';

/** A part of this boat, and how its pieces follow from the hull. */
interface Part {
  readonly name: string;
  readonly label: string;
  /** The part whose sizes and wood it shares: a bow transom is built like the stern one. */
  readonly as: PartKind;
  readonly shape:
    | {
        readonly form: 'sticks';
        readonly section: readonly [string, string];
        readonly of: (hull: Hull, read: Read) => Sticks;
      }
    | { readonly form: 'sheets'; readonly of: (hull: Hull, read: Read) => Sheets };
}

export function partGivens(layout: Layout): Given[] {
  const kinds = new Set(partsOf(layout).map(({ as }) => as));
  return [...kinds].flatMap((kind) => [...sizesOf(kind), woodOf(kind)]);
}

export function partQuantities(layout: Layout): Derived[] {
  const parts = partsOf(layout);
  return [...parts.flatMap(quantitiesOf), ...structure(parts.map(({ name }) => name))];
}

function partsOf(layout: Layout): readonly Part[] {
  const { chines, panels, stations } = layout;
  const roles = new Set<Role>(stations.map(({ role }) => role));
  const kind = (id: string): PartKind => partKinds.find((part) => part.id === id)!; // ids of the list itself
  const sticks = (
    id: string,
    section: readonly [string, string],
    of: (hull: Hull, read: Read) => Sticks,
  ): Part => ({
    name: id,
    label: kind(id).label,
    as: kind(id),
    shape: { form: 'sticks', section, of },
  });
  const sheets = (
    name: string,
    as: PartKind,
    of: (hull: Hull, read: Read) => Sheets,
    label = as.label,
  ): Part => ({
    name,
    label,
    as,
    shape: { form: 'sheets', of },
  });
  const flat = ['thickness', 'width'] as const;
  const deep = ['siding', 'moulded'] as const;
  const cornered = chines.length > 0;
  return [
    sticks('keelson', flat, keelson),
    ...([...roles].some(isPost) ? [sticks('stem', deep, stems)] : []),
    ...(cornered ? [sticks('chineLog', flat, chineLogs)] : []),
    sticks('sheerClamp', flat, alongSheer),
    sticks('rubRail', flat, alongSheer),
    sticks('frame', deep, frames),
    sticks('thwart', flat, (hull, read) =>
      thwarts(hull, read.number('thwart.number'), read.number('thwart.height')),
    ),
    ...(roles.has('transom') ? [sheets('transom', kind('transom'), (hull) => transom(hull, 'transom'))] : []),
    ...(roles.has('bow transom')
      ? [sheets('bowTransom', kind('transom'), (hull) => transom(hull, 'bow transom'), 'bow transom')]
      : []),
    ...(cornered
      ? [sheets('gusset', kind('gusset'), (hull, read) => gussets(hull, read.number('gusset.leg')))]
      : []),
    ...panels.map(({ name, label }) => sheets(name, skinKindOf(name, label), (hull) => skin(hull, name))),
  ];
}

/** One object a panel, so that the parts list can be compared by identity. */
const skinKinds = new Map<string, PartKind>();
function skinKindOf(name: string, label: string): PartKind {
  const known = skinKinds.get(name) ?? skinKind(name, label);
  skinKinds.set(name, known);
  return known;
}

function quantitiesOf(part: Part): Derived[] {
  const { name, label, as, shape } = part;
  const ask = (read: Read, hull: Hull) => shape.of(hull, read);
  const isSkin = as.id === name && !partKinds.includes(as);
  const volume = fromBoth(
    `${name}.volume`,
    'volume',
    `volume of wood in the ${label}, all pieces`,
    SIZES,
    (hull, read) => {
      const number = (key: string) => read.number(`${as.id}.${key}`);
      if (shape.form === 'sheets') return shape.of(hull, read).area * number('thickness');
      return shape.of(hull, read).total * number(shape.section[0]) * number(shape.section[1]);
    },
  );
  const mass: Derived = {
    name: `${name}.mass`,
    kind: 'mass',
    meaning: `mass of the ${label}, all pieces`,
    source: `volume times the density of the ${as.of} chosen`,
    from: (read) => {
      const wood = read.choice(`${as.id}.${as.of}`);
      return read.number(`${name}.volume`) * read.number(`${as.of}.${wood}.density`);
    },
  };
  const pieces = fromBoth(
    `${name}.pieces`,
    'count',
    `number of pieces of the ${label}`,
    SIZES,
    (hull, read) => ask(read, hull).pieces,
  );
  const centre = (['x', 'z'] as const).map((axis) =>
    fromBoth(
      `${name}.centre.${axis}`,
      'length',
      `${axis === 'x' ? 'position along the boat' : 'height'} of the middle of the ${label}`,
      SIZES,
      (hull, read) => {
        const all = ask(read, hull);
        return all.pieces > 0 ? all.centre[axis === 'x' ? 0 : 2] : issue(`the boat has no ${label}`);
      },
    ),
  );
  const own =
    shape.form === 'sticks'
      ? stickLengths(part.name, label, shape.of)
      : [sheetArea(part.name, label, shape.of)];
  // A panel's area and middle are quantities of its shape already.
  return isSkin ? [pieces, volume, mass] : [...own, pieces, volume, mass, ...centre];
}

function stickLengths(name: string, label: string, of: (hull: Hull, read: Read) => Sticks): Derived[] {
  return [
    fromBoth(
      `${name}.length`,
      'length',
      `length of the ${label}, the longest piece`,
      SIZES,
      (hull, read) => of(hull, read).longest,
    ),
    fromBoth(
      `${name}.totalLength`,
      'length',
      `length of the ${label}, all pieces together`,
      SIZES,
      (hull, read) => of(hull, read).total,
    ),
  ];
}

function sheetArea(name: string, label: string, of: (hull: Hull, read: Read) => Sheets): Derived {
  return fromBoth(`${name}.area`, 'area', `area of the ${label}, one piece`, SIZES, (hull, read) => {
    const { area, pieces } = of(hull, read);
    return pieces > 0 ? area / pieces : issue(`the boat has no ${label}`);
  });
}

/** A hull that refuses the question is an answer: its sentence. */
const answering =
  (ask: (read: Read) => number): Derived['from'] =>
  (read) =>
    attempt(() => ask(read));

/** The bare wood of the boat: fastenings, glue, sheathing, paint and gear come on top. */
function structure(parts: readonly string[]): Derived[] {
  const total = (read: Read) => parts.reduce((sum, part) => sum + read.number(`${part}.mass`), 0);
  const centre = (axis: 'x' | 'z'): Derived => ({
    name: `hull.structureCentre.${axis}`,
    kind: 'length',
    meaning: `${axis === 'x' ? 'position along the boat' : 'height'} of the centre of gravity of the bare wooden hull`,
    source: 'moments of the parts',
    from: answering((read) => {
      const moment = parts.reduce((sum, part) => {
        const mass = read.number(`${part}.mass`);
        // What there is none of lies nowhere.
        return mass === 0 ? sum : sum + mass * read.number(`${part}.centre.${axis}`);
      }, 0);
      return moment / total(read);
    }),
  });
  return [
    {
      name: 'hull.structureMass',
      kind: 'mass',
      meaning: 'mass of the bare wooden hull, without fastenings, glue, sheathing and paint',
      source: 'sum of the parts',
      from: answering(total),
    },
    centre('x'),
    centre('z'),
  ];
}
