// Pens on paper at full size, mm: finer than on a drawing that is only read, because a pattern is cut along them.

import type { Pen } from '../shapes';

interface PaperPen {
  readonly width: number;
  readonly dash: readonly number[];
}

export const PAPER_PENS: { readonly [pen in Pen]: PaperPen } = {
  outline: { width: 0.35, dash: [] },
  visible: { width: 0.25, dash: [] },
  hidden: { width: 0.25, dash: [3, 1.5] },
  centre: { width: 0.18, dash: [8, 1.5, 1.5, 1.5] },
  dimension: { width: 0.18, dash: [] },
  thin: { width: 0.18, dash: [] },
  ghost: { width: 0.25, dash: [2, 2] },
  // Paper that is printed black tells lines apart by their dashes.
  grid: { width: 0.09, dash: [] },
  waterline: { width: 0.18, dash: [4, 1] },
  design: { width: 0.35, dash: [4, 1] },
  buttock: { width: 0.18, dash: [1.5, 1] },
};
