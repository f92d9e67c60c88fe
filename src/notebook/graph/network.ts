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

import { IdLists } from './id-lists';

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
  /** What each node was worked out from the last time, in the order in which it asked. */
  readonly links: Pick<IdLists, 'of' | 'size' | 'at'>;
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

/** Never worked out, or something that it was worked out from has changed. */
const STALE = 0;
/** Something upstream is stale; whether it comes to another value is not known yet. */
const DOUBTED = 1;
const SETTLED = 2;
/** Doubted, while what it was worked out from is settled. */
const ASKING = 3;
const UNDERWAY = 4;

/** The end of what a node may ask for again, once it has asked for something else than the last time. */
const ELSE = -1;

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
  const values: T[] = [];
  const links = new IdLists();
  const readers = new IdLists();

  // The nodes being worked out, each for the one before; and of the last: where in the pool of links stands what it
  // asked for the last time, how far it has asked for the same again, and what it has asked for from there on.
  const askers: Id[] = [];
  let depth = -1;
  let first = 0;
  let next = 0;
  let end = ELSE;
  const fresh: Id[] = [];
  let freshFrom = 0;
  let freshTo = 0;

  function reach(id: Id): void {
    links.reach(id);
    readers.reach(id);
    if (id < states.length) return;
    const were = states;
    states = new Uint8Array(2 * id);
    states.set(were);
  }

  function value(id: Id): T {
    const state = states[id]!;
    if (state >= ASKING) return circle(underway(id)!); // it is
    if (state !== SETTLED) settle(id);
    return values[id]!; // settled
  }

  function link(id: Id): void {
    if (depth < 0) return;
    if (next < end && links.pool[next] === id) {
      next += 1;
      return;
    }
    // What is asked for twice running is one link.
    if (freshTo > freshFrom ? fresh[freshTo - 1] === id : next > first && links.pool[next - 1] === id) return;
    end = ELSE;
    fresh[freshTo] = id;
    freshTo += 1;
  }

  function ask(id: Id): T {
    link(id);
    return value(id);
  }

  /** What is asked for here is most often what was asked for here the last time: that needs no looking up. */
  function askFor(name: string): T {
    if (next >= end) return ask(idOf(name));
    const id = links.pool[next]!; // within the links
    if (names[id] !== name) return ask(idOf(name));
    next += 1;
    return states[id] === SETTLED ? values[id]! : value(id);
  }

  function settle(id: Id): void {
    if (id >= states.length) reach(id);
    const was = states[id]!; // reached
    // What can't be worked out is tried again.
    let state = STALE;
    states[id] = was === DOUBTED ? ASKING : UNDERWAY;
    depth += 1;
    askers[depth] = id;
    const firstBefore = first;
    const nextBefore = next;
    const endBefore = end;
    const freshBefore = freshFrom;
    freshFrom = freshTo;
    try {
      if (was === STALE || hasNews(id)) {
        const found = (over && sharedValue(id, over)) ?? worked(id);
        if (values[id] === undefined || !same(values[id], found)) {
          values[id] = found;
          bringNews(id);
        }
      }
      state = SETTLED;
    } finally {
      depth -= 1;
      states[id] = state;
      first = firstBefore;
      next = nextBefore;
      end = endBefore;
      freshTo = freshFrom;
      freshFrom = freshBefore;
    }
  }

  /** Settles what a node was worked out from, in the order in which it asked: up to the first news it would ask the same again. */
  function hasNews(id: Id): boolean {
    const from = links.starts[id]! + 2; // reached
    const to = from + links.pool[from - 1]!;
    for (let at = from; at < to; at += 1) {
      const other = links.pool[at]!; // within the links
      const state = states[other]!;
      if (state === SETTLED) continue;
      if (state >= ASKING) return true;
      settle(other);
      if (states[id] === UNDERWAY) return true;
    }
    return false;
  }

  /** A value that has changed is news to those that were worked out from it. */
  function bringNews(id: Id): void {
    const from = readers.starts[id]! + 2; // reached
    const to = from + readers.pool[from - 1]!;
    for (let at = from; at < to; at += 1) {
      const reader = readers.pool[at]!; // within the readers
      const state = states[reader];
      if (state === DOUBTED) states[reader] = STALE;
      else if (state === ASKING) states[reader] = UNDERWAY;
    }
  }

  function worked(id: Id): T {
    first = next = links.starts[id]! + 2; // reached
    end = first + links.pool[first - 1]!;
    const found = work(id);
    if (next !== end) {
      unlink(id, next - first);
      for (let at = freshFrom; at < freshTo; at += 1) linkTo(id, fresh[at]!); // asked for
    }
    return found;
  }

  /** The value of the network below, where all that it was worked out from is the same here. */
  function sharedValue(id: Id, below: Network<T>): T | undefined {
    if (isOwn(id) || below.underway(id)) return undefined;
    const found = below.value(id);
    const others = below.links;
    const size = others.size(id);
    for (let place = 0; place < size; place += 1) {
      const other = others.at(id, place);
      if (states[other]! >= ASKING || !same(value(other), below.value(other))) return undefined;
    }
    if (!links.isAsIn(others, id)) {
      unlink(id, 0);
      for (let place = 0; place < size; place += 1) linkTo(id, others.at(id, place));
    }
    return found;
  }

  /** @param kept how many links from the first on are the same as before */
  function unlink(id: Id, kept: number): void {
    for (let place = links.size(id) - 1; place >= kept; place -= 1) readers.drop(links.at(id, place), id);
    links.cut(id, kept);
  }

  function linkTo(id: Id, other: Id): void {
    links.push(id, other);
    readers.push(other, id);
  }

  const doubted: Id[] = [];
  function mark(id: Id): void {
    if (id >= states.length) return;
    states[id] = STALE;
    doubted.push(id);
    for (let at = doubted.pop(); at !== undefined; at = doubted.pop()) {
      const from = readers.starts[at]! + 2; // reached
      const to = from + readers.pool[from - 1]!;
      for (let one = from; one < to; one += 1) {
        const reader = readers.pool[one]!; // within the readers
        if (states[reader] !== SETTLED) continue;
        states[reader] = DOUBTED;
        doubted.push(reader);
      }
    }
  }

  function underway(id: Id): readonly Id[] | null {
    if (!(states[id]! >= ASKING)) return null;
    const all = way();
    return all.slice(all.indexOf(id));
  }

  const way = () => askers.slice(0, depth + 1);

  return { ask, askFor, value, mark, way, underway, links };
}
