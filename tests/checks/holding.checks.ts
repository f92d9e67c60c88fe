/** What holds a bent board: pulls, bend, twist and twisting moment, against closed forms. */
import type { Table } from '../../src/boat';
import { holding } from '../../src/cells/timber/bending/holding';
import type { Vec3 } from '../../src/kernel';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const RECORD =
  'S. J. Record, The Mechanical Properties of Wood, 1914, stiffness of beams: P = 4 E b h³ D / l³';
const CARMO = 'M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-2';

/** A level boat whose keel alone stands 10 mm high at the middle of its three stations, 4 m from end to end. */
const onThreeSupports = tableThrough({
  keel: [0, 2, 4].map((x): Vec3 => [x, 0, x === 2 ? 0.01 : 0]),
  chine: [0, 2, 4].map((x): Vec3 => [x, 0.6, 0.3]),
  sheer: [0, 2, 4].map((x): Vec3 => [x, 0.7, 0.7]),
});

const RADIUS = 6;
const RISE = Math.PI / 9;
/** A side that is an upright cylinder, with edges that climb it at one slope: helices. */
const onCylinder: Table = (() => {
  const turns = Array.from({ length: 25 }, (_, i) => -0.36 + 0.03 * i);
  const helix = (height: number, inward = 0): Vec3[] =>
    turns.map((turn): Vec3 => [
      RADIUS * Math.sin(turn),
      RADIUS * Math.cos(turn) - 4.5 - inward,
      height + RADIUS * turn * Math.tan(RISE),
    ]);
  const chine = helix(1);
  return tableThrough({ keel: chine.map(([x, , z]): Vec3 => [x, 0, z - 0.2]), chine, sheer: helix(1.6) });
})();

const held = (entries: Readonly<Record<string, string>>, table: Table) =>
  tryCell(holding, { thickness: '19 mm', width: '38 mm', modulus: '10.8 GPa', ...entries }, table);

export const rows: readonly Check[] = [
  {
    id: 'W110',
    cell: 'holding',
    what: 'pulls on a board over three stations, the middle one 10 mm into the hull: P there, half of it outward at each end',
    input: 'b = 38 mm, h = 19 mm, E = 10.8 GPa, l = 4 m, D = 10 mm, ends free',
    expected: [0.87967, -1.75933, 0.87967],
    unit: 'N',
    // Slopes of 1/200 leave some hundred-thousandths between chord and base.
    tolerance: 0.0002,
    source: `${RECORD}; reactions of half the load`,
    known: 'published',
    obtain: () => {
      const tried = held({ along: 'keel', ends: 'free' }, onThreeSupports);
      return ['frame0', 'frame1', 'frame2'].map((station) => tried.number(`${station}.pull`));
    },
  },
  {
    id: 'W111',
    cell: 'holding',
    what: 'bend through the face, and twist for each length, of a board that climbs an upright cylinder as a helix',
    input: 'radius 6 m, rising at 20°, amidships: cos² 20° / R and sin 20° cos 20° / R',
    expected: [0.14717, 0.0535656],
    unit: '1/m',
    // Splines through points 180 mm apart, and a ruled strip for the cylinder.
    tolerance: 0.0003,
    source: CARMO,
    known: 'closed form',
    obtain: () => {
      const tried = held({ along: 'sheer' }, onCylinder);
      const step = tried.number('frame13.at') - tried.number('frame12.at');
      return [tried.number('frame12.bendHere'), Math.abs(tried.number('frame12.turnOn')) / step];
    },
  },
  {
    id: 'W112',
    cell: 'holding',
    what: 'torsion constant over a b³, sides a to b as 1, 1.5, 2, 3, 4 and 10 to 1',
    input: 'from moment, shear modulus and twist',
    expected: [0.1406, 0.196, 0.229, 0.263, 0.281, 0.312],
    unit: '',
    tolerance: 0.0006,
    source:
      'from memory: S. P. Timoshenko and J. N. Goodier, Theory of Elasticity, torsion of rectangular bars, table of k₁',
    known: 'from memory',
    obtain: () =>
      [1, 1.5, 2, 3, 4, 10].map((sides) => {
        const tried = held({ along: 'chine', thickness: '20 mm', width: `${20 * sides} mm` }, onCylinder);
        const shearModulus = tried.number('modulus') / tried.number('rigidity');
        return tried.number('torque') / (shearModulus * tried.number('twistRate') * sides * 0.02 ** 4);
      }),
  },
];
