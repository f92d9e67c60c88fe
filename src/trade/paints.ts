/**
 * Paints and varnishes by their kind: what stays of them when they are dry, how thick a coat lies, when the next may
 * follow. The sheet of the tin in hand outranks every figure here.
 */
import type { Cited, TradeTable } from './table';

const practice = (value: number, said: string): Cited => ({
  value,
  source: `common practice, no source: ${said}`,
  known: 'common practice',
});

const HOUR = 3600;
const DAY = 24 * HOUR;
const at20 = (hours: number, said: string) => practice(hours * HOUR, `${said} at 20 °C (68 °F)`);

export type PaintColumn = 'solids' | 'film' | 'coats' | 'recoat' | 'hard';

export const paints: TradeTable<PaintColumn> = {
  id: 'paints',
  columns: {
    solids: { kind: 'share', meaning: 'solids by volume' },
    film: { kind: 'film', meaning: 'dry film of one coat' },
    coats: { kind: 'count', meaning: 'coats' },
    recoat: { kind: 'time', meaning: 'time from one coat to the next' },
    hard: { kind: 'time', meaning: 'time until it is hard' },
  },
  rows: [
    {
      id: 'primer',
      label: 'primer or undercoat',
      cells: {
        solids: practice(0.5, 'the middle of 45 to 55 %'),
        film: practice(42.5e-6, 'the middle of 35 to 50 µm (1.4 to 2 thou)'),
        coats: practice(2, 'two'),
        recoat: at20(20, 'the middle of 16 to 24 h'),
        hard: practice(3 * DAY, 'three days'),
      },
    },
    {
      id: 'enamel',
      label: 'oil paint or enamel',
      cells: {
        solids: practice(0.5, 'the middle of 45 to 55 %'),
        film: practice(35e-6, 'the middle of 30 to 40 µm (1.2 to 1.6 thou)'),
        coats: practice(2, 'two or three'),
        recoat: at20(20, 'the middle of 16 to 24 h'),
        hard: practice(7 * DAY, 'a week'),
      },
    },
    {
      id: 'varnish',
      label: 'varnish',
      cells: {
        solids: practice(0.475, 'the middle of 40 to 55 %'),
        film: practice(25e-6, 'the middle of 20 to 30 µm (0.8 to 1.2 thou)'),
        coats: practice(6, 'six to eight, and one or two more each year'),
        recoat: at20(20, 'the middle of 16 to 24 h'),
        hard: practice(7 * DAY, 'a week'),
      },
    },
    {
      id: 'polyurethane',
      label: 'two-part polyurethane',
      cells: {
        solids: practice(0.5, 'the middle of 45 to 55 %'),
        film: practice(45e-6, 'the middle of 40 to 50 µm (1.6 to 2 thou)'),
        coats: practice(2, 'two or three'),
        recoat: at20(15, 'the middle of 6 to 24 h'),
        hard: practice(7 * DAY, 'a week'),
      },
    },
    {
      id: 'epoxyPrimer',
      label: 'epoxy primer',
      cells: {
        solids: practice(0.575, 'the middle of 45 to 70 %'),
        film: practice(75e-6, 'the middle of 50 to 100 µm (2 to 4 thou)'),
        coats: practice(2, 'two'),
        recoat: at20(15, 'the middle of 6 to 24 h'),
        hard: practice(7 * DAY, 'a week'),
      },
    },
    {
      id: 'house',
      label: 'acrylic house paint',
      cells: {
        solids: practice(0.375, 'the middle of 35 to 40 %'),
        film: practice(37.5e-6, 'the middle of 35 to 40 µm (1.4 to 1.6 thou)'),
        coats: practice(2, 'two or three'),
        recoat: at20(4, 'the middle of 2 to 6 h'),
        hard: practice(22 * DAY, 'the middle of 14 to 30 days'),
      },
    },
  ],
};

/** Share of the paint bought that stays in tin, tray and roller. */
export const handLoss: Cited = {
  value: 0.15,
  source: 'a maker of marine coatings, on spreading rates: 10 to 15 % by brush and roller',
  known: 'published',
};

/** Share of the paint bought that an uneven film takes. */
export const unevenLoss: Cited = {
  value: 0.075,
  source:
    'a maker of marine coatings, on spreading rates: 5 to 10 % for an uneven film, 5 to 20 % on a rough face',
  known: 'published',
};

/** Face that one roller cover coats before it is thrown away, m². */
export const coverReach: Cited = practice(
  10,
  'one foam cover for 10 m² (100 ft²), and a fresh one for each coat',
);

/** Coats of varnish that keep the sun off epoxy. */
export const sunCoats: Cited = practice(5, 'five coats of varnish that stops ultraviolet light');

/** Paint is thinned by no more, share by volume. */
export const mostThinner: Cited = practice(0.2, 'by a fifth; first coats of varnish by half');
