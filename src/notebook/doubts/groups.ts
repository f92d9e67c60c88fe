/** What is doubted in one go: the groups in which a weighing is told. */
import { together } from '../../kernel';
import { isOffset } from '../graph/hangs-on';
import { sizeOf, type Weighed, type Weighing } from './weigh';

/** Numbers that are doubted alike and known anew in one go: the plan's offsets are one such, each other number another. */
export interface Group {
  /** What moves most first. */
  readonly rows: readonly Weighed[];
  readonly isOffsets: boolean;
  /** How far they move the answer together. */
  readonly moves: number;
}

/** The groups, what moves most first. */
export function groupsOf({ rows }: Weighing): readonly Group[] {
  const group = (of: readonly Weighed[], isOffsets: boolean): Group => ({
    rows: of,
    isOffsets,
    moves: together(of.map(sizeOf)),
  });
  const offsets = rows.filter(({ number }) => isOffset(number.quantity.name));
  const others = rows.filter(({ number }) => !isOffset(number.quantity.name));
  return [
    ...(offsets.length > 0 ? [group(offsets, true)] : []),
    ...others.map((row) => group([row], false)),
  ].toSorted((a, b) => b.moves - a.moves);
}

/** How far all but the first move the answer together. */
export const othersOf = (groups: readonly Group[]): number =>
  together(groups.slice(1).map(({ moves }) => moves));
