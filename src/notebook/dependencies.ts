/** The record of who read what when it was last worked out: for naming circles, and for showing what follows from what. */

export interface Dependencies {
  note(asker: string, name: string): void;
  /** Begins an asker's record anew. */
  forget(asker: string): void;
  of(name: string): readonly string[];
  /** The shortest way along dependencies, both ends included; undefined where there is none. */
  way(from: string, to: string): string[] | undefined;
  /**
   * `name` and all that it was worked out from, however far behind.
   * @param aside names what was worked out beside a quantity, and not under its name
   */
  behind(name: string, aside: (name: string) => string): ReadonlySet<string>;
}

export function createDependencies(): Dependencies {
  const record = new Map<string, Set<string>>();

  return {
    note: (asker, name) => {
      const known = record.get(asker);
      if (known) known.add(name);
      else record.set(asker, new Set([name]));
    },
    forget: (asker) => record.delete(asker),
    of: (name) => [...(record.get(name) ?? [])],
    way: (from, to) => {
      const cameFrom = new Map<string, string | undefined>([[from, undefined]]);
      // A map takes what is added while it is run through, and keeps its order: breadth first.
      for (const at of cameFrom.keys()) {
        if (at === to) return backTo(cameFrom, at);
        for (const next of record.get(at) ?? []) if (!cameFrom.has(next)) cameFrom.set(next, at);
      }
      return undefined;
    },
    behind: (name, aside) => {
      const all = new Set([name]);
      for (const at of all)
        for (const asker of [at, aside(at)]) for (const next of record.get(asker) ?? []) all.add(next);
      return all;
    },
  };
}

function backTo(cameFrom: ReadonlyMap<string, string | undefined>, end: string): string[] {
  const way: string[] = [];
  for (let step: string | undefined = end; step !== undefined; step = cameFrom.get(step)) way.unshift(step);
  return way;
}
