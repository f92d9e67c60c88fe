/**
 * The graph beside other ways of passing a change along, on one shape: the links that the demo boat's own
 * quantities have. Every node is the same small sum, so that what is timed is the passing along and not
 * the boat.
 */
import { computed, type ReadonlySignal, signal, type Signal } from '@preact/signals-core';
import { HyperFormula } from 'hyperformula';
import { demoBoat, type Derived, type Given, ownerOf } from '../../src/boat';
import { plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { catalogueFrom } from '../../src/notebook/graph/on-hand';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { besideEachOther, type Section, spread } from './table';

const RUNS = 60;

/** Nodes in an order in which each comes after what it reads. */
interface Node {
  readonly name: string;
  /** Places of the nodes it reads; none for an input. */
  readonly reads: readonly number[];
}

/** One way: write an input, then read every node. */
interface Peer {
  readonly write: (place: number, value: number) => void;
  readonly readAll: () => number;
}

export const graphBesidePeers = (): Section => besidePeers(shapeOfDemoBoat(), "The demo boat's shape");

export const twiceBesidePeers = (): Section => besidePeers(twice(shapeOfDemoBoat()), 'Twice the shape');

function besidePeers(nodes: readonly Node[], shape: string): Section {
  const links = nodes.reduce((sum, { reads }) => sum + reads.length, 0);
  const edits = ['keelson.thickness', 'frame3.sheer.height', 'scarf.slope'].map((name) => ({
    name,
    place: nodes.findIndex((node) => node.name === name),
  }));
  const peers: readonly (readonly [string, Peer])[] = [
    ['plain loop over all nodes', plainLoop(nodes)],
    ['signals, bare', bareSignals(nodes)],
    ['our graph', ourGraph(nodes)],
    ['spreadsheet engine', spreadsheet(nodes)],
  ];
  const [, reference] = peers[0]!;
  const columns = edits.map(({ place }) => {
    const times = besideEachOther(
      RUNS,
      peers.map(([, peer]) => (i: number) => {
        peer.write(place, 1 + (i % 2) / 8);
        return peer.readAll();
      }),
    );
    for (const [name, peer] of peers) agree(name, peer, reference, place);
    return times.map((one) => spread(one).median);
  });
  return {
    title: 'Passing a change along',
    says: `${shape}: ${nodes.length} nodes, ${links} links, each node a sum. Write one entry, read every node; median of ${RUNS}, ms. In brackets the nodes that move.`,
    head: ['', ...edits.map(({ name, place }) => `${name} (${downstream(nodes, place)})`)],
    rows: peers.map(([name], at) => [name, ...columns.map((times) => times[at]!)]),
  };
}

/** Peers that come to other sums have not done the same work. */
function agree(name: string, peer: Peer, reference: Peer, place: number): void {
  for (const one of [peer, reference]) one.write(place, 1.5);
  const [sum, wanted] = [peer.readAll(), reference.readAll()];
  if (Math.abs(sum - wanted) > 1e-9 * Math.abs(wanted))
    throw new Error(`${name} comes to ${sum}, not ${wanted}`);
  for (const one of [peer, reference]) one.write(place, 1);
}

function shapeOfDemoBoat(): readonly Node[] {
  const graph = createGraph({
    catalogue: () => wholeCatalogue(demoBoat),
    entries: () => ({}),
    shown: plainShown,
  });
  for (const name of graph.names) graph.value(name);
  const places = new Map<string, number>();
  const nodes: Node[] = [];
  const place = (name: string): number => {
    const known = places.get(name);
    if (known !== undefined) return known;
    const reads = graph.dependsOn(name).map(place);
    nodes.push({ name, reads });
    places.set(name, nodes.length - 1);
    return nodes.length - 1;
  };
  for (const name of graph.names) place(name);
  return nodes;
}

/** A second of the same shape that hangs on the first: each of its inputs follows the one of the same name. */
function twice(nodes: readonly Node[]): readonly Node[] {
  const second = nodes.map(({ name, reads }, i): Node => ({
    name: `second.${name}`,
    reads: reads.length === 0 ? [i] : reads.map((read) => read + nodes.length),
  }));
  return [...nodes, ...second];
}

function downstream(nodes: readonly Node[], from: number): number {
  const moved = new Set([from]);
  nodes.forEach(({ reads }, i) => {
    if (reads.some((read) => moved.has(read))) moved.add(i);
  });
  return moved.size;
}

/** Halved, so that long chains stay small. */
const sum = (reads: readonly number[], valueAt: (place: number) => number) =>
  reads.reduce((total, place) => total + valueAt(place) / 2, 1);

function plainLoop(nodes: readonly Node[]): Peer {
  const inputs = nodes.map(() => 1);
  return {
    write: (place, value) => {
      inputs[place] = value;
    },
    readAll: () => {
      const values: number[] = [];
      nodes.forEach(({ reads }, i) => values.push(inputs[i]! * sum(reads, (place) => values[place]!))); // in range by construction
      return values.reduce((total, value) => total + value, 0);
    },
  };
}

function bareSignals(nodes: readonly Node[]): Peer {
  const inputs: Signal<number>[] = nodes.map(() => signal(1));
  const values: ReadonlySignal<number>[] = nodes.map(({ reads }, i) =>
    computed(() => inputs[i]!.value * sum(reads, (place) => values[place]!.value)),
  );
  return {
    write: (place, value) => {
      inputs[place]!.value = value;
    },
    readAll: () => values.reduce((total, value) => total + value.value, 0),
  };
}

/** Our graph: entries are texts, read anew when they change; derived quantities ask by name. */
function ourGraph(nodes: readonly Node[]): Peer {
  const written = signal<Readonly<Record<string, string>>>({});
  const given: Given[] = nodes.map((_, i) => ({
    name: `in.n${i}`,
    kind: 'number',
    meaning: `entry ${i}`,
    preset: '1',
  }));
  const named = nodes.map((_, i) => `out.n${i}`);
  const derived: Derived[] = nodes.map(({ reads }, i) => ({
    name: named[i]!,
    kind: 'number',
    meaning: `sum ${i}`,
    from: (read) => read.number(given[i]!.name) * sum(reads, (place) => read.number(named[place]!)),
  }));
  const catalogue = catalogueFrom([ownerOf([...given, ...derived])], {
    hull: () => {
      throw new Error('there is no hull here');
    },
  });
  const graph = createGraph({
    catalogue: () => catalogue,
    entries: () => written.value,
    shown: plainShown,
  });
  return {
    write: (place, value) => {
      written.value = { ...written.peek(), [`in.n${place}`]: String(value) };
    },
    readAll: () => named.reduce((total, name) => total + (graph.peek(name) as number), 0),
  };
}

/** Inputs in column A, sums in column B, a row a node. */
function spreadsheet(nodes: readonly Node[]): Peer {
  const sheet = HyperFormula.buildFromArray(
    nodes.map(({ reads }, i) => [1, `=A${i + 1}*(1${reads.map((place) => `+B${place + 1}/2`).join('')})`]),
    { licenseKey: 'gpl-v3' },
  );
  return {
    write: (place, value) => {
      sheet.setCellContents({ sheet: 0, row: place, col: 0 }, value);
    },
    readAll: () =>
      nodes.reduce((total, _, row) => total + (sheet.getCellValue({ sheet: 0, row, col: 1 }) as number), 0),
  };
}
