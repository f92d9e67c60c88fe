// Bars over days with the nights shaded: how long each of several things lasts, one under another. Lengths stand for
// hours here, so the drawing has no scale bar.

import { line, note, rectHatch } from './drawing';
import type { Fill, Shape } from './shapes';

/** A stretch of a bar, hours since the first midnight. */
export interface BarStretch {
  readonly from: number;
  readonly to: number;
  readonly fill: Fill;
}

export interface DayBar {
  readonly name: string;
  readonly stretches: readonly BarStretch[];
}

/** Hours since the first midnight; `dawn` and `dusk` since any. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly dawn: number;
  readonly dusk: number;
}

/** An hour, mm: always the same, so that two versions lie on one another rightly. */
const HOUR = 1.4;
/** A row for each week that is shown, mm, and the share of it that the bar takes: so high that names have room. */
const ROW = 16;
const BAR = 0.5;
/** What the narrowest sheet gives to the bars, px; a letter's width on it, and clear room beside a bar. */
const SHEET = 245;
const LETTER = 7.4;
const CLEAR = 6;
/** More rows than these, and only the first of each kind is named. */
const MOST_NAMED = 14;
/** Names of days stand no closer than this, px. */
const DAY_ROOM = 28;

/** Bars from the top down, their names beside them, the days along the top. */
export function barsOverDays(bars: readonly DayBar[], span: Span, dayName: (day: number) => string): Shape[] {
  const row = ROW * Math.ceil((span.to - span.from) / (7 * 24));
  const bar = BAR * row;
  const wide = (span.to - span.from) * HOUR;
  const bottom = -bars.length * row;
  const px = SHEET / wide;
  const x = (hour: number) => (Math.min(Math.max(hour, span.from), span.to) - span.from) * HOUR;
  return [
    ...nightsOf(span).map(([from, to]) =>
      rectHatch(x(from), bottom, x(to) - x(from), -bottom, 'plain', { pen: 'none' }),
    ),
    line(
      [
        [0, 0],
        [wide, 0],
      ],
      { pen: 'thin' },
    ),
    ...daysNamed(span, 24 * HOUR * px).map((day) => note(dayName(day), { at: [x(day * 24 + 12), 10 / px] })),
    ...bars.flatMap(({ name, stretches }, at) => {
      const y = -(at + 0.5) * row - bar / 2;
      const drawn = stretches.filter(({ from, to }) => to > span.from && from < span.to && to > from);
      const begins = Math.min(wide, ...drawn.map(({ from }) => x(from)));
      const ends = Math.max(0, ...drawn.map(({ to }) => x(to)));
      const half = ((name.length * LETTER) / 2 + CLEAR) / px;
      // On the side with more room.
      const beside =
        wide - ends > begins ? Math.min(ends + half, wide - half) : Math.max(begins - half, half);
      return [
        ...drawn.map(({ from, to, fill }) =>
          rectHatch(x(from), y, x(to) - x(from), bar, fill, { pen: 'thin' }),
        ),
        ...(isNamed(bars, at) ? [note(name, { at: [beside, y + bar / 2], inRow: true })] : []),
      ];
    }),
  ];
}

function isNamed(bars: readonly DayBar[], at: number): boolean {
  const kind = (name: string | undefined) => name?.replace(/ \d+$/, '');
  return bars.length <= MOST_NAMED || kind(bars[at]?.name) !== kind(bars[at - 1]?.name);
}

function nightsOf({ from, to, dawn, dusk }: Span): (readonly [number, number])[] {
  const first = Math.floor(from / 24) - 1;
  const lasts = (((dawn - dusk) % 24) + 24) % 24;
  return Array.from({ length: Math.ceil(to / 24) - first + 1 }, (_, i): readonly [number, number] => [
    (first + i) * 24 + dusk,
    (first + i) * 24 + dusk + lasts,
  ]).filter(([begins, ends]) => ends > from && begins < to);
}

/** Days that are named at their noon; where they would stand too close, only some. */
function daysNamed({ from, to }: Span, dayWide: number): number[] {
  const every = Math.max(1, Math.ceil(DAY_ROOM / dayWide));
  const first = Math.floor(from / 24);
  return Array.from({ length: Math.ceil(to / 24) - first }, (_, i) => first + i).filter(
    (day) => (day - first) % every === 0 && day * 24 + 12 > from && day * 24 + 12 < to,
  );
}
