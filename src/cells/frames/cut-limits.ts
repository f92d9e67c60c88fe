/** How much of a frame member's depth a slot or a notch may take: the same limits for every cut. */
import type { Warning } from '../form/define';

/** Shares of the depth, as formulas of a cell write them. */
export const cutLimits = {
  /** In a member that nothing backs. */
  unbacked: '1 / 4',
  /** At a joint with glued gussets, or with a floor timber over the cut. */
  backed: '1 / 3',
  most: '1 / 2',
} as const;

export const limitWords = {
  unbacked: 'at most 1/4 of the depth in a member that nothing backs; common practice, no source',
  backed:
    'at most 1/3 of the depth at a joint with glued gussets or under a floor timber; common practice, no source',
  most: 'never more than half the depth; common practice, no source',
} as const;

interface CutWords {
  /** The cut, as the beginning of a sentence: `The slot`. */
  readonly cut: string;
  /** Tells whether the cut goes right through; then that is said instead. */
  readonly through: string;
  readonly mend: string;
}

/** Over a third and over half of the depth, from the cell's own `depthTaken` and `modulusLeft`. */
export function cutWarnings({ cut, through, mend }: CutWords): readonly Warning[] {
  const says = `${cut} takes {depthTaken} of the depth and leaves {modulusLeft} of the strength: ${mend}.`;
  return [
    {
      when: `depthTaken > ${cutLimits.most} and not (${through})`,
      says,
      limit: limitWords.most,
      weight: 'stop',
    },
    {
      when: `depthTaken > ${cutLimits.backed} and depthTaken <= ${cutLimits.most}`,
      says,
      limit: limitWords.backed,
      weight: 'mind',
    },
  ];
}
