/** Names of stations where there is little room for them. */

/** `frame 3` is 3 on a drawing, `stern transom` is transom. */
export function shortName(label: string): string {
  return /\d+[a-z]?/i.exec(label)?.[0] ?? label.split(/\s+/).at(-1)!; // split gives at least one
}
