/**
 * A network of values that follow from each other. Each node is worked out when it is looked at, and again only
 * when something that it was worked out from has come to another value.
 *
 * Marks are pushed, values are pulled: what changes outside marks its node, everything downstream is doubted, and a
 * doubted node that is looked at settles what it was worked out from, one by one, before it is worked out again.
 * Nodes are numbers, what is known of them lies in lists by number, and links are rewritten only where a working
 * asked for something else than the last time: that is what makes an edit cheap.
 *
 * A network may lie over another one and work out only what comes to something else there: where all that a node
 * was worked out from is the same in both, so is its value.
 */

/** A node; small numbers from 0, dense. */
export type Id = number;

export interface Network<T> {
  /** The value of a node, settled; the node being worked out, if any, is linked to it. */
  readonly ask: (id: Id) => T;
  /** The value of a node, settled, without a link to it. */
  readonly value: (id: Id) => T;
  /** Something outside the network that the node is worked out from has changed. */
  readonly mark: (id: Id) => void;
  /** The same for the node of this name. */
  readonly askFor: (name: string) => T;
  /** The nodes being worked out now, each for the one before. */
  readonly way: () => readonly Id[];
  /** The way from a node that is being worked out to the one that asks now; null for a node that is not being worked out. */
  readonly underway: (id: Id) => readonly Id[] | null;
  /** What a node was worked out from the last time, in the order in which it asked. */
  readonly linksOf: (id: Id) => readonly Id[];
}

export interface Nodes<T> {
  /** Works a node out, asking for others by `ask`. */
  readonly work: (id: Id) => T;
  /** Whether two values are one, so that nothing follows from the change. */
  readonly same: (a: T, b: T) => boolean;
  /** What is held for a node that is asked for on the way to its own value: a value, or a fault that is thrown. */
  readonly circle: (way: readonly Id[]) => T;
  /** The names of nodes, by their ids, empty where one has none; and the node of a name. */
  readonly names?: readonly string[];
  readonly idOf?: (name: string) => Id;
  /** The network that this one lies over. */
  readonly over?: Network<T>;
  /** Whether the node is worked out here from something outside that the network below doesn't know. */
  readonly isOwn?: (id: Id) => boolean;
}

/** Never worked out, or something outside it has changed. */
const STALE = 0;
/** Something upstream is stale; whether it comes to another value is not known yet. */
const DOUBTED = 1;
const SETTLED = 2;
const UNDERWAY = 3;

const nothing: readonly Id[] = [];

export function createNetwork<T>({
  work,
  same,
  circle,
  names = [],
  idOf = Number,
  over,
  isOwn = () => false,
}: Nodes<T>): Network<T> {
  let states = new Uint8Array(64);
  // A value that came later than its reader was last settled is news to the reader. The clock ticks at each mark.
  let clock = 1;
  let cameAt = new Float64Array(64);
  let settledAt = new Float64Array(64);
  const values: T[] = [];
  const links: (readonly Id[])[] = [];
  const readers: Id[][] = [];

  // The nodes being worked out, each for the one before; and of the last: what it asked for the last time, how many of
  // those it has asked for again in the same order, and what from the first that differs on, null as long as none does.
  const askers: Id[] = [];
  let depth = -1;
  let old = nothing;
  let kept = 0;
  let fresh: Id[] | null = null;

  function reach(id: Id): void {
    while (links.length <= id) {
      links.push(nothing);
      readers.push([]);
    }
    if (id < states.length) return;
    const room = Math.max(id + 1, 2 * states.length);
    const [wereStates, cameAtWas, settledAtWas] = [states, cameAt, settledAt];
    states = new Uint8Array(room);
    cameAt = new Float64Array(room);
    settledAt = new Float64Array(room);
    states.set(wereStates);
    cameAt.set(cameAtWas);
    settledAt.set(settledAtWas);
  }

  function value(id: Id): T {
    const state = states[id];
    if (state === UNDERWAY) return circle(underway(id)!); // it is
    if (state !== SETTLED) settle(id);
    return values[id]!; // settled
  }

  function link(id: Id): void {
    if (depth < 0) return;
    if (fresh) {
      // What is asked for twice running is one link.
      if (fresh.at(-1) !== id) fresh.push(id);
    } else if (old[kept] === id) kept += 1;
    else if (kept === 0 || old[kept - 1] !== id) fresh = [id];
  }

  function ask(id: Id): T {
    link(id);
    return value(id);
  }

  /** What is asked for here is most often what was asked for here the last time: that needs no looking up. */
  function askFor(name: string): T {
    const id = fresh ? undefined : old[kept];
    if (id === undefined || names[id] !== name) return ask(idOf(name));
    kept += 1;
    return states[id] === SETTLED ? values[id]! : value(id);
  }

  function settle(id: Id): void {
    if (id >= links.length) reach(id);
    const was = states[id]!; // reached
    let state = was;
    states[id] = UNDERWAY;
    depth += 1;
    askers[depth] = id;
    const oldBefore = old;
    const keptBefore = kept;
    const freshBefore = fresh;
    try {
      if (was === STALE || hasNews(id)) {
        const found = (over && sharedValue(id, over)) ?? worked(id);
        if (cameAt[id] === 0 || !same(values[id]!, found)) {
          values[id] = found;
          cameAt[id] = clock;
        }
      }
      settledAt[id] = clock;
      state = SETTLED;
    } finally {
      depth -= 1;
      states[id] = state;
      old = oldBefore;
      kept = keptBefore;
      fresh = freshBefore;
    }
  }

  /** Settles what a node was worked out from, in the order in which it asked: up to the first news it would ask the same again. */
  function hasNews(id: Id): boolean {
    const since = settledAt[id]!; // reached
    for (const other of links[id]!) {
      const state = states[other];
      if (state === UNDERWAY) return true;
      if (state !== SETTLED) settle(other);
      if (cameAt[other]! > since) return true;
    }
    return false;
  }

  function worked(id: Id): T {
    old = links[id]!; // reached
    kept = 0;
    fresh = null;
    const found = work(id);
    const first = kept;
    const more = fresh as Id[] | null;
    if (more) relink(id, first === 0 ? more : [...old.slice(0, first), ...more], first);
    else if (first < old.length) relink(id, old.slice(0, first), first);
    return found;
  }

  /** The value of the network below, where all that it was worked out from is the same here. */
  function sharedValue(id: Id, below: Network<T>): T | undefined {
    if (isOwn(id) || below.underway(id)) return undefined;
    const found = below.value(id);
    const others = below.linksOf(id);
    for (const other of others) {
      if (states[other] === UNDERWAY || !same(value(other), below.value(other))) return undefined;
    }
    const own = links[id]!; // reached
    if (own !== others) {
      let alike = 0;
      while (alike < own.length && own[alike] === others[alike]) alike += 1;
      relink(id, others, alike);
    }
    return found;
  }

  /** @param alike how many links from the first on are the same as before */
  function relink(id: Id, now: readonly Id[], alike: number): void {
    const were = links[id]!; // reached
    for (let at = alike; at < were.length; at += 1) forget(were[at]!, id);
    for (let at = alike; at < now.length; at += 1) readers[now[at]!]!.push(id);
    links[id] = now;
  }

  function forget(id: Id, reader: Id): void {
    const all = readers[id]!;
    const last = all.pop()!; // it was linked
    if (last !== reader) all[all.lastIndexOf(reader)] = last;
  }

  const doubted: Id[] = [];
  function mark(id: Id): void {
    if (id >= links.length) return;
    clock += 1;
    states[id] = STALE;
    doubted.push(id);
    for (let at = doubted.pop(); at !== undefined; at = doubted.pop())
      for (const reader of readers[at]!) {
        if (states[reader] !== SETTLED) continue;
        states[reader] = DOUBTED;
        doubted.push(reader);
      }
  }

  function underway(id: Id): readonly Id[] | null {
    if (states[id] !== UNDERWAY) return null;
    const all = way();
    return all.slice(all.indexOf(id));
  }

  const way = () => askers.slice(0, depth + 1);

  return { ask, askFor, value, mark, way, underway, linksOf: (id) => links[id] ?? nothing };
}
