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
import type { Derived, Given, Hull, Read, Value } from '../../boat';
import { once, onceEach } from '../../boat/once';
import { type Issue, type Manner, type Shown, writeExact } from '../../measure';
import type { Findings } from './findings';
import { namedIn } from './given';
import { type EntryHeld, type Held, sameHeld } from './held';
import { type Moment, type Supposed, tellDifferences } from './moment';
import { createNetwork, type Id, type Network } from './network';
import type { Catalogue } from './on-hand';
import { otherId, type Places, placesIn } from './places';
import { HULL, workFor } from './reader';
import type { Entries } from '../state/state';
import { workingsOf } from './workings';

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
  /** How a quantity is written: in its own manner, or in that of the one that alone fills it; tracked. */
  mannerOf(name: string): Manner | undefined;
  /** The entry of a given quantity now; tracked. */
  entry(name: string): EntryState | undefined;
  /** The hull, or why it can't be drawn; tracked. */
  hull(): Hull | Issue;
  /** The quantities that one read when it was last worked out. */
  dependsOn(name: string): readonly string[];
  /** Works something out from the graph, turning a missing value into an issue; tracked. */
  readonly workOut: <T>(by: (read: Read) => T) => T | Issue;
  /**
   * The same graph under other entries; null stands for a preset, a number is in SI and held to no limit of the
   * entry's. It follows this one, and works out only what comes to something else.
   * @param changes tracked
   */
  with(changes: () => Supposed): Graph;
  /**
   * Works something out under one change of entries after another, as a chart does that sweeps an input: all are asked
   * of one graph laid over this, so that each works out only what differs from the last. Tracked.
   */
  supposing<T>(by: (read: Read) => T): (changes: Supposed) => T | Issue;
  /**
   * The same graph with what was measured or cut to in place of its entries.
   * @param built tracked
   */
  asBuilt(built: () => Entries): Graph;
  /**
   * The same graph for a part of the page that lies out of sight most of the time: who looks at it is told of an edit
   * at once as long as it follows, and else when the page is at rest.
   * @param follows tracked
   * @param rested changes when what does not follow is to catch up; tracked
   */
  seenAt(follows: ReadonlySignal<boolean>, rested: ReadonlySignal<unknown>): Graph;
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
  const { at: placeAt } = places;
  /** What the network knows of. */
  let now: Moment = moment.peek();
  below?.look(now.below!); // a graph over another has its moment over the other's

  const { work, circle, readBy, nameOf } = workingsOf({
    places,
    now: () => now,
    network: () => network,
    shown: parts.shown,
    findings: parts.findings,
  });
  const network: Network<Held> = createNetwork<Held>({
    work,
    circle,
    same: sameHeld,
    names: places.names,
    idOf: places.idOf,
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

  /** Quantities that a node was worked out from, by way of facts too. */
  function quantitiesAskedBy(id: Id): string[] {
    return [...network.links.of(id)].flatMap((link) => {
      const { is } = placeAt(link);
      if (is === 'fact') return quantitiesAskedBy(link);
      return is === 'value' || is === 'hull' ? [nameOf(link)] : [];
    });
  }

  /** Made for a node when the page first looks at it. */
  const rimOf = onceEach((id: Id) =>
    computed(() => {
      look(moment.value);
      return network.value(id);
    }),
  );
  const rim = (id: Id): Held => rimOf(id).value;
  /** What the node holds now, for who looks once. */
  const glance = (id: Id): Held => {
    look(moment.peek());
    return network.value(id);
  };

  const valueBy =
    (look: (id: Id) => Held) =>
    (name: string): Value =>
      look(places.idOf(name)) as Value;
  /** What is found under a name, for the page: it is told where that becomes something else. */
  const foundAs = onceEach((name: string) => computed(() => catalogue.value.find(name)));

  const over = (under: Laid, more: () => Partial<Moment>, design?: () => Laid): Laid => {
    const moment = computed((): Moment => {
      const below = under.moment.value;
      return { ...below, below, written: nothing, built: nothing, ...more() };
    });
    return lay(parts, places, catalogue, moment, under, design);
  };

  /** One graph over this for all that is asked in passing, whatever is changed in it. */
  const aside = once(() => over(laid, () => ({})));

  /** Has whoever asks now woken by what those nodes of a graph over this were worked out from that is the same here. */
  function track({ network: above }: Laid, asked: readonly Id[], rim: (id: Id) => Held): void {
    const seen = new Set(asked);
    for (const id of seen) {
      if (sameHeld(above.value(id), network.value(id))) rim(id);
      else for (const link of above.links.of(id)) seen.add(link);
    }
  }

  /**
   * @param rim how the page looks at nodes
   * @param designed the values before anything was measured, looked at alike
   */
  const facing = (rim: (id: Id) => Held, designed: Graph['designed']): Graph => {
    const readByPage = readBy(rim);
    return {
      get names() {
        return catalogue.value.names();
      },
      namesOf: (word) => catalogue.value.namesOf(word),
      has: (name) => foundAs(name).value !== undefined,
      quantity: (name) => foundAs(name).value,
      value: valueBy(rim),
      peek: valueBy(glance),
      designed,
      entry: (name) => {
        const of = foundAs(name).value;
        if (!of || !('preset' in of)) return undefined;
        const held = rim(places.entryOf(places.named(name))) as EntryHeld; // see `work`
        const { built, written, supposed } = held;
        const text = supposed === undefined ? held.text : writeExact(supposed, of.kind, parts.shown);
        return { text, written, names: namedIn(held), ...(built && { built: built.text }) };
      },
      mannerOf: (name) => readByPage.mannerOf?.(name),
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
      supposing: (by) => (changes) => {
        const under = aside();
        const below = laid.moment.peek();
        under.look({ ...below, below, written: changes, built: nothing });
        const asked: Id[] = [];
        const answer = workFor(() =>
          by(
            readBy((id) => {
              asked.push(id);
              return under.network.value(id);
            }),
          ),
        );
        track(under, asked, rim);
        return answer;
      },
      asBuilt: (built) => over(laid, () => ({ built: built() }), laid.design).graph,
      seenAt: (follows, rested) => {
        const seenOf = onceEach((id: Id) =>
          computed(() => {
            if (follows.value) return rim(id);
            void rested.value;
            return glance(id);
          }),
        );
        const design = once(() => laid.design().graph.seenAt(follows, rested));
        return facing(
          (id) => seenOf(id).value,
          (name) => design().value(name),
        );
      },
    };
  };
  const graph = facing(rim, (name) => laid.design().graph.value(name));
  const laid: Laid = { graph, network, moment, look, design: designOf ?? (() => laid) };
  return laid;
}
