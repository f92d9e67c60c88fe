/** What the stability asks of the hull: her righting levers, where her edge goes under, and people to one side. */
import { heldAt, leaningBy, leversOf, rimOver, rimUnder } from '../../boat/hull/heeling';
import type { Burden } from '../../kernel';
import { fact } from '../form/fact';
import { ownNumber } from '../form/own-text';
import type { StabilityAsked } from './stability-inputs';
import { GEOMETRY } from '../../trade/sources';

export const TRIMS = 'K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 4: free trim; from memory';
/** The formula fails where it is off by more than this share, and by more than a ruler shows, m. */
const OFF = 0.05;
const SEEN = 1e-3;

type Loaded = Pick<StabilityAsked, 'centreForward' | 'centreHeight'> & { readonly volume: number };
/** All of it on the centreline. */
const burdenOf = ({ volume, centreForward, centreHeight }: Loaded): Burden => ({
  volume,
  centre: [centreForward, 0, centreHeight],
});
const loaded = fact('the load on the centreline', GEOMETRY, (v: Loaded) => burdenOf(v));

/** One attitude that all the others begin from. */
const standing = fact(
  'the closed hull held upright, sunk and trimmed as the water bears her',
  TRIMS,
  (_: Loaded, { hull, ask }) => heldAt(hull, ask(loaded), 0),
);

export const upright = fact(
  'the closed hull held upright, sunk and trimmed as the water bears her',
  TRIMS,
  (_: Loaded, { hull, ask }) => {
    const { floats, at } = ask(standing);
    const { waterplane, volume } = at.immersed;
    return {
      floats,
      metacentric: at.metacentric.transverse,
      radius: waterplane.transverse / volume,
      freeboard: rimOver(hull, at),
    };
  },
);

export const held = fact(
  'the closed hull held at this heel, free to sink and to trim',
  TRIMS,
  ({ heel }: Loaded & { readonly heel: number }, { hull, ask }) => {
    const { at } = heldAt(hull, ask(loaded), heel, ask(standing).at);
    return { at, freeboard: rimOver(hull, at) };
  },
);

/** The whole curve: for the chart alone, so that no answer and no drawing waits for it. */
export const levers = fact('the same at each 5° up to 90°', TRIMS, (_: Loaded, { hull, ask }) =>
  leversOf(hull, ask(loaded), ask(standing)),
);

export const sheerEdge = fact(
  'the heel at which the water meets the sheer, by strides out from upright, then between the last two',
  GEOMETRY,
  (_: Loaded, { hull, ask }) => rimUnder(hull, ask(loaded), ask(standing)),
);

export const openEdge = fact(
  'the same for the inner edge of the side deck, or the top of its coaming; for the sheer where there is neither',
  GEOMETRY,
  ({ sideDeck, coaming }: Loaded & StabilityAsked, { hull, ask }) =>
    sideDeck === 0 && coaming === 0
      ? ask(sheerEdge)
      : rimUnder(hull, ask(loaded), ask(standing), { inboard: sideDeck, above: coaming }),
);

/** GZ = sin (GM + BM tan^2 / 2). */
export const wallSided = (metacentric: number, radius: number, heel: number): number =>
  Math.sin(heel) * (metacentric + (radius / 2) * Math.tan(heel) ** 2);

/** The first heel of the curve at which the formula is off, and its last where there is none. */
export const wallFails = fact(
  'the first heel of the curve at which formula and lever differ by more than a twentieth, and by more than a ruler shows',
  GEOMETRY,
  (_: Loaded, { ask }) => {
    const { metacentric, radius } = ask(upright);
    const curve = ask(levers);
    const off = curve.find(({ heel, lever }) => {
      const miss = Math.abs(wallSided(metacentric, radius, heel) - lever);
      return heel > 0 && miss > SEEN && miss > OFF * Math.abs(lever);
    });
    return off?.heel ?? curve.at(-1)!.heel; // upright at least
  },
);

const leaning =
  'the closed hull at rest with the centre of all aboard moved to the side by the people’s share';
const people = <K extends 'ownMoment' | 'usMoment' | 'ukMoment'>(moment: K) =>
  fact(
    leaning,
    TRIMS,
    (v: Loaded & { readonly mass: number } & { readonly [M in K]: number }, { hull, ask }) =>
      leaningBy(hull, ask(loaded), v[moment] / v.mass, ask(standing)),
  );
export const own = people('ownMoment');
export const byUs = people('usMoment');
export const byUk = people('ukMoment');

export const breadths = fact('the hull up to her sheer', GEOMETRY, (_: {}, { hull }) => hull.beam);

/** Heels of the table. */
export const heelRows = fact('six heels', GEOMETRY, () =>
  [5, 10, 15, 20, 30, 45].map((degrees) => ({
    id: `heel${degrees}`,
    label: `${degrees}°`,
    value: ownNumber(`${degrees}°`, 'angle'),
  })),
);
