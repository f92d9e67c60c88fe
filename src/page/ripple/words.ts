/** The ripple in a few words. */
import type { ToldRipple } from '../told/told';

export function isStill(ripple: ToldRipple | null): boolean {
  return !ripple || (ripple.hull === null && ripple.told.length === 0 && ripple.folded.length === 0);
}

/** What became of the hull, in the words of a headline. */
export const hullWords = { drawn: 'The hull is drawn', lost: 'The hull can’t be drawn now' } as const;

/** `12 moved, 1 past a limit`; empty when nothing did. */
export function inBrief(ripple: ToldRipple | null): string {
  if (!ripple || isStill(ripple)) return '';
  const { hull, moved, passed } = ripple;
  const news = hull ? hullWords[hull].toLowerCase() : moved > 0 ? `${moved} moved` : '';
  return [news, passed > 0 ? `${passed} past a limit` : ''].filter(Boolean).join(', ');
}

/**
 * What lies under a fold: `+ 13 more in Thin layers, Holding`, `+ 4 more in Bend, join, fasten`, `+ 6 more of the boat`.
 * @param cells titles of the cells that it is about, where they stand in the open notebook
 * @param notebook title of the notebook that it is about; undefined for the boat herself
 */
export function foldWords(count: number, cells: readonly string[], notebook: string | undefined): string {
  const more = `+ ${count} more`;
  const names = [...new Set(cells)];
  if (names.length > 2) return `${more} in ${names.length} cells here`;
  if (names.length > 0) return `${more} in ${names.join(', ')}`;
  return notebook === undefined ? `${more} of the boat` : `${more} in ${notebook}`;
}

/** `71` for `71 N` beside a number in N: the unit is said once. */
export function withoutUnit(told: string, beside: string): string {
  const unit = /^[−-]?[\d.,\u202f]+([\s\u00a0]\D+)$/;
  const [, of] = unit.exec(told) ?? [];
  return of !== undefined && unit.exec(beside)?.[1] === of ? told.slice(0, -of.length) : told;
}

/** What a warning finds amiss, without what to do about it, which stands in the cell. */
export const amiss = (says: string): string => `${/^.+?(?=[.:;!?](?:\s|$))/s.exec(says)?.[0] ?? says}.`;
