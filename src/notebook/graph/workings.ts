/** How the nodes of a graph are worked out: entries by what is written, quantities by their own functions. */
import type { Derived, Given, Hull, Read, Value } from '../../boat';
import { type Issue, isIssue, issue, type Shown, unknownName, upToComma } from '../../measure';
import type { Findings } from './findings';
import { chosenBy, linkIn, rangeOf, readBuilt, readGiven, type Surroundings } from './given';
import { type EntryHeld, FactHeld, finite, type Held } from './held';
import { builtAt, type Moment, writtenAt } from './moment';
import type { Id, Network } from './network';
import { type NamedNode, otherId, type Places } from './places';
import { HULL, type Look, readerOf, Waiting, whyOf, workFor } from './reader';

export interface Workings {
  readonly work: (id: Id) => Held;
  /** Says which quantities wait for each other. */
  readonly circle: (way: readonly Id[]) => never;
  /** The way to look at nodes from the rim. */
  readonly readBy: (ask: (id: Id) => Held) => Read;
  /** The name of a quantity, by a node of it. */
  readonly nameOf: (id: Id) => string;
}

interface Around {
  readonly places: Places;
  /** What stands now. */
  readonly now: () => Moment;
  readonly network: () => Network<Held>;
  /** Units in which bare numbers are read. */
  readonly shown: Shown;
  readonly findings: Findings | undefined;
}

export function workingsOf({ places, now, network: networkNow, shown, findings }: Around): Workings {
  const ask = (id: Id): Held => networkNow().ask(id);
  const found = findings?.found ?? (() => null);

  function work(id: Id): Held {
    const derived = places.derived[id];
    if (derived) return derivedValue(derived);
    const place = places.at(id);
    switch (place.is) {
      case 'value':
        return valueOf(place.named);
      case 'entry':
        return entryOf(place.named);
      case 'there':
        return place.named.of ?? null;
      case 'fact': {
        const { find } = place.fact;
        const made = workFor(() => find(read));
        return isIssue(made) ? made : new FactHeld(made);
      }
      case 'hull':
        return workFor(() => now().catalogue.hull(read));
      case 'units':
        return now().shown;
      case 'inches':
        return now().shown.length !== 'mm';
      case 'findings':
        return now().findings;
      case 'names':
        return now().catalogue;
    }
  }

  function valueOf(named: NamedNode): Value {
    const { of } = named;
    if (!of) return issue(`there is no quantity "${named.name}"`);
    return 'preset' in of ? givenValue(of, named) : derivedValue(of);
  }

  function derivedValue(of: Derived): Value {
    try {
      const value = of.from(read);
      return Number.isFinite(value) ? value : finite(of.meaning, value);
    } catch (fault) {
      return whyOf(fault);
    }
  }

  /** What is written, else the preset, which may turn on a choice of the same cell. */
  function entryOf({ name, of }: NamedNode): EntryHeld {
    if (!of || !('preset' in of)) return { text: '', means: issue(`${name} is no entry`), written: false };
    const written = writtenAt(now(), name);
    if (typeof written === 'number') return { text: '', means: '', written: true, supposed: written };
    const { presetFrom } = of;
    const inForce = written ?? (presetFrom ? workFor(() => presetFrom(read)) : of.preset);
    // A link that waits for a choice leaves no other number in its place.
    const reading = isIssue(inForce) ? { text: '', means: inForce } : readGiven(of, inForce, around);
    const built = builtAt(now(), name);
    return {
      ...reading,
      written: written !== undefined,
      ...(built !== undefined && { built: readBuilt(of, built, around) }),
    };
  }

  function givenValue(of: Given, named: NamedNode): Value {
    const entry = ask(places.entryOf(named)) as EntryHeld;
    if (entry.supposed !== undefined) return finite(of.meaning, entry.supposed);
    const { text, means } = entry.built ?? entry;
    if (typeof means === 'string') return workFor(() => chosenBy(of, text, read));
    if (isIssue(means)) return means;
    const value = workFor(() => means.evaluate((other) => read.number(other)));
    return isIssue(value) ? value : (outOfRange(of)(value) ?? finite(of.meaning, value));
  }

  // What a node holds goes by its place: see `work`.
  const thereBy = (look: (id: Id) => Held, name: string) =>
    look(places.thereOf(places.named(name))) as Given | Derived | null;

  const around: Surroundings = {
    shown,
    told: () => ask(otherId('units')) as Shown,
    kindOf: (name) => thereBy(ask, name)?.kind,
    known: () => {
      ask(otherId('names'));
      return now().catalogue.names();
    },
    meaningOf: (name) => {
      const of = now().catalogue.find(name);
      return of && upToComma(of.meaning);
    },
  };
  const ranges = new WeakMap<Given, ReturnType<typeof rangeOf>>();
  function outOfRange(of: Given): ReturnType<typeof rangeOf> {
    const range = ranges.get(of) ?? rangeOf(of, around);
    ranges.set(of, range);
    return range;
  }

  /** What isn't there is the asker's own fault, and nothing to wait for: only then is the nearest name looked for. */
  function refuseUnknown(name: string): void {
    if (!places.named(name).of) throw new Waiting(issue(unknownName(name, around.known(), around.meaningOf)));
  }

  const lookBy = (look: (id: Id) => Held, more: Pick<Look, 'value' | 'asker' | 'found'>): Look => ({
    has: (name) => thereBy(look, name) !== null,
    meaningOf: around.meaningOf,
    isEntered: (name) => {
      const of = thereBy(look, name);
      if (!of || !('preset' in of)) return false;
      const { written, built } = look(places.entryOf(places.named(name))) as EntryHeld;
      return written || built !== undefined;
    },
    mannerOf: (name) => {
      // Two that fill each other lead back to the first.
      for (const seen = new Set<string>(); !seen.has(name);) {
        seen.add(name);
        const of = thereBy(look, name);
        if (!of || of.manner || !('preset' in of)) return of?.manner;
        const entry = look(places.entryOf(places.named(name))) as EntryHeld;
        name = (entry.built ? undefined : linkIn(entry)) ?? name;
      }
      return undefined;
    },
    hull: () => look(otherId('hull')) as Hull | Issue,
    fact: <T>(name: string, find: (by: Read) => T | Issue) => {
      const held = look(places.fact(name, find));
      // What is held under the name is what this way to find it comes to.
      return held instanceof FactHeld ? (held.found as T) : (held as Issue);
    },
    inches: () => look(otherId('inches')) === true,
    ...more,
  });

  const read = readerOf(
    lookBy(ask, {
      value: (name) => {
        const value = networkNow().askFor(name) as Value;
        if (typeof value === 'object') refuseUnknown(name);
        return value;
      },
      // A fact asks in the name of who asks for it.
      asker: () => nameOf(networkNow().way().findLast(isNoFact) ?? otherId('hull')),
      found: (problem) => {
        ask(otherId('findings'));
        return found(problem);
      },
    }),
  );

  const isNoFact = (id: Id): boolean => places.at(id).is !== 'fact';

  function nameOf(id: Id): string {
    const place = places.at(id);
    return 'named' in place ? place.named.name : HULL;
  }

  return {
    work,
    circle: (way) => {
      const circle = way
        .filter(isNoFact)
        .map(nameOf)
        .filter((name, at, all) => name !== all[at - 1]);
      throw new Waiting({
        issue: `goes round in a circle: ${[...circle, nameOf(way[0]!)].join(' -> ')}`, // a way has a beginning
        circle,
      });
    },
    readBy: (look) =>
      readerOf(
        lookBy(look, {
          value: (name) => {
            const value = look(places.idOf(name)) as Value;
            if (typeof value === 'object') refuseUnknown(name);
            return value;
          },
          asker: () => 'the page',
          found,
        }),
      ),
    nameOf,
  };
}
