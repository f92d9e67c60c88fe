/**
 * The graph of quantities: what each comes to, and why it comes to nothing where it does.
 *
 * Given quantities hold entries (texts over other quantities); derived ones hold functions.
 * A value is a number, a choice or an issue, so a fault stays with what depends on it: whoever
 * asks for a quantity without a value becomes an issue itself and says what it waits for.
 *
 * Inside it is a network of plain values; at its rim, where the page looks, are signals.
 */
import { computed, type ReadonlySignal } from '@preact/signals-core';
import { type Derived, type Given, type Hull, type Read, type Value } from '../../boat';
import { type Issue, isIssue, issue, type Shown, unknownName } from '../../measure';
import type { Findings } from './findings';
import {
  chosenBy,
  type EntryReading,
  namedIn,
  rangeOf,
  readBuilt,
  readGiven,
  type Surroundings,
} from './given';
import { builtAt, type Moment, tellDifferences, writtenAt } from './moment';
import { createNetwork, type Id, type Network } from './network';
import { type Catalogue } from './on-hand';
import { type Named, otherId, type Place, type Places, placesIn } from './places';
import { HULL, type Look, readerOf, Waiting, workFor } from './reader';
import type { Changes, Entries } from '../state/state';

/** What a given quantity's entry is by the design, how it came to be, and what stands in its place. */
export interface EntryState {
  readonly text: string;
  /** True if the builder (or the version in hand) wrote it; false if the preset holds. */
  readonly written: boolean;
  /** Quantities the text names. */
  readonly names: readonly string[];
  /** What was measured or cut to, where anything was: it holds in place of the text, in every version. */
  readonly built?: string;
}

export interface Graph {
  /** All names, rows of tables among them: a list made when asked for; tracked. */
  readonly names: readonly string[];
  /** The names that begin with a word: `keelson`; tracked. */
  namesOf(word: string): readonly string[];
  /** Whether there is such a quantity; tracked. */
  has(name: string): boolean;
  /** What there is under a name; tracked. */
  quantity(name: string): Given | Derived | undefined;
  /** The value now; tracked when read inside a computed or an effect. */
  value(name: string): Value;
  /** The value now, for who looks once: it is not tracked. */
  peek(name: string): Value;
  /** What a quantity would be, had nothing been measured or cut; tracked. */
  designed(name: string): Value;
  /** The entry of a given quantity now; tracked. */
  entry(name: string): EntryState | undefined;
  /** The hull, or why it can't be drawn; tracked. */
  hull(): Hull | Issue;
  /** The quantities that one read when it was last worked out. */
  dependsOn(name: string): readonly string[];
  /** Works something out from the graph, turning a missing value into an issue; tracked. */
  readonly workOut: <T>(by: (read: Read) => T) => T | Issue;
  /**
   * The same graph under other entries; null stands for a preset. It follows this one, and works out only what
   * comes to something else.
   * @param changes tracked
   */
  with(changes: () => Changes): Graph;
  /**
   * The same graph with what was measured or cut to in place of its entries.
   * @param built tracked
   */
  asBuilt(built: () => Entries): Graph;
}

export interface GraphParts {
  /** What quantities there are, tracked: those that come and go touch no others. */
  readonly catalogue: () => Catalogue;
  /** What is written, tracked; the preset of a quantity holds where nothing is. A record is never changed, only replaced. */
  readonly entries: () => Entries;
  /** What searches have found; without it nothing has been. */
  readonly findings?: Findings;
  /** Units in which bare numbers in presets and files are read. */
  readonly shown: Shown;
  /** The units the builder has chosen, tracked: what is sold by them, and what sentences are told in; else `shown`. */
  readonly chosen?: () => Shown;
}

/** What nodes hold: a quantity's value, the reading of an entry, or what is no quantity's. */
type Held = Value | EntryHeld | FactHeld | Hull | Shown | boolean | Given | Derived | Catalogue | null;

interface EntryHeld extends EntryReading {
  readonly written: boolean;
  /** What was measured or cut to: it stands in place of what is written. */
  readonly built?: EntryReading;
}

/** What a fact came to; another one each time that it is worked out. */
class FactHeld {
  readonly found: unknown;
  constructor(found: unknown) {
    this.found = found;
  }
}

/** A graph, with what others are laid over it by. */
interface Laid {
  readonly graph: Graph;
  readonly network: Network<Held>;
  readonly moment: ReadonlySignal<Moment>;
  /** Takes note of what differs from the moment before. */
  readonly look: (moment: Moment) => void;
  /** The graph before anything was measured or cut. */
  readonly design: () => Laid;
}

const nothing: Entries = {};

export function createGraph(parts: GraphParts): Graph {
  const { entries, findings, shown, chosen = () => shown } = parts;
  const catalogue = computed(() => parts.catalogue());
  const moment = computed((): Moment => ({
    below: null,
    catalogue: catalogue.value,
    written: entries(),
    built: nothing,
    shown: chosen(),
    findings: findings?.count.value ?? 0,
  }));
  return lay(parts, placesIn(catalogue.peek()), catalogue, moment).graph;
}

/**
 * @param below the graph to lie over
 * @param designOf the same graph before anything was measured, where that is another
 */
function lay(
  parts: GraphParts,
  places: Places,
  catalogue: ReadonlySignal<Catalogue>,
  moment: ReadonlySignal<Moment>,
  below?: Laid,
  designOf?: () => Laid,
): Laid {
  const { at: placeAt, entryOf: entryId } = places;
  /** What the network knows of. */
  let now: Moment = moment.peek();
  below?.look(now.below!); // a graph over another has its moment over the other's

  const network = createNetwork<Held>({
    work: workOut,
    same,
    ...(below && { over: below.network, isOwn }),
  });

  function isOwn(id: Id): boolean {
    const place = placeAt(id);
    return (
      place.is === 'entry' && [now.written, now.built].some((own) => Object.hasOwn(own, place.named.name))
    );
  }

  function look(moment: Moment): void {
    if (moment === now) return;
    const was = now;
    now = moment;
    if (moment.below) below?.look(moment.below);
    if (was.shown !== moment.shown)
      for (const other of ['units', 'inches'] as const) network.mark(otherId(other));
    if (was.findings !== moment.findings) network.mark(otherId('findings'));
    if (was.catalogue !== moment.catalogue) goOver(was.catalogue, moment.catalogue);
    tellDifferences(was, moment, (name) => {
      const id = places.entryKnown(name);
      if (id !== undefined) network.mark(id);
    });
  }

  function goOver(from: Catalogue, to: Catalogue): void {
    places.follow(to);
    network.mark(otherId('names'));
    if (from.hull !== to.hull) network.mark(otherId('hull'));
    places.tellBetween(from, to, network.mark);
  }

  /** What is being worked out, for what is said of circles and waits. */
  let asker = '';

  function workOut(id: Id): Held {
    const place = placeAt(id);
    const above = asker;
    // A fact asks in the name of who asks for it.
    if (place.is !== 'fact') asker = nameOf(id);
    try {
      return worked(place);
    } finally {
      asker = above;
    }
  }

  function worked(place: Place): Held {
    switch (place.is) {
      case 'value':
        return valueOf(place.named);
      case 'entry':
        return entryOf(place.named);
      case 'there':
        return place.named.of ?? null;
      case 'fact': {
        const found = workFor(() => place.fact.find(read));
        return isIssue(found) ? found : new FactHeld(found);
      }
      case 'hull':
        return workFor(() => now.catalogue.hull(read));
      case 'units':
        return now.shown;
      case 'inches':
        return now.shown.length !== 'mm';
      case 'findings':
        return now.findings;
      case 'names':
        return now.catalogue;
    }
  }

  function valueOf(named: Named): Value {
    const { of } = named;
    if (!of) return issue(unknownName(named.name, around.known(), around.meaningOf));
    if ('preset' in of) return givenValue(of, named);
    return finite(
      of.meaning,
      workFor(() => of.from(read)),
    );
  }

  /** What is written, else the preset, which may turn on a choice of the same cell. */
  function entryOf({ name, of }: Named): EntryHeld {
    if (!of || !('preset' in of)) return { text: '', means: issue(`${name} is no entry`), written: false };
    const text = writtenAt(now, of.name);
    const { presetFrom } = of;
    const inForce = text ?? (presetFrom ? workFor(() => presetFrom(read)) : of.preset);
    // A link that waits for a choice leaves no other number in its place.
    const reading = isIssue(inForce) ? { text: '', means: inForce } : readGiven(of, inForce, around);
    const built = builtAt(now, of.name);
    return {
      ...reading,
      written: text !== undefined,
      ...(built !== undefined && { built: readBuilt(of, built, around) }),
    };
  }

  function givenValue(of: Given, named: Named): Value {
    const entry = entryAt(network.ask, named);
    const { text, means } = entry.built ?? entry;
    if (typeof means === 'string') return workFor(() => chosenBy(of, text, read));
    if (isIssue(means)) return means;
    const value = workFor(() => means.evaluate((other) => read.number(other)));
    return isIssue(value) ? value : (outOfRange(of)(value) ?? finite(of.meaning, value));
  }

  // What a node holds goes by its place: see `worked`.
  const entryAt = (look: (id: Id) => Held, named: Named) => look(entryId(named)) as EntryHeld;
  const thereAt = (look: (id: Id) => Held, named: Named) =>
    look(places.thereOf(named)) as Given | Derived | null;

  const around: Surroundings = {
    shown: parts.shown,
    told: () => network.ask(otherId('units')) as Shown,
    kindOf: (name) => thereAt(network.ask, places.named(name))?.kind,
    known: () => {
      network.ask(otherId('names'));
      return now.catalogue.names();
    },
    meaningOf: (name) =>
      now.catalogue
        .find(name)
        ?.meaning.split(/[,;:(]/)[0]
        ?.trim(),
  };
  const outOfRange = once((of: Given) => rangeOf(of, around));

  /** The node, if it can have a value: one that is being worked out waits for its own, round in a circle. */
  function free(id: Id): Id {
    const way = network.underway(id);
    if (!way) return id;
    network.link(id);
    const circle = way
      .filter((one) => placeAt(one).is !== 'fact')
      .map(nameOf)
      .filter((name, at, all) => name !== all[at - 1]);
    throw new Waiting({ issue: `goes round in a circle: ${[...circle, nameOf(id)].join(' -> ')}`, circle });
  }

  function nameOf(id: Id): string {
    const place = placeAt(id);
    return 'named' in place ? place.named.name : HULL;
  }

  /** Quantities that a node was worked out from, by way of facts too. */
  function quantitiesAskedBy(id: Id): string[] {
    return network.linksOf(id).flatMap((link) => {
      const { is } = placeAt(link);
      if (is === 'fact') return quantitiesAskedBy(link);
      return is === 'value' || is === 'hull' ? [nameOf(link)] : [];
    });
  }

  /** Made for a node when the page first looks at it. */
  const rimOf = once((id: Id) =>
    computed(() => {
      look(moment.value);
      return network.value(id);
    }),
  );
  const rim = (id: Id): Held => rimOf(id).value;

  /** The way to look at nodes from inside the network, where each look is a link, or from its rim. */
  const lookBy = (ask: (id: Id) => Held, more: Pick<Look, 'asker' | 'found'>): Look => ({
    value: (name) => {
      const named = places.named(name);
      const value = ask(free(named.value)) as Value;
      // What isn't there is the asker's own fault, and nothing to wait for.
      if (!named.of && isIssue(value)) throw new Waiting(value);
      return value;
    },
    has: (name) => thereAt(ask, places.named(name)) !== null,
    meaningOf: around.meaningOf,
    isEntered: (name) => {
      const named = places.named(name);
      const of = thereAt(ask, named);
      if (!of || !('preset' in of)) return false;
      const { written, built } = entryAt(ask, named);
      return written || built !== undefined;
    },
    hull: () => ask(free(otherId('hull'))) as Hull | Issue,
    fact: <T>(name: string, find: (by: Read) => T | Issue) => {
      const held = ask(free(places.fact(name, find)));
      // What is held under the name is what this way to find it comes to.
      return held instanceof FactHeld ? (held.found as T) : (held as Issue);
    },
    inches: () => ask(otherId('inches')) === true,
    ...more,
  });
  const found = parts.findings?.found ?? (() => null);
  const read = readerOf(
    lookBy(network.ask, {
      asker: () => asker,
      found: (problem) => {
        network.ask(otherId('findings'));
        return found(problem);
      },
    }),
  );
  const readByPage = readerOf(lookBy(rim, { asker: () => 'the page', found }));

  const valueBy =
    (look: (id: Id) => Held) =>
    (name: string): Value => {
      const named = places.named(name);
      const value = look(named.value) as Value;
      return named.of ? value : issue(`there is no quantity "${name}"`);
    };
  /** What is found under a name, for the page: it is told where that becomes something else. */
  const foundAs = once((name: string) => computed(() => catalogue.value.find(name)));

  const over = (under: Laid, more: () => Partial<Moment>, design?: () => Laid): Laid => {
    const moment = computed((): Moment => {
      const below = under.moment.value;
      return { ...below, below, written: nothing, built: nothing, ...more() };
    });
    return lay(parts, places, catalogue, moment, under, design);
  };

  const graph: Graph = {
    get names() {
      return catalogue.value.names();
    },
    namesOf: (word) => catalogue.value.namesOf(word),
    has: (name) => foundAs(name).value !== undefined,
    quantity: (name) => foundAs(name).value,
    value: valueBy(rim),
    peek: valueBy((id) => {
      look(moment.peek());
      return network.value(id);
    }),
    designed: (name) => laid.design().graph.value(name),
    entry: (name) => {
      const of = foundAs(name).value;
      if (!of || !('preset' in of)) return undefined;
      const { built, written, ...reading } = entryAt(rim, places.named(name));
      return { text: reading.text, written, names: namedIn(reading), ...(built && { built: built.text }) };
    },
    hull: () => rim(otherId('hull')) as Hull | Issue,
    dependsOn: (name) => {
      const id = name === HULL ? otherId('hull') : places.named(name).value;
      return [...new Set(quantitiesAskedBy(id))];
    },
    workOut: (by) => workFor(() => by(readByPage)),
    with: (changes) => {
      const more = () => ({ written: changes() });
      const design = laid.design();
      return over(laid, more, design === laid ? undefined : once(() => over(design, more))).graph;
    },
    asBuilt: (built) => over(laid, () => ({ built: built() }), laid.design).graph,
  };
  const laid: Laid = { graph, network, moment, look, design: designOf ?? (() => laid) };
  return laid;
}

/** Makes a thing for each key when it is first asked for, and the same one ever after. */
function once<T, K = void>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, T>();
  return (key) => {
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = make(key);
    made.set(key, fresh);
    return fresh;
  };
}

/** Whether two values of a node are one, so that nothing follows from working it out again. */
function same(a: Held, b: Held): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (isIssue(a)) return isIssue(b) && sameIssue(a, b);
  if ('means' in a && 'means' in b) return sameReading(a, b);
  return false;
}

function sameReading(a: EntryHeld, b: EntryHeld): boolean {
  if (a.text !== b.text || a.written !== b.written || a.built?.text !== b.built?.text) return false;
  return isIssue(a.means) ? isIssue(b.means) && sameIssue(a.means, b.means) : !isIssue(b.means);
}

const sameIssue = (a: Issue, b: Issue): boolean =>
  a.issue === b.issue && a.waitsFor === b.waitsFor && a.circle?.join() === b.circle?.join();

function finite(meaning: string, value: Value): Value {
  if (typeof value !== 'number' || Number.isFinite(value)) return value;
  return issue(
    `${meaning} has no value with these numbers: the working divides by zero or runs past what can be reckoned`,
  );
}
