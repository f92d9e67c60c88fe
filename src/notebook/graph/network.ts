/**
 * A network of values that follow from each other. Each node is worked out when it is looked at, and again only
 * when something that it was worked out from has come to another value.
 *
 * Marks are pushed, values are pulled: what changes outside marks its node, everything downstream is doubted, and a
 * doubted node that is looked at settles what it was worked out from, one by one, before it is worked out again.
 * Nodes are numbers, links are lists of them, and a list is rewritten only where a working asked for something else
 * than the last time: that is what makes an edit cheap.
 *
 * A network may lie over another one and work out only what comes to something else there: where all that a node
 * was worked out from is the same in both, so is its value.
 */

/** A node; small numbers from 0, dense. */
export type Id = number;

export interface Network<T> {
  /** The value of a node, settled; the node being worked out, if any, is linked to it. Not for a node that is `underway`. */
  readonly ask: (id: Id) => T;
  /** The value of a node, settled, without a link to it. */
  readonly value: (id: Id) => T;
  /** Links the node being worked out to another, though its value can't be had. */
  readonly link: (id: Id) => void;
  /** Something outside the network that the node is worked out from has changed. */
  readonly mark: (id: Id) => void;
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
type State = typeof STALE | typeof DOUBTED | typeof SETTLED | typeof UNDERWAY;

const nothing: readonly Id[] = [];

/** What a node being worked out has asked for so far, against what it asked for the last time. */
interface Asking {
  readonly id: Id;
  /** How many of the old links were asked for again, in the same order. */
  kept: number;
  /** The links from the first that differs on; null as long as none does. */
  fresh: Id[] | null;
}

export function createNetwork<T>({ work, same, over, isOwn = () => false }: Nodes<T>): Network<T> {
  const states: State[] = [];
  const values: T[] = [];
  const links: (readonly Id[])[] = [];
  const readers: Id[][] = [];
  // Ticks at each mark. A value that came later than its reader was last settled is news to the reader.
  let clock = 1;
  const cameAt: number[] = [];
  const settledAt: number[] = [];
  const asking: Asking[] = [];

  function grow(id: Id): void {
    while (states.length <= id) {
      states.push(STALE);
      links.push(nothing);
      readers.push([]);
      cameAt.push(0);
      settledAt.push(0);
    }
  }

  function value(id: Id): T {
    if (states[id] !== SETTLED) settle(id);
    return values[id]!; // settled
  }

  function link(id: Id): void {
    const by = asking.at(-1);
    if (!by) return;
    if (by.fresh) {
      by.fresh.push(id);
      return;
    }
    const old = links[by.id]!; // grown when it was asked for
    if (old[by.kept] === id) by.kept += 1;
    // What is asked for twice running is one link.
    else if (by.kept === 0 || old[by.kept - 1] !== id) by.fresh = [id];
  }

  function ask(id: Id): T {
    link(id);
    return value(id);
  }

  function settle(id: Id): void {
    grow(id);
    const was = states[id]!; // grown
    states[id] = UNDERWAY;
    const by: Asking = { id, kept: 0, fresh: null };
    asking.push(by);
    let next: State = was;
    try {
      if (was === STALE || hasNews(id)) {
        const isKnown = cameAt[id]! > 0; // grown
        const fresh = sharedValue(id) ?? worked(by);
        if (!isKnown || !same(values[id]!, fresh)) {
          values[id] = fresh;
          cameAt[id] = clock;
        }
      }
      settledAt[id] = clock;
      next = SETTLED;
    } finally {
      asking.pop();
      states[id] = next;
    }
  }

  /** Settles what a node was worked out from, in the order in which it asked: up to the first news it would ask the same again. */
  function hasNews(id: Id): boolean {
    for (const other of links[id]!) {
      if (states[other] === UNDERWAY) return true;
      if (states[other] !== SETTLED) settle(other);
      if (cameAt[other]! > settledAt[id]!) return true;
    }
    return false;
  }

  function worked(by: Asking): T {
    const fresh = work(by.id);
    const old = links[by.id]!; // grown
    if (by.fresh) relink(by.id, by.kept === 0 ? by.fresh : [...old.slice(0, by.kept), ...by.fresh], by.kept);
    else if (by.kept < old.length) relink(by.id, old.slice(0, by.kept), by.kept);
    return fresh;
  }

  /** The value of the network below, where all that it was worked out from is the same here. */
  function sharedValue(id: Id): T | undefined {
    if (!over || isOwn(id) || over.underway(id)) return undefined;
    const below = over.value(id);
    const others = over.linksOf(id);
    for (const other of others) {
      grow(other);
      if (states[other] === UNDERWAY || !same(value(other), over.value(other))) return undefined;
    }
    if (links[id] !== others) relink(id, others);
    return below;
  }

  /** @param kept how many links from the first on are the same as before */
  function relink(id: Id, now: readonly Id[], kept = 0): void {
    const old = links[id]!; // grown
    for (let at = kept; at < old.length; at += 1) forget(old[at]!, id);
    for (let at = kept; at < now.length; at += 1) readers[now[at]!]!.push(id);
    links[id] = now;
  }

  function forget(id: Id, reader: Id): void {
    const all = readers[id]!;
    const last = all.pop()!; // it was linked
    if (last !== reader) all[all.lastIndexOf(reader)] = last;
  }

  function mark(id: Id): void {
    if (states[id] === undefined) return;
    clock += 1;
    states[id] = STALE;
    const doubted = [id];
    for (let at = doubted.pop(); at !== undefined; at = doubted.pop())
      for (const reader of readers[at]!) {
        if (states[reader] !== SETTLED) continue;
        states[reader] = DOUBTED;
        doubted.push(reader);
      }
  }

  function underway(id: Id): readonly Id[] | null {
    if (states[id] !== UNDERWAY) return null;
    const ids = asking.map((by) => by.id);
    return ids.slice(ids.indexOf(id));
  }

  return { ask, value, link, mark, underway, linksOf: (id) => links[id] ?? nothing };
}
