/**
 * Drills as they are sold, and the one to take for a hole.
 *
 * A pilot hole that is too wide holds no thread, a shank hole that is too narrow catches it: the one takes the next
 * drill below what is asked, the other the next above.
 */
import { INCH } from '../measure/si';
import { type SizesSold, type Shown, type SoldSize } from '../measure';

/** Sold sizes and reckoned ones meet exactly; rounding is forgiven. */
const HAIR = 1e-7;

/** Twist drills No. 1 to No. 60, in. Source: from memory, ASME B94.11M. */
export const numberDrills: readonly number[] =
  '0.228 0.221 0.213 0.209 0.2055 0.204 0.201 0.199 0.196 0.1935 0.191 0.189 0.185 0.182 0.18 0.177 0.173 0.1695 0.166 0.161 0.159 0.157 0.154 0.152 0.1495 0.147 0.144 0.1405 0.136 0.1285 0.12 0.116 0.113 0.111 0.11 0.1065 0.104 0.1015 0.0995 0.098 0.096 0.0935 0.089 0.086 0.082 0.081 0.0785 0.076 0.073 0.07 0.067 0.0635 0.0595 0.055 0.052 0.0465 0.043 0.042 0.041 0.04'
    .split(' ')
    .map(Number);

/** Twist drills A to Z, in. Source: from memory, ASME B94.11M. */
export const letterDrills: readonly number[] =
  '0.234 0.238 0.242 0.246 0.25 0.257 0.261 0.266 0.272 0.277 0.281 0.29 0.295 0.302 0.316 0.323 0.332 0.339 0.348 0.358 0.368 0.377 0.386 0.397 0.404 0.413'
    .split(' ')
    .map(Number);
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * Drills by the 64th of an inch are in every set, those by number and letter are not: they serve where the nearest
 * 64th on the right side is off by more than this share. Common practice, no source.
 */
const NEAR_ENOUGH = 0.05;

/** Drills by tenths of a millimetre, 0.5 to 14 mm. Source: from memory, ISO 235, jobber drills. */
const TENTHS = [5, 140] as const;
/** Drills by 64ths, 1/64 to 1/2 in. Source: from memory, ASME B94.11M. */
const SIXTY_FOURTHS = [1, 32] as const;

type Side = 'below' | 'above';

/** The next whole number of parts on that side; undefined outside the set. */
function nextOf(parts: number, side: Side, [least, most]: readonly [number, number]): number | undefined {
  const whole = side === 'below' ? Math.floor(parts + HAIR) : Math.ceil(parts - HAIR);
  return whole < least || whole > most ? undefined : whole;
}

function metricDrill(metres: number, side: Side): SoldSize | undefined {
  const tenths = nextOf(metres * 1e4, side, TENTHS);
  if (tenths === undefined) return undefined;
  const figure = (tenths / 10).toFixed(1);
  return { text: `${figure} mm`, spoken: `${figure} millimetres`, size: tenths / 1e4 };
}

function inchDrill(metres: number, side: Side): SoldSize | undefined {
  const inches = metres / INCH;
  const off = (size: number) => (side === 'below' ? inches - size : size - inches);
  const parts = nextOf(inches * 64, side, SIXTY_FOURTHS);
  const common = parts === undefined ? [] : [sixtyFourth(parts)];
  const near = common.filter(({ size }) => off(size / INCH) <= NEAR_ENOUGH * inches);
  const gauged = [...numberDrills.map(numbered), ...letterDrills.map(lettered)].filter(
    ({ size }) => off(size / INCH) >= -HAIR,
  );
  const [best] =
    near.length > 0
      ? near
      : [...common, ...gauged].toSorted((a, b) => off(a.size / INCH) - off(b.size / INCH));
  return best;
}

const sixtyFourth = (parts: number): SoldSize => ({ ...inWholes(parts), size: (parts * INCH) / 64 });

/** `5/64 in`, `1/2 in`, `1 1/4 in`, from 64ths. */
function inWholes(parts: number): Pick<SoldSize, 'text' | 'spoken'> {
  const whole = Math.floor(parts / 64);
  let [top, bottom] = [parts % 64, 64];
  if (top === 0) return { text: `${whole} in`, spoken: whole === 1 ? '1 inch' : `${whole} inches` };
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0
    ? { text: `${top}/${bottom} in`, spoken: `${top}/${bottom} of an inch` }
    : { text: `${whole} ${top}/${bottom} in`, spoken: `${whole} and ${top}/${bottom} inches` };
}

function numbered(inches: number, at: number): SoldSize {
  return { text: `No. ${at + 1} drill`, spoken: `number ${at + 1} drill`, size: inches * INCH };
}

function lettered(inches: number, at: number): SoldSize {
  return { text: `letter ${LETTERS[at]} drill`, spoken: `letter ${LETTERS[at]} drill`, size: inches * INCH };
}

/**
 * The drill sold for a hole of this width.
 *
 * @param metres width asked
 * @param side the drill may be no wider (`below`) or no narrower (`above`)
 * @returns undefined beyond the drills listed: in millimetres 0.5 to 14 mm, in inches 1/64 to 1/2 in
 */
export function drillFor(metres: number, side: Side, shown: Shown): SoldSize | undefined {
  return shown.length === 'mm' ? metricDrill(metres, side) : inchDrill(metres, side);
}

/** Bits for plain holes that sets hold, mm and 16ths of an inch. Common practice, no source. */
export const bits = {
  metric: [3, 4, 5, 6, 8, 10, 12, 14, 15, 16, 18, 20, 22, 25, 30, 35, 40, 50],
  inch: [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 24, 28, 32],
} as const;

const inMetres = {
  metric: bits.metric.map((width) => width / 1000),
  inch: bits.inch.map((parts) => (parts * INCH) / 16),
};

/** A bit for a plain hole is called as it is sold, where its own system is not the builder's too: 1/2 in stays so. */
export const bitShelf: SizesSold = {
  called: (metres, { length }) => {
    const among = (sizes: readonly number[]) => sizes.some((size) => Math.abs(size - metres) < HAIR);
    const systems = length === 'mm' ? (['metric', 'inch'] as const) : (['inch', 'metric'] as const);
    const sold = systems.find((system) => among(inMetres[system]));
    if (sold === undefined) return undefined;
    const figure = Number((metres * 1000).toFixed(3));
    return sold === 'metric'
      ? { text: `${figure} mm`, spoken: `${figure} millimetres`, size: metres }
      : { ...inWholes(Math.round((metres / INCH) * 64)), size: metres };
  },
  sizes: ({ length }) => inMetres[length === 'mm' ? 'metric' : 'inch'],
};

/** How the drill of a pilot hole is called, and of a hole for the shank. */
export const pilotShelf: SizesSold = { called: (metres, shown) => drillFor(metres, 'below', shown) };
export const shankShelf: SizesSold = { called: (metres, shown) => drillFor(metres, 'above', shown) };
