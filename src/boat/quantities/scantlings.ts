/**
 * The parts of the boat and the sizes they have until the builder writes others.
 *
 * Presets are common practice for plywood boats of 3 to 6 m, without a source unless one is named; a plan's
 * own scantlings replace them.
 */
import type { KindId } from '../../measure';
import type { Declared } from './quantity';
import { roundPreset } from './round-preset';

export interface Size {
  readonly kind: KindId;
  /** Of which the part is said after: `thickness` of the keelson. */
  readonly meaning: string;
  /** Of a size that tells by itself what it is of. */
  readonly whole?: { readonly label: string; readonly meaning: string };
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
  /** One of them: `chine log`. */
  readonly one: string;
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
  thickness: size('thickness', thickness, '300 mm', '1 mm'),
  width: size('width', width, '3 m'),
});

/** A size whose words need no part beside them. */
const sizeOf = (
  label: string,
  meaning: string,
  ...limits: [preset: string, max: string, min?: string]
): Size => ({
  ...size(meaning, ...limits),
  whole: { label, meaning },
});

const stick = (
  id: string,
  label: string,
  sizes: PartKind['sizes'],
  one = label.replace(/s$/, ''),
): PartKind => ({
  id,
  label,
  one,
  sizes,
  of: 'timber',
  material: 'douglasFirCoast',
});
const sheet = (id: string, label: string, sizes: PartKind['sizes']): PartKind => ({
  id,
  label,
  one: label.replace(/s$/, ''),
  sizes,
  of: 'plywood',
  material: 'douglasFir',
});

/** Parts that every boat has, whatever its panels. */
export const partKinds: readonly PartKind[] = [
  stick('keelson', 'keelson', section('18 mm', '90 mm')),
  stick('stem', 'stem', {
    siding: size('thickness athwart', '45 mm', '300 mm'),
    moulded: {
      ...size('depth fore and aft', '90 mm', '500 mm'),
      source: 'square to its outer face; common practice, no source',
    },
  }),
  stick('chineLog', 'chine logs', section('19 mm', '38 mm')),
  stick('sheerClamp', 'sheer clamps', section('19 mm', '38 mm')),
  stick('rubRail', 'rub rails', section('19 mm', '38 mm')),
  stick('frame', 'frames', {
    siding: { ...size('thickness', '19 mm', '150 mm'), source: 'fore and aft; common practice, no source' },
    moulded: {
      ...sizeOf('Depth of the members', 'depth of the members of the frames', '70 mm', '500 mm', '20 mm'),
      source: 'from the edge on the skin inward, square to it; common practice, no source',
    },
    aboveSheer: {
      ...sizeOf('Left above the sheer', 'wood of the frames left above the sheer', '25 mm', '1 m', '0 mm'),
      source: 'trimmed when the sheer has been faired; common practice, no source',
    },
    limberWidth: {
      ...sizeOf(
        'Limber width, each side',
        'width of the limbers on each side of the keelson',
        '12 mm',
        '2 in',
      ),
      source: 'how far the slot runs on beyond the keelson on each side; common practice, no source',
    },
    limberDrill: {
      ...sizeOf(
        'Drill at the slot’s corners',
        'drill for the upper corners of the keelson’s slot',
        '12 mm',
        '2 in',
      ),
      kind: 'drill',
      source: 'rounds the two inner corners of the slot; common practice, no source',
    },
    screwClearance: {
      ...sizeOf(
        'Screws clear of later cuts by',
        'wood kept between screw heads and later cuts',
        '12.5 mm',
        '100 mm',
        '0 mm',
      ),
      source:
        'three diameters of a No. 8 screw, 0.164 in (4.2 mm), from the rim of its head; common practice, no source',
    },
  }),
  stick('thwart', 'thwarts', {
    thickness: size('thickness', '19 mm', '60 mm'),
    width: size('width', '230 mm', '600 mm', '50 mm'),
    height: {
      ...sizeOf(
        'Thwarts, above the keel',
        'height above the keel at the widest station of the thwarts',
        '180 mm',
        '1 m',
        '20 mm',
      ),
      source: 'Small Craft Advisor, fixed-seat rowing geometry: 5.5 to 8 in (140 to 200 mm) above the bilge',
    },
    number: {
      kind: 'count',
      meaning: 'number',
      whole: { label: 'Number of thwarts', meaning: 'number of the thwarts' },
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
    thickness: size('thickness', SKIN_PRESETS[panel] ?? '9 mm', '60 mm', '1 mm'),
    layers: {
      kind: 'count',
      meaning: 'layers, glued in place',
      preset: '1',
      min: '1',
      max: '6',
      step: '1',
      source: 'each of its share of the thickness; two thin ones bend tighter than one thick one',
    },
  });
}

/** The sizes that the builder may write about a part; its wood is in part-woods.ts. */
export function sizesOf(part: PartKind): Declared[] {
  return Object.entries(part.sizes).map(([key, spec]): Declared => {
    const { kind, meaning, whole, preset, min, max, step, source = PRACTICE } = spec;
    return {
      name: `${part.id}.${key}`,
      kind,
      label: whole?.label ?? `${capital(part.one)} ${meaning}`,
      brief: whole?.label ?? capital(meaning),
      meaning: whole?.meaning ?? `${meaning} of the ${part.label}`,
      source,
      ...roundPreset(kind, preset),
      min,
      max,
      step,
    };
  });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
