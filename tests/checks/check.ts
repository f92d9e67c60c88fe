/** One comparison with the world outside: a standard, a handbook table, a worked example, a closed form. */
export interface Check {
  /** Unique; the letter says of what: B bevels, C coatings, D developables, L lofting, W wood … */
  readonly id: string;
  /** The cell that it checks, or the room of the code: `kernel`, `measure`, `trade`. */
  readonly cell: string;
  /** What is reckoned, as a noun phrase. */
  readonly what: string;
  /** What goes in, in the words of the source. */
  readonly input: string;
  readonly expected: readonly number[];
  /** Of the expected numbers, as printed: `deg`, `mm`, `g/m²`; empty for plain numbers. */
  readonly unit: string;
  /** Greatest difference that still passes, in that unit. */
  readonly tolerance: number;
  readonly source: string;
  readonly known: 'published' | 'common practice' | 'from memory' | 'closed form';
  /**
   * Where the source is printed so roughly that one per cent can't be seen in it: the share that can, and the row that
   * holds the same reckoning finely.
   */
  readonly rough?: { readonly noticed: number; readonly finer: string };
  /** What the product's own code gives, in that unit. It never restates the formula. */
  readonly obtain: () => readonly number[];
}

/** What is wrong between what was expected and what was obtained, as a sentence; empty when nothing is. */
export function misses(check: Pick<Check, 'expected' | 'tolerance'>, obtained: readonly number[]): string {
  const { expected, tolerance } = check;
  if (obtained.length !== expected.length) {
    return `expected ${expected.length} numbers, obtained ${obtained.length}`;
  }
  const at = expected.findIndex((wanted, i) => !(Math.abs((obtained[i] ?? NaN) - wanted) <= tolerance));
  return at < 0 ? '' : `expected ${expected[at]} within ${tolerance}, obtained ${obtained[at]}`;
}

/** The same number wrong by the least share that the row must notice, up and down; nought by a hundredth of the unit. */
export function wrongs({
  expected,
  rough,
}: Pick<Check, 'expected' | 'rough'>): readonly (readonly number[])[] {
  const share = rough?.noticed ?? 0.01;
  return expected.flatMap((value, at) => {
    const off = value === 0 ? 0.01 : share * value;
    return [off, -off].map((by) => expected.map((other, i) => (i === at ? other + by : other)));
  });
}

/** The rows of every file of checks, in the order of their ids. */
export function allChecks(): readonly Check[] {
  const files = import.meta.glob<{ rows: readonly Check[] }>('./*.checks.ts', { eager: true });
  return Object.values(files)
    .flatMap((file) => file.rows)
    .sort((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
}
