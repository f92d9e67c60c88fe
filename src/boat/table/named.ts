/** Things of the boat that are asked for by name. */
export interface Named {
  /** As in quantities: `frame3`. */
  readonly name: string;
  /** In the builder's own words: `frame 3`. */
  readonly label: string;
}

/** The one with this name; throws a sentence that lists the names there are. */
export function find<T extends Named>(list: readonly T[], name: string, kind: string): T {
  const found = list.find((one) => one.name === name);
  if (found) return found;
  throw new Error(`the hull has no ${kind} "${name}"; it has ${list.map((one) => one.name).join(', ')}`);
}
