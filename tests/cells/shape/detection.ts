/** How often the search for a bad number finds it: tried on random fair hulls with one number spoilt. */
import type { Hull } from '../../../src/boat';
import { type LineView, longLines } from '../../../src/cells/shape/long-line';
import { movedHull } from '../../../src/cells/shape/moved-hull';
import { ALIKE, firstSuspect, rivalOn, suspectOn } from '../../../src/cells/shape/suspects';
import { chance, type Chance, randomHull } from './random-hulls';

/** As the cell has them. */
const reading = { nearest: 0.0015, blunder: 0.006 };

export const tried: readonly { readonly stations: number; readonly errors: readonly number[] }[] = [
  { stations: 7, errors: [0.012, 0.025, 0.05, 0.1] },
  { stations: 9, errors: [0.01, 0.02, 0.04, 0.08] },
  { stations: 12, errors: [0.005, 0.01, 0.02, 0.04] },
  { stations: 15, errors: [0.005, 0.01, 0.02, 0.04] },
];
export const HULLS = 150;

/** What is found, kept: the tests and the page ask for the same hulls. */
function kept<A extends readonly unknown[], T>(find: (...asked: A) => T): (...asked: A) => T {
  const known = new Map<string, T>();
  return (...asked) => {
    const key = asked.join();
    const found = known.get(key) ?? find(...asked);
    known.set(key, found);
    return found;
  };
}

/** Shares of the hulls with an error at a frame (or at an end), 0 to 1. */
export interface Found {
  readonly first: number;
  readonly standsOut: number;
  readonly another: number;
}

interface Spot {
  readonly edge: string;
  readonly view: LineView;
  readonly index: number;
}

/** One number anywhere in the table: a frame's, or one of the two ends'. */
function spotOn(hull: Hull, next: Chance, atEnd: boolean): Spot {
  const lines = longLines(hull);
  const { edge, view, x } = lines[Math.floor(next() * lines.length)]!;
  const index = atEnd ? Math.floor(next() * 2) * (x.length - 1) : 1 + Math.floor(next() * (x.length - 2));
  return { edge: edge.name, view, index };
}

/** The hull with one number out by so much, either way; null where its own checks refuse it. */
function spoilt(hull: Hull, { edge, view, index }: Spot, error: number, next: Chance): Hull | null {
  const by = next() < 0.5 ? error : -error;
  const made = movedHull(hull, [{ edge, view, station: hull.stations[index]!.name, by }]);
  return made.faults.length === 0 ? made : null;
}

export const detection = kept((stations: number, error: number, atEnd: boolean): Found => {
  const next = chance(stations * 1000 + Math.round(error * 1e4) + (atEnd ? 7 : 0));
  let [first, standsOut, another] = [0, 0, 0];
  for (let done = 0; done < HULLS;) {
    const hull = randomHull(next, stations);
    const spot = spotOn(hull, next, atEnd);
    const bad = spoilt(hull, spot, error, next);
    if (!bad) continue;
    done++;
    const { line, station, proof } = firstSuspect(bad, reading);
    const hit = line.edge.name === spot.edge && line.view === spot.view && station.index === spot.index;
    if (hit) first++;
    if (hit && proof > 1) standsOut++;
    if (!hit && proof > 1) another++;
  }
  return { first: first / HULLS, standsOut: standsOut / HULLS, another: another / HULLS };
});

/** What is said of an error beside an end, where another number can upset the run alike: shares of the hulls. */
export interface BesideEnd {
  /** Named first, or as nearly as likely as the first. */
  readonly told: number;
  /** Another is accused, and this one is not spoken of. */
  readonly misled: number;
}

export const besideEnd = kept((stations: number, error: number): BesideEnd => {
  const next = chance(stations * 77 + Math.round(error * 1e4));
  let [told, misled] = [0, 0];
  for (let done = 0; done < HULLS;) {
    const hull = randomHull(next, stations);
    const spot = { ...spotOn(hull, next, false), index: next() < 0.5 ? 1 : stations - 2 };
    const bad = spoilt(hull, spot, error, next);
    if (!bad) continue;
    done++;
    const { line, station, proof } = firstSuspect(bad, reading);
    const rival = rivalOn(bad, line, reading);
    const onLine = line.edge.name === spot.edge && line.view === spot.view;
    const named = [station, ...(rival.nearly > ALIKE ? [rival.station] : [])].some(
      ({ index }) => onLine && index === spot.index,
    );
    if (named) told++;
    else if (proof > 1) misled++;
  }
  return { told: told / HULLS, misled: misled / HULLS };
});

/** Share of fair hulls in which some number is said to stand out. */
export const falseAlarms = kept((stations: number): number => {
  const next = chance(stations);
  let alarms = 0;
  for (let k = 0; k < 2 * HULLS; k++)
    if (firstSuspect(randomHull(next, stations), reading).proof > 1) alarms++;
  return alarms / (2 * HULLS);
});

/** How often an error of so many times what the cell says would show at that frame, is named as standing out. */
export function namedAt(stations: number, times: number): number {
  const next = chance(stations * 31 + Math.round(times * 10));
  let named = 0;
  for (let done = 0; done < HULLS;) {
    const hull = randomHull(next, stations);
    const spot = spotOn(hull, next, false);
    const line = longLines(hull).find(({ edge, view }) => edge.name === spot.edge && view === spot.view)!;
    const hidden = line.run(reading.nearest / Math.sqrt(12)).corrections[spot.index]!.hidden;
    const bad = spoilt(hull, spot, times * Math.max(hidden, reading.blunder), next);
    if (!bad) continue;
    done++;
    const now = longLines(bad).find(({ edge, view }) => edge.name === spot.edge && view === spot.view)!;
    const { station, proof } = suspectOn(bad, now, reading);
    if (station.index === spot.index && proof > 1) named++;
  }
  return named / HULLS;
}

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

/** The page docs/fairness.md. */
export function fairnessPage(): string {
  const rows = tried.flatMap(({ stations, errors }) =>
    errors.map((error) => {
      const frames = detection(stations, error, false);
      const ends = detection(stations, error, true);
      const cells = [frames.first, frames.standsOut, frames.another, ends.first, ends.standsOut].map(percent);
      return `| ${stations} | ${(1000 * error).toFixed(0)} mm | ${cells.join(' | ')} |`;
    }),
  );
  const beside = [
    [7, 0.05],
    [9, 0.02],
    [12, 0.01],
  ].map(([stations = 0, error = 0]) => {
    const { told, misled } = besideEnd(stations, error);
    return `| ${stations} | ${(1000 * error).toFixed(0)} mm | ${percent(told)} | ${percent(misled)} |`;
  });
  const alarms = tried.map(
    ({ stations }) => `| ${stations} | ${(100 * falseAlarms(stations)).toFixed(1)} % |`,
  );
  return `# How surely a bad number is found

Made by \`tests/cells/shape/detection.test.ts\`, which fails when it no longer holds; \`npx vitest run --project unit
tests/cells/shape/detection.test.ts -u\` writes it anew.

The cell *Is the line fair?* asks every line of the table, in plan and in profile, which one correction leaves its run
of third differences likest a fair line's (\`src/kernel/fairness.ts\`). What a fair line's run is like was set by
trial on hulls such as these; the hulls here are drawn at random in many fair shapes (\`tests/cells/shape/random-hulls.ts\`
says how), ${HULLS} for each row, and one number of each table is spoilt: any line, plan or profile, either way.

*Named first*: the search puts station, line and view first of all in the table. *Stands out*: it also says so, for
the correction is more than fair lines show. *Another accused*: it says so of some other number.

| Stations | Error | At a frame: named first | stands out | another accused | At an end: named first | stands out |
|---|---|---|---|---|---|---|
${rows.join('\n')}

Errors at the two ends upset a single difference, so only large ones show; a frame beside an end is told less surely than
one amidships, for the end itself or the next frame can upset the run alike. Where another number stands out at least
${percent(ALIKE)} as far as the first, the cell names both. Errors beside an end:

| Stations | Error | Named first, or as nearly as likely | another accused without a word of it |
|---|---|---|---|
${beside.join('\n')}

Below about 6 mm (1/4 in) nothing is said to
stand out, since as much is faired away without a word.

Fair hulls, without any error, in which some number is said to stand out (${2 * HULLS} of each):

| Stations | False alarms |
|---|---|
${alarms.join('\n')}

What this does not show: two errors side by side, a whole frame set wrong, and shapes unlike these, as a tunnel, a
step or a knuckle in a line. There the cell may be wrong either way.
`;
}
