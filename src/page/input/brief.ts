// The title of a cell, as it stands beside a field that the cell fills.

/** A title longer than this takes more than the two lines beside a field. */
const LONGEST_MARK = 18;

/** A title by what it begins with, where all of it is too long: `Cloth for the sheathing` is `Cloth`. */
export const inBrief = (title: string): string =>
  title.length > LONGEST_MARK ? title.replace(/ (?:for|along|over|of|at|by|on) .*$/, '') : title;
