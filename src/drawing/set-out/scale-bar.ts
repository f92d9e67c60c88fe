// The scale bar: a round length in the reader's units.
import { MM_PER_INCH } from '../../measure/si';

const MM_PER_FOOT = 12 * MM_PER_INCH;

interface RoundLength {
  readonly length: number;
  readonly text: string;
  /** Into how many equal parts the bar is divided. */
  readonly parts: number;
}

const METRIC: readonly RoundLength[] = [-2, -1, 0, 1, 2, 3, 4].flatMap((power) =>
  ([1, 2, 5] as const).map((digit) => {
    const length = Number(`${digit}e${power}`);
    const text = length >= 1000 ? `${length / 1000} m` : `${length} mm`;
    return { length, text, parts: digit === 5 ? 5 : digit === 2 ? 4 : 2 };
  }),
);

const INCH: readonly RoundLength[] = [
  ...(
    [
      [0.001, '0.001 in', 2],
      [0.002, '0.002 in', 2],
      [0.005, '0.005 in', 5],
      [0.01, '0.01 in', 2],
      [0.02, '0.02 in', 2],
      [1 / 32, '1/32 in', 2],
      [1 / 16, '1/16 in', 2],
      [1 / 8, '1/8 in', 2],
      [1 / 4, '1/4 in', 2],
      [1 / 2, '1/2 in', 2],
      [1, '1 in', 4],
      [2, '2 in', 4],
      [3, '3 in', 3],
      [6, '6 in', 6],
    ] as const
  ).map(([inches, text, parts]) => ({ length: inches * MM_PER_INCH, text, parts })),
  ...([1, 2, 3, 5, 10, 20, 50] as const).map((feet) => ({
    length: feet * MM_PER_FOOT,
    text: `${feet} ft`,
    parts: feet === 1 ? 4 : feet === 10 || feet === 20 || feet === 50 ? 5 : feet,
  })),
];

export type ScaleUnits = 'metric' | 'inch';

/** The longest round length that takes no more than `room` px; null when none is that short. */
export function scaleBar(
  scale: number,
  room: number,
  units: ScaleUnits,
): (RoundLength & { readonly width: number }) | null {
  const longest = (units === 'metric' ? METRIC : INCH).findLast((l) => l.length * scale <= room);
  return longest ? { ...longest, width: longest.length * scale } : null;
}
