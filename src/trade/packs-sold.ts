/** Tins, bottles and cartridges as shops sell resin, glue and paint, and which of them hold what is needed. */
import { INCH } from '../measure/si';
import type { SizesSold, SoldSize } from '../measure';

const LITRE = 1e-3;
/** US gallon, m³: 231 cubic inches. */
const GALLON = 231 * INCH ** 3;
/** Sizes that differ by less than this share are the same. */
const HAIR = 1e-6;

/** What shops keep, m³, rising. Common practice, no source: half a pint, pint, quart, gallon, five gallons. */
export const packsSold = {
  metric: [0.25, 0.5, 1, 4, 15].map((litres) => litres * LITRE),
  inch: [1 / 16, 1 / 8, 1 / 4, 1, 5].map((gallons) => gallons * GALLON),
} as const;

type Called = (size: number) => readonly [count: number, one: string, many: string, spoken: string];

const metric: Called = (size) =>
  size < LITRE * (1 - HAIR)
    ? [Math.round((size / LITRE) * 1000), 'mL', 'mL', 'millilitres']
    : [Number((size / LITRE).toFixed(3)), 'L', 'L', 'litres'];

/** Below a pint in fluid ounces; a pint, a quart and a gallon by their names. */
const inch: Called = (size) => {
  const [unit, one] = (
    [
      [GALLON, 'gallon'],
      [GALLON / 4, 'quart'],
      [GALLON / 8, 'pint'],
    ] as const
  ).find(([least]) => size >= least * (1 - HAIR)) ?? [GALLON / 128, 'fl oz'];
  const count = Number((size / unit).toFixed(3));
  return one === 'fl oz' ? [count, one, one, 'fluid ounces'] : [count, one, `${one}s`, `${one}s`];
};

function named(size: number, called: Called): Pick<SoldSize, 'text' | 'spoken'> {
  const [count, one, many, spoken] = called(size);
  return {
    text: `${count} ${count === 1 ? one : many}`,
    spoken: `${count} ${count === 1 ? spoken.replace(/s$/, '') : spoken}`,
  };
}

const soldIn = (isMetric: boolean) =>
  isMetric ? ([packsSold.metric, metric] as const) : ([packsSold.inch, inch] as const);

/** One pack is called as it is sold, where its own system is not the builder's too: a tin of 4 L stays one. */
export const packShelf: SizesSold = {
  called: (volume, { length }) => {
    for (const isMetric of length === 'mm' ? [true, false] : [false, true]) {
      const [sizes, called] = soldIn(isMetric);
      const size = sizes.find((sold) => Math.abs(sold - volume) <= HAIR * sold);
      if (size !== undefined) return { ...named(size, called), size: volume };
    }
    return undefined;
  },
  sizes: ({ length }) => soldIn(length === 'mm')[0],
};

/** So many packs of a size. */
type Lot = readonly [count: number, size: number];

/**
 * The packs that hold a volume: whole ones of the largest that it fills, and for the rest the smallest that holds it,
 * or several of the next size down. What makes up a larger pack is bought as one.
 *
 * @param need m³, above zero
 * @param sizes m³, rising
 */
export function packsFor(need: number, sizes: readonly number[]): readonly Lot[] {
  const wholes = (volume: number, size: number) => Math.ceil(volume / size - HAIR);
  const at = sizes.findLastIndex((size) => size <= need * (1 + HAIR));
  // Less than the smallest pack holds.
  if (at < 0) return [[1, sizes[0]!]];
  const size = sizes[at]!;
  const count = Math.floor(need / size + HAIR);
  const rest = need - count * size;
  if (rest <= HAIR * size) return asLarger([count, size], sizes[at + 1]);
  const smaller = sizes.slice(0, at);
  const one = smaller.find((holds) => holds >= rest * (1 - HAIR));
  const below = one ?? smaller.at(-1);
  const lot: Lot = below === undefined ? [1, size] : [wholes(rest, below), below];
  return lot[0] * lot[1] >= size * (1 - HAIR)
    ? asLarger([count + 1, size], sizes[at + 1])
    : [[count, size], lot];
}

const asLarger = (lot: Lot, larger: number | undefined): readonly Lot[] =>
  larger !== undefined && lot[0] * lot[1] >= larger * (1 - HAIR) ? [[1, larger]] : [lot];

/** What must be bought of what is sold by the pack: `3 quarts`, `1 gallon and 1 pint`, `2 × 1 L`. */
export const packsShelf: SizesSold = {
  called: (volume, { length }) => {
    if (volume <= 0) return undefined;
    const [sizes, called] = soldIn(length === 'mm');
    const lots = packsFor(volume, sizes);
    const texts = lots.map(([count, size]) => lotNamed(count, size, called));
    return {
      text: texts.map(({ text }) => text).join(' and '),
      spoken: texts.map(({ spoken }) => spoken).join(' and '),
      size: lots.reduce((sum, [count, size]) => sum + count * size, 0),
    };
  },
};

/** `3 quarts` are three tins; three of 1 L are not one of 3 L. */
function lotNamed(count: number, size: number, called: Called): Pick<SoldSize, 'text' | 'spoken'> {
  const [holds, , many, spoken] = called(size);
  if (count === 1) return named(size, called);
  return holds === 1 && called === inch
    ? { text: `${count} ${many}`, spoken: `${count} ${spoken}` }
    : { text: `${count} × ${named(size, called).text}`, spoken: `${count} of ${named(size, called).spoken}` };
}
