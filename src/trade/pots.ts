/** How much epoxy one pot may hold and how fast a pair of hands spreads it. The maker's sheet outranks every figure here. */
import { INCH, OUNCE } from '../measure/si';
import type { Cited, TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

/** Most mixed epoxy in one pot, kg; and the same as it is said by ounces. */
export const potful = {
  cup: practice(0.35, '350 to 500 g (12 to 18 oz), of which the surer'),
  hotCup: practice(0.15, '150 to 250 g (5 to 9 oz) of a fast hardener or in heat, of which the surer'),
  tray: practice(0.8, 'up to 800 g (28 oz), if it is poured out within a minute'),
  hotTray: practice(0.25, '150 to 250 g (5 to 9 oz) of a fast hardener or in heat, poured out at once'),
} as const satisfies Record<string, Cited>;
export const potfulOunces = {
  cup: practice(12 * OUNCE, '12 to 18 oz (350 to 500 g), of which the surer'),
  hotCup: practice(5 * OUNCE, '5 to 9 oz (150 to 250 g) of a fast hardener or in heat, of which the surer'),
  tray: practice(28 * OUNCE, 'up to 28 oz (800 g), if it is poured out within a minute'),
  hotTray: practice(8 * OUNCE, '5 to 9 oz (150 to 250 g) of a fast hardener or in heat, poured out at once'),
} as const satisfies Record<keyof typeof potful, Cited>;

/** Most that anybody mixes in a cup, kg. */
export const mostInCup: Cited = practice(0.5, '350 to 500 g (12 to 18 oz)');

/** In air warmer than this pots are made smaller, K. */
export const hotFrom: Cited = practice(300.15, 'above 27 °C (80 °F)');

/** Width of a mixing cup at its foot, m; and by inches. */
export const cupWidth: Cited = practice(0.08, 'a cup that holds half a litre (a pint)');
export const cupWidthInch: Cited = practice(3 * INCH, 'a cup that holds a pint (half a litre)');

/** One square metre, or one metre of fillet, spread by one pair of hands, s. */
export const spreading: TradeTable<'pace'> = {
  id: 'spreading',
  columns: { pace: { kind: 'minutes', meaning: 'time to spread a square metre, or a metre of fillet, by' } },
  rows: [
    {
      id: 'seal',
      label: 'sealing wood',
      cells: { pace: practice(150, 'by roller, the middle of 0.3 to 0.5 m² (3 to 5 ft²) a minute') },
    },
    {
      id: 'wet',
      label: 'wetting out cloth',
      cells: {
        pace: practice(
          400,
          '203 g/m² (6 oz/yd²) lying flat, the middle of 0.10 to 0.20 m² (1 to 2 ft²) a minute',
        ),
      },
    },
    {
      id: 'fill',
      label: 'fill coats',
      cells: { pace: practice(150, 'by roller as in sealing, 0.3 to 0.5 m² (3 to 5 ft²) a minute') },
    },
    {
      id: 'fillets',
      label: 'fillets',
      cells: { pace: practice(400 / 3, 'the middle of 0.3 to 0.6 m (1 to 2 ft) a minute') },
    },
  ],
};

const kit = (value: number, said: string): Cited => ({
  value,
  source: `an aircraft-kit maker's manual, on resin: ${said}`,
  known: 'published',
});

/** Epoxy colder than this cures so slowly that thin coats may stay soft for days, K. */
export const slowBelow: Cited = kit(288.15, 'below 15 °C (59 °F) thin laminates may stay uncured for days');
/** Nobody warms resin above this to lay it up, K. */
export const warmedTo: Cited = kit(308.15, 'resin warmed in a water bath to 35 °C (95 °F) at most');
/** So much warmer, and resin is half as thick, K. */
export const halfAsThick: Cited = kit(5, '5 °C (9 °F) warmer nearly halves the viscosity');

/** Least time to stir resin and hardener together, s. */
export const leastStirring: Cited = {
  value: 60,
  source: 'an epoxy maker’s page on mixing: at least a minute, longer when it is cold',
  known: 'published',
};

/** Energy of activation of an amine that cures an epoxy, kJ/mol. */
export const activation: Cited = {
  value: 55,
  source:
    '"Isoconversional kinetic analysis of stoichiometric and off-stoichiometric epoxy-amine cures", Thermochimica Acta 447 (2006): 55 to 60 kJ/mol, of an aromatic amine',
  known: 'published',
};
