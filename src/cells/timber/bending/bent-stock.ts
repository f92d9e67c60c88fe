/** What bending one board and laminating several have in common: the wood, the curve, the picture of it. */
import type { Point } from '../../../drawing';
import { bendShareTexts } from '../../../trade/bend-grades';
import { choice, input, type Source } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { chosenFromBoat, fromShop } from '../../form/from-shop';
import { longPartOptions } from '../../common/wood/long-parts';

/** What timber bent round an edge is asked for in every case. */
export const bentStock = {
  part: choice('What is bent', { options: longPartOptions, preset: 'keelson' }),
  along: choice('Bent along', {
    options: 'longEdges',
    from: '{part}.edge',
    preset: 'keel',
    note: 'where the part lies, unless another edge is chosen',
  }),
  radius: input('length', 'Tightest radius', {
    from: '{along}.leastRadius',
    preset: '2 m',
    min: '20 mm',
    step: '50 mm',
    note: 'to the middle of the thickness',
  }),
  width: fromBoat('{part}.width'),
  bay: input('length', 'Frame spacing', {
    from: 'hull.frameSpacing',
    preset: '600 mm',
    min: '50 mm',
    max: '5 m',
    step: '10 mm',
    note: 'the boat’s mean, for one figure all along; where a bay is wider, its own, and only here',
  }),
  species: chosenFromBoat('{part}.timber', { hint: 'dry, 12 % moisture' }),
  modulus: input('stress', 'Bending modulus', {
    doubted: 'stiffness',
    from: 'timber.{species}.bendingModulus',
    preset: '14.7 GPa',
    min: '1 GPa',
    max: '40 GPa',
    step: '0.1 GPa',
    note: 'mean of clear wood, Wood Handbook, and a tenth more: the printed value has the shear of a short test beam in it',
  }),
  rupture: input('stress', 'Modulus of rupture', {
    doubted: 'breaking',
    from: 'timber.{species}.rupture',
    preset: '85 MPa',
    min: '5 MPa',
    max: '300 MPa',
    step: '1 MPa',
    note: 'mean of clear wood, Wood Handbook',
  }),
  allowed: fromShop('breakingShare', { bound: 'most', slider: true }),
  holds: fromShop('onePerson'),
};

/** Bending of a beam to a known curve, as every text on the strength of materials has it. */
export const BEAM = 'beam theory: strain is half the thickness over the radius';

export const bentSources: readonly Source[] = [
  {
    text: 'Wood Handbook, USDA FPL-GTR-190 (2010), Tables 5-3a and 5-5b: modulus and rupture of clear wood',
    known: 'published',
  },
  {
    text: 'Small-strain beam theory, any text on strength of materials: strain t/(2R), moment EI/R',
    known: 'from memory',
  },
  {
    text: `Share of rupture allowed, ${bendShareTexts.source}; one person holds 200 to 300 N (45 to 65 lbf)`,
    known: 'common practice',
  },
];

export const SPRINGS_BACK =
  'A bent board is a spring: when it breaks or a clamp slips it strikes. Stand out of its line, wear eye protection, and let no one lean over it.';

export const bentCautions: readonly string[] = [
  SPRINGS_BACK,
  'Moduli are means of small, clear, straight-grained wood: single boards vary by about a sixth in rupture and a fifth in stiffness (from memory: Wood Handbook, Table 5-6), and a knot or grain that runs out takes far more.',
];

/**
 * One bent layer, hollow side down: a closed outline between two radii about (0, -`middle`).
 *
 * The middle of the whole stack passes through (0, 0). All mm and radians; a radius below zero,
 * which a stack thicker than its curve would need, is drawn as the centre itself.
 */
export function bentLayer(middle: number, inner: number, outer: number, halfAngle: number): Point[] {
  return [
    ...bentLine(middle, Math.max(0, outer), halfAngle),
    ...bentLine(middle, Math.max(0, inner), halfAngle).toReversed(),
  ];
}

/** A line at `radius` about (0, -`middle`), from left to right. */
export function bentLine(middle: number, radius: number, halfAngle: number): Point[] {
  const parts = 48;
  return Array.from({ length: parts + 1 }, (_, i): Point => {
    const angle = halfAngle * ((2 * i) / parts - 1);
    return [radius * Math.sin(angle), radius * Math.cos(angle) - middle];
  });
}

/**
 * Half the angle that a bay takes up on the curve, rad, and what is left of the bay where it is
 * wider than the whole circle: a half circle is the most that is drawn.
 */
export function bayOnCurve(radius: number, bay: number): { halfAngle: number; chord: number } {
  const chord = Math.min(bay, 2 * radius);
  return { halfAngle: Math.asin(chord / (2 * radius)), chord };
}
