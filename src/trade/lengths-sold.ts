/** Things that are sold by fixed lengths: which, in the metric and in the inch shop, and how they are called there. */
import { INCH } from '../measure/si';
import type { SizesSold, SoldSize } from '../measure';

/** Lengths that differ by less are the same, m. */
const HAIR = 1e-6;

interface SoldLengths {
  /** m */
  readonly metric: readonly number[];
  /** m */
  readonly inch: readonly number[];
}

/** Lengths of wood screws that shops keep, m. Common practice, no source. */
export const screwLengths: SoldLengths = {
  metric: [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120].map((mm) => mm / 1000),
  inch: [0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3, 3.5, 4, 4.5].map(
    (inches) => inches * INCH,
  ),
};

/**
 * Lengths of sawn softwood that yards keep, m: by 0.3 m from 1.8 to 6.3 m (from memory: EN 1313-1, its usual
 * lengths), by two feet from 6 to 20 ft (from memory: American Softwood Lumber Standard PS 20, multiples of a foot;
 * two feet by custom).
 */
export const lumberLengths: SoldLengths = {
  metric: Array.from({ length: 16 }, (_, i) => (18 + 3 * i) / 10),
  inch: Array.from({ length: 8 }, (_, i) => (6 + 2 * i) * 12 * INCH),
};

/** A length that is sold is called as it is sold, where its own system is not the builder's too: a 30 mm screw stays one. */
function shelfOf({ metric, inch }: SoldLengths, inMetric: Called, inInches: Called): SizesSold {
  const as = (sold: readonly number[], called: Called) => (metres: number) => {
    const size = sold.find((length) => Math.abs(length - metres) < HAIR);
    return size === undefined ? undefined : { ...called(size), size };
  };
  const ofMetric = as(metric, inMetric);
  const ofInch = as(inch, inInches);
  return {
    called: (metres, { length }) =>
      length === 'mm' ? (ofMetric(metres) ?? ofInch(metres)) : (ofInch(metres) ?? ofMetric(metres)),
    sizes: ({ length }) => (length === 'mm' ? metric : inch),
  };
}

type Called = (metres: number) => Pick<SoldSize, 'text' | 'spoken'>;

const tidy = (value: number) => String(Number(value.toFixed(6)));

const millimetres: Called = (metres) => {
  const figure = tidy(metres * 1000);
  return { text: `${figure} mm`, spoken: `${figure} millimetres` };
};
const wholeMetres: Called = (metres) => {
  const figure = metres.toFixed(1);
  return { text: `${figure} m`, spoken: `${figure} metres` };
};
const feet: Called = (metres) => {
  const figure = tidy(metres / (12 * INCH));
  return { text: `${figure} ft`, spoken: `${figure} feet` };
};
/** `1 1/4 in`: shops keep screws by the eighth. */
const eighths: Called = (metres) => {
  const parts = Math.round((metres / INCH) * 8);
  const [whole, rest] = [Math.floor(parts / 8), parts % 8];
  const fraction = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'][rest]!; // less than eight
  const figure = whole === 0 ? fraction : `${whole}${fraction && ` ${fraction}`}`;
  return {
    text: `${figure} in`,
    spoken: whole === 0 ? `${fraction} of an inch` : `${figure.replace(' ', ' and ')} inches`,
  };
};

export const screwShelf = shelfOf(screwLengths, millimetres, eighths);
export const lumberShelf = shelfOf(lumberLengths, wholeMetres, feet);
