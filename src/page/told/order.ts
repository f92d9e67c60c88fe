/**
 * In what order the ripple is told: what stops or wants minding where the builder is, what is in view, limits passed
 * elsewhere, the rest of the open notebook, the boat's main numbers. What nobody has opened is folded, and so is what
 * there is no room for.
 */

/** Where what moved stands, the nearest first; `boat` is a number of the boat itself, which stands in no cell. */
export type Nearness = 'in hand' | 'in view' | 'open' | 'elsewhere' | 'boat';

/** What a line is about: a limit newly passed, one that is kept again, or a number. */
export type LineKind = 'stop' | 'mind' | 'clear' | 'first answer' | 'answer' | 'main number' | 'other';

export interface RippleLine {
  readonly kind: LineKind;
  readonly place: Nearness;
  /** How much it moved against something that matters; of lines of one rank the largest is told first. */
  readonly size: number;
  /** The notebook that it is folded under; empty for the boat. */
  readonly notebook: string;
}

export interface FoldedLines<L> {
  readonly notebook: string;
  readonly lines: readonly L[];
}

export interface InOrder<L> {
  readonly told: readonly L[];
  readonly folded: readonly FoldedLines<L>[];
}

/** How many numbers are told before the rest is folded; a limit is never folded. */
const TOLD = 6;

const LIMITS: readonly LineKind[] = ['stop', 'mind', 'clear'];
const isLimit = ({ kind }: RippleLine): boolean => LIMITS.includes(kind);

/** The ranks, first to last; what has none of them is folded. */
const ranks: readonly ((line: RippleLine) => boolean)[] = [
  ...LIMITS.map((kind) => (line: RippleLine) => line.kind === kind && isNear(line)),
  ({ kind, place }) => kind === 'first answer' && place === 'in hand',
  ({ kind, place }) => kind === 'first answer' && place === 'in view',
  ({ kind, place }) => kind === 'answer' && (place === 'in hand' || place === 'in view'),
  ...LIMITS.map((kind) => (line: RippleLine) => line.kind === kind),
  ({ kind, place }) => (kind === 'first answer' || kind === 'answer') && place === 'open',
  ({ kind }) => kind === 'main number',
];

function isNear({ place }: RippleLine): boolean {
  return place !== 'elsewhere' && place !== 'boat';
}

/** @param lines in any order; of equals the one that came first stays first, and so do the notebooks of what is folded */
export function inOrder<L extends RippleLine>(lines: readonly L[], most = TOLD): InOrder<L> {
  const ranked = lines
    .map((line) => ({ line, rank: ranks.findIndex((is) => is(line)) }))
    .toSorted((a, b) => rankLast(a.rank) - rankLast(b.rank) || bySize(a.line, b.line));
  const told: L[] = [];
  const folded = new Map<string, L[]>();
  let numbers = 0;
  for (const { line, rank } of ranked) {
    if (rank >= 0 && (isLimit(line) || numbers < most)) {
      told.push(line);
      if (!isLimit(line)) numbers += 1;
    } else {
      folded.set(line.notebook, [...(folded.get(line.notebook) ?? []), line]);
    }
  }
  return { told, folded: inHandFirst(folded) };
}

const rankLast = (rank: number): number => (rank < 0 ? ranks.length : rank);

/** Infinite sizes have no difference. */
function bySize(a: RippleLine, b: RippleLine): number {
  return a.size === b.size ? 0 : a.size < b.size ? 1 : -1;
}

/** What is folded of the open notebook comes first, then of the boat, then of the others. */
function inHandFirst<L extends RippleLine>(folded: ReadonlyMap<string, readonly L[]>): FoldedLines<L>[] {
  const far = ({ lines }: FoldedLines<L>) =>
    lines.some(isNear) ? 0 : lines.some(({ place }) => place === 'boat') ? 1 : 2;
  return [...folded].map(([notebook, lines]) => ({ notebook, lines })).toSorted((a, b) => far(a) - far(b));
}
