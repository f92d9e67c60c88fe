/** What the build makes of the folder of notebooks: `src/build/notebooks.ts`. */
import type { NotebookPage, PackedHead } from '../notebook';

export const heads: readonly PackedHead[];
/** By the notebooks' ids. */
export const texts: Readonly<Record<string, () => Promise<NotebookPage>>>;
