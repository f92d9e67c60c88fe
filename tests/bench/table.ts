/** Tables of the bench as plain text, and the figures that stand in them. */

export interface Section {
  readonly title: string;
  /** What is measured and how, in a sentence or two. */
  readonly says: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** The section as text, columns aligned; numbers to three figures, to the right. */
export function write({ title, says, head, rows }: Section): string {
  const texts = [head, ...rows].map((row) =>
    row.map((cell) => (typeof cell === 'number' ? figure(cell) : cell)),
  );
  const widths = head.map((_, i) => Math.max(...texts.map((row) => (row[i] ?? '').length)));
  const line = (row: readonly string[]) =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join('  ');
  const [first = [], ...rest] = texts;
  return [
    title,
    says,
    '',
    line(first),
    line(widths.map((width) => '-'.repeat(width))),
    ...rest.map(line),
    '',
    '',
  ].join('\n');
}

function figure(value: number): string {
  return value >= 100
    ? value.toFixed(0)
    : value >= 10
      ? value.toFixed(1)
      : value >= 1
        ? value.toFixed(2)
        : value.toPrecision(2);
}

/** The middle one, and the one that 95 of 100 don't pass. */
export function spread(times: readonly number[]): { median: number; p95: number } {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}

/** Milliseconds that each of `runs` runs takes, after some that don't count. */
export function timesOf(runs: number, run: (i: number) => unknown, warmUp = Math.ceil(runs / 3)): number[] {
  const times: number[] = [];
  for (let i = 0; i < warmUp + runs; i += 1) {
    const start = performance.now();
    run(i);
    if (i >= warmUp) times.push(performance.now() - start);
  }
  return times;
}

/**
 * Milliseconds that each run takes of several ways to do one thing, in turn, so that what else the machine does falls
 * on all alike. Each runs once before it is timed, or it would pay for what the one before left in the caches.
 */
export function besideEachOther(runs: number, ways: readonly ((i: number) => unknown)[]): number[][] {
  const times = ways.map((): number[] => []);
  for (let i = 0; i < runs; i += 1)
    for (const [at, way] of ways.entries()) {
      way(2 * i);
      const start = performance.now();
      way(2 * i + 1);
      times[at]!.push(performance.now() - start);
    }
  return times;
}
