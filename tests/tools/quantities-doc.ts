/**
 * `docs/quantities.md`: every named quantity, with its kind, its unit and what it is.
 *
 * The names are those of the starter boats. Names that differ only in the station, edge, panel or wood
 * they speak of stand as one row, under a pattern: `STATION.EDGE.halfBreadth`.
 */
import { type Derived, type Given, lists, starters, type Table } from '../../src/boat';
import { type Cell, isChoice } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { kindOf } from '../../src/measure';
import { adhesives } from '../../src/trade/adhesives';
import { plywood } from '../../src/trade/plywood';
import { timber } from '../../src/trade/timber';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { allOf } from '../notebook/all-of';

/** One row of the page: a quantity, or all of a pattern. */
interface Row {
  readonly kind: Given['kind'];
  readonly meanings: Set<string>;
  /** None for what follows from others. */
  readonly presets: Set<string>;
  readonly boats: Set<string>;
  /** Stations that the pattern stands for: some of them frames, some of them ends. */
  readonly at: Set<'frame' | 'end'>;
}
type Rows = Map<string, Row>;

export function quantitiesPage(): string {
  const rows = boatRows();
  const sections = boatSections.map(({ title, says, holds }) => {
    const own = [...rows].filter(([pattern]) => holds.test(pattern));
    return [
      `## ${title}`,
      '',
      says,
      '',
      ...tableOf(own.map(([pattern, row]) => boatLine(pattern, row))),
    ].join('\n');
  });
  return `${[preface, ...sections, ...cells.map(cellSection)].join('\n\n')}\n`;
}

const preface = `# Quantities

Every number and every choice has a name, by which entries, notebooks and the command line ask for it. A *given*
quantity is an entry that may be written over; until then its preset holds. The others are *derived*: they follow
from the rest and can't be written. Values are kept in the SI unit shown. Plain numbers have the unit 1: a slope of
1 in 8 is 8, and 12 % is 0.12.

Words in capitals stand for names of the boat in hand: STATION for each of its stations, FRAME for those between
the ends, END for the ends; EDGE for the keel, the chines and the sheer; PANEL for \`bottom\`, any \`bilge\`, and
\`side\`. Names are the plan's own in camel case: *frame 3* is \`frame3\`, *stern transom* is \`sternTransom\`.

Made by \`npm run docs\` from the starter boats and the cells; do not edit.`;

/** What each wood and each glue is called, by its table and id. */
const woods = new Map(
  [timber, plywood, adhesives].flatMap(({ id, rows }) =>
    rows.map((row) => [`${id}.${row.id}`, row.label] as const),
  ),
);
const idsOf = ({ rows }: { readonly rows: readonly { readonly id: string }[] }) =>
  rows.map(({ id }) => `\`${id}\``).join(', ');

const boatSections = [
  {
    title: 'The hull',
    says: 'What the offsets make, as a whole.',
    holds: /^hull\./,
  },
  {
    title: 'Edges',
    says: 'The long lines of the hull.',
    holds: /^EDGE\./,
  },
  {
    title: 'Panels',
    says: 'The skin, panel by panel.',
    holds: /^PANEL\./,
  },
  {
    title: 'Stations',
    says: 'The offsets, and how the skin lies at each station.',
    holds: /^(STATION|FRAME|END)\./,
  },
  {
    title: 'Parts',
    says: 'Scantlings, and what follows from them.',
    holds: /^(?!hull\.|timber\.|plywood\.|adhesive\.)[a-z]/,
  },
  {
    title: 'Woods',
    says: `The tables, where the source gives the number. TIMBER is one of ${idsOf(timber)}; PLYWOOD one of ${idsOf(plywood)}.`,
    holds: /^(timber|plywood)\./,
  },
  {
    title: 'Glues',
    says: `By their kind. ADHESIVE is one of ${idsOf(adhesives)}.`,
    holds: /^adhesive\./,
  },
];

/** The boat's own quantities by pattern, in the order in which the boats list them. */
function boatRows(): Rows {
  const rows: Rows = new Map();
  const ofCells = new Set(cells.map(({ id }) => id));
  for (const { id, table } of starters) {
    const patternOf = patternsOn(table);
    const { given, derived } = allOf(wholeCatalogue(table));
    for (const quantity of [...given, ...derived]) {
      if (ofCells.has(quantity.name.split('.')[0] ?? '')) continue;
      const { pattern, meaning, at } = patternOf(quantity);
      const row = rows.get(pattern) ?? {
        kind: quantity.kind,
        meanings: new Set(),
        presets: new Set(),
        boats: new Set(),
        at: new Set(),
      };
      rows.set(pattern, row);
      row.meanings.add(meaning);
      row.boats.add(id);
      if ('preset' in quantity)
        row.presets.add(
          /^STATION.*\.(x|halfBreadth|height)$/.test(pattern) ? 'the plan’s number' : quantity.preset,
        );
      if (at) row.at.add(at);
    }
  }
  return rows;
}

interface Patterned {
  readonly pattern: string;
  readonly meaning: string;
  readonly at?: 'frame' | 'end';
}

/** How names and meanings of this boat become patterns. */
function patternsOn(table: Table): (quantity: Given | Derived) => Patterned {
  const on = lists(table);
  const labels = (options: readonly { readonly id: string; readonly label: string }[]) =>
    new Map(options.map(({ id, label }) => [id, label]));
  const stations = labels(on.stations);
  const edges = labels(on.edges);
  const panels = labels(on.panels);
  const frames = labels(on.frames);

  return ({ name, meaning }) => {
    const [first = '', second = ''] = name.split('.');
    if (first === 'timber' || first === 'plywood' || first === 'adhesive') {
      return {
        pattern: name.replace(`.${second}.`, `.${first.toUpperCase()}.`),
        meaning: meaning.replace(` of ${woods.get(`${first}.${second}`)}`, ''),
      };
    }
    const said = (text: string, word: string, label: string) =>
      text.replaceAll(new RegExp(`\\b${label}\\b`, 'g'), word);
    const atStation =
      stations.has(first) &&
      (edges.has(second) || panels.has(second) || ['position', 'spacing', 'stands'].includes(second));
    let pattern = name;
    let says = meaning;
    for (const [i, part] of name.split('.').entries()) {
      if (i === 0 && atStation) {
        pattern = pattern.replace(part, 'STATION');
        says = said(says, 'STATION', stations.get(part)!);
      } else if ((i === 0 || atStation) && edges.has(part)) {
        pattern = pattern.replace(part, 'EDGE');
        says = said(says, 'the EDGE', `the ${edges.get(part)!}`);
      } else if ((i === 0 || atStation) && panels.has(part)) {
        pattern = pattern.replace(part, 'PANEL');
        says = said(says, 'the PANEL', `the ${panels.get(part)!}`);
      }
    }
    return { pattern, meaning: says, ...(atStation ? { at: frames.has(first) ? 'frame' : 'end' } : {}) };
  };
}

type Line = readonly [name: string, kind: Given['kind'], meaning: string, preset: string];

function boatLine(pattern: string, { kind, meanings, presets, boats, at }: Row): Line {
  const word = at.size === 2 ? 'STATION' : at.has('frame') ? 'FRAME' : 'END';
  // A part by a name of its own may be called otherwise on one plan or another; the first will do.
  const says = /^[A-Z]/.test(pattern) ? [...meanings].join('; or ') : ([...meanings][0] ?? '');
  const preset = [...presets].join(' or ');
  return [pattern.replace('STATION', word), kind, says.replaceAll('STATION', word) + onWhich(boats), preset];
}

function onWhich(boats: ReadonlySet<string>): string {
  const without = starters.map(({ id }) => id).filter((id) => !boats.has(id));
  if (without.length === 0) return '';
  return without.length < boats.size ? ` (not on ${without.join(', ')})` : ` (on ${[...boats].join(', ')})`;
}

function cellSection(cell: Cell): string {
  const inputs = Object.entries(cell.inputs).map(([key, spec]): Line => {
    const of =
      isChoice(spec) && typeof spec.options !== 'string' && spec.options.length <= 8
        ? `: ${spec.options.map(({ id }) => id).join(', ')}`
        : '';
    const link = spec.from
      ?.replace('{self}', cell.id)
      .replaceAll(/\{(\w+)\}/g, (_, choice: string) => choice.toUpperCase());
    const preset = link === undefined ? spec.preset : `from \`${link}\`, else ${spec.preset}`;
    return [`${cell.id}.${key}`, spec.kind, spec.label + of, preset];
  });
  const steps = Object.entries(cell.steps).map(([key, { kind, meaning }]): Line => [
    `${cell.id}.${key}`,
    kind,
    meaning,
    '',
  ]);
  const { table } = cell;
  const rows = table
    ? [
        '',
        `Each derived quantity also stands for every ${table.over}: \`${cell.id}.${table.over.toUpperCase()}.${table.columns[0]?.of ?? ''}\`.`,
      ]
    : [];
  return [
    `## ${cell.id}`,
    '',
    `${cell.title}: ${cell.question}`,
    ...rows,
    '',
    ...tableOf([...inputs, ...steps]),
  ].join('\n');
}

function tableOf(lines: readonly Line[]): string[] {
  const cellsOf = ([name, kind, meaning, preset]: Line) => [
    `\`${name}\``,
    kind,
    kind === 'choice' ? '' : kindOf(kind).si,
    meaning,
    preset === '' ? 'derived' : `given: ${preset}`,
  ];
  return [
    '| name | kind | unit | what it is | |',
    '|---|---|---|---|---|',
    ...lines.map(
      (line) =>
        `| ${cellsOf(line)
          .map((text) => text.replaceAll('|', '\\|'))
          .join(' | ')} |`,
    ),
  ];
}
