/** Marks along a timber at an interval, both ends with them, as rows of a table. */
import type { ListRow } from '../../form/define';

/** Marks that a list holds, besides those at both ends. */
export const MOST_MARKS = 100;

/** @param length of the timber, m */
export function marksAlong(length: number, interval: number): readonly ListRow[] {
  const within = Math.min(MOST_MARKS, Math.ceil(length / interval - 1e-9) - 1);
  return [
    { id: 'first', label: 'the end itself', value: 0 },
    ...Array.from({ length: within }, (_, i) => ({
      id: `mark${i + 1}`,
      label: `mark ${i + 1}`,
      value: (i + 1) * interval,
    })),
    { id: 'last', label: 'the other end', value: length },
  ];
}
