/**
 * The parts of the boat and the sizes they have until the builder writes others.
 *
 * Presets are common practice for plywood boats of 3 to 6 m, without a source unless one is named; a plan's
 * own scantlings replace them.
 */
import type { KindId } from '../../measure';
import { plywood } from '../../trade/plywood';
import { timber } from '../../trade/timber';
import type { Given, Option } from './quantity';
import { roundPreset } from './round-preset';

export interface Size {
  readonly kind: KindId;
  readonly meaning: string;
  readonly preset: string;
  readonly min: string;
  readonly max: string;
  readonly step: string;
  readonly source?: string;
}

export interface PartKind {
  readonly id: string;
  /** Fits after "the": `keelson`, `chine logs`. */
  readonly label: string;
  readonly sizes: Readonly<Record<string, Size>>;
  readonly of: 'timber' | 'plywood';
  readonly material: string;
}

const PRACTICE = 'common practice, no source';

const size = (meaning: string, preset: string, max: string, min = '3 mm'): Size => ({
  kind: 'length',
  meaning,
  preset,
  min,
  max,
  step: '1 mm',
});

/** A stick's section: thickness is the smaller side, bent the easy way. */
const section = (thickness: string, width: string) => ({
  thickness: size('thickness', thickness, '150 mm'),
  width: size('width', width, '400 mm'),
});

const FIR = 'douglasFirCoast';
const stick = (id: string, label: string, sizes: PartKind['sizes'], material = FIR): PartKind => ({
  id,
  label,
  sizes,
  of: 'timber',
  material,
});
const sheet = (id: string, label: string, sizes: PartKind['sizes'], material = 'douglasFir'): PartKind => ({
  id,
  label,
  sizes,
  of: 'plywood',
  material,
});

/** Parts that every boat has, whatever its panels. */
export const partKinds: readonly PartKind[] = [
  stick('keelson', 'keelson', section('18 mm', '90 mm')),
  stick('stem', 'stem', {
    siding: size('thickness athwart', '45 mm', '200 mm'),
    moulded: size('depth fore and aft', '90 mm', '400 mm'),
  }),
  stick('chineLog', 'chine logs', section('19 mm', '38 mm')),
  stick('sheerClamp', 'sheer clamps', section('19 mm', '38 mm')),
  stick('rubRail', 'rub rails', section('19 mm', '38 mm')),
  stick('frame', 'frames', {
    siding: size('thickness', '19 mm', '100 mm'),
    moulded: size('depth of the members', '70 mm', '300 mm', '20 mm'),
    aboveSheer: size('wood left above the sheer until it is trimmed', '25 mm', '1 m', '0 mm'),
    limberWidth: size('width of the limbers on each side of the keelson', '12 mm', '2 in'),
    limberDrill: {
      ...size('drill for the upper corners of the keelson’s slot', '12 mm', '2 in'),
      kind: 'drill',
    },
    screwClearance: {
      ...size('wood kept between screw heads and later cuts', '12.5 mm', '100 mm', '0 mm'),
      source: 'three diameters of a No. 8 screw, 0.164 in (4.2 mm); common practice, no source',
    },
  }),
  stick('thwart', 'thwarts', {
    thickness: size('thickness', '19 mm', '60 mm'),
    width: size('width', '230 mm', '600 mm', '50 mm'),
    height: {
      ...size('height above the keel at the widest station', '180 mm', '1 m', '20 mm'),
      source: 'Small Craft Advisor, fixed-seat rowing geometry: 5.5 to 8 in (140 to 200 mm) above the bilge',
    },
    number: {
      kind: 'count',
      meaning: 'number',
      preset: '2',
      min: '0',
      max: '10',
      step: '1',
    },
  }),
  sheet('transom', 'transom', { thickness: size('thickness', '18 mm', '60 mm') }),
  sheet('gusset', 'gussets', {
    thickness: size('thickness', '9 mm', '30 mm'),
    leg: size('length along each member', '150 mm', '600 mm', '30 mm'),
  }),
];

const SKIN_PRESETS: Readonly<Record<string, string>> = { bottom: '9 mm', side: '6 mm' };

/** The panel's skin as a part: bottoms and bilges 9 mm, sides 6 mm. */
export function skinKind(panel: string, label: string): PartKind {
  return sheet(panel, label, {
    thickness: size('thickness', SKIN_PRESETS[panel] ?? '9 mm', '40 mm', '2 mm'),
  });
}

const optionsOf = { timber: rowsOf(timber), plywood: rowsOf(plywood) } as const;

function rowsOf(table: { readonly rows: readonly Option[] }): readonly Option[] {
  return table.rows.map(({ id, label }) => ({ id, label }));
}

/** What the builder may write about a part: its sizes and its wood. */
export function scantlingsOf(part: PartKind): Given[] {
  const sizes = Object.entries(part.sizes).map(([key, spec]): Given => ({
    name: `${part.id}.${key}`,
    kind: spec.kind,
    meaning: `${spec.meaning} of the ${part.label}`,
    source: spec.source ?? PRACTICE,
    ...roundPreset(spec.kind, spec.preset),
    min: spec.min,
    max: spec.max,
    step: spec.step,
  }));
  const wood: Given = {
    name: `${part.id}.${part.of}`,
    kind: 'choice',
    meaning: `${part.of} of the ${part.label}`,
    source: PRACTICE,
    preset: part.material,
    options: optionsOf[part.of],
  };
  return [...sizes, wood];
}
