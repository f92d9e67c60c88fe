/** Which pieces stand on which page of a booklet: as many as there is room for, and no heading apart from what it heads. */

export interface PieceHeight {
  /** px */
  readonly height: number;
  /** It heads what comes next, and stands on the page with it. */
  readonly heads: boolean;
}

/**
 * @param room height of a page, px
 * @returns the pieces of each page by their places in the list; one that is higher than a page has a page of its own
 */
export function packed(pieces: readonly PieceHeight[], room: number): number[][] {
  const pages: number[][] = [];
  let left = 0;
  for (let at = 0; at < pieces.length;) {
    const end = endOfRun(pieces, at);
    const run = Array.from({ length: end - at }, (_, n) => at + n);
    const height = run.reduce((sum, one) => sum + pieces[one]!.height, 0); // within the list
    const page = pages.at(-1);
    if (page && height <= left) page.push(...run);
    else pages.push(run);
    left = (page && height <= left ? left : room) - height;
    at = end;
  }
  return pages;
}

/** Where the run that begins here ends: headings, and what the last of them heads. */
function endOfRun(pieces: readonly PieceHeight[], from: number): number {
  let at = from;
  while (pieces[at]?.heads) at += 1;
  return Math.min(at + 1, pieces.length);
}
