/**
 * What a link brings: a boat as a boat file has her, and the place in a notebook at which it opens. A boat that begins
 * from a starter names it, and says only what is written over it; the rest is read and checked as a boat file is.
 */
import * as v from 'valibot';
import { type Boat, isUnread, readBoatFile, starters, type Table, type Unread, writeTable } from '../../boat';
import { asFile, BOAT_FILE, LONGEST_FILE } from '../../boat/file/boat-file';
import { numberOfWord } from '../../kernel';
import { noBoat } from '../state/state';
import { unpacked } from './pack';

export interface BoatLink {
  /** Where it brings no boat, what is written on a notebook's sheet without one. */
  readonly boat: Boat;
  readonly isBoatless: boolean;
  /** The notebook that it opens, and the place there; null for the one that the page opens on, and for its top. */
  readonly notebook: string | null;
  readonly place: string | null;
}

/** Letters of a link that is looked at: all that any boat needs, many times over. */
export const LONGEST_LINK = 100_000;

const LINK_VERSION = 1;
/** Figures of what followed for a part on the day it was cut: far finer than any wood is cut. */
const FIGURES = 9;

const word = (longest: number, form: RegExp, message: string) =>
  v.optional(v.pipe(v.string(message), v.maxLength(longest, message), v.regex(form, message)));

const schema = v.object(
  {
    link: v.literal(LINK_VERSION, 'is of another edition of Battenbook'),
    starter: v.optional(v.string('must be a text')),
    // Of the starter's table.
    sum: v.optional(v.string('must be a text')),
    hull: v.optional(v.unknown()),
    notebook: word(
      60,
      /^[\p{Letter}\p{Number}]+(-[\p{Letter}\p{Number}]+)*$/u,
      'must be the name of a notebook',
    ),
    place: word(120, /^[\p{Letter}\p{Number}._-]+$/u, 'must be a place in a notebook'),
  },
  'must be an object',
);

const NO_STARTER = 'none';
const DAMAGED = 'it is cut short or damaged. Ask for it again, or copy the whole of it';

/** The text of a link; reading it gives the same again, but for the log and what was said to questions, which stay at home. */
export function writeLink({ boat, isBoatless, notebook, place }: BoatLink): string {
  const { format: _, hull, name, asBuilt, log: __, lessons: ___, ...written } = asFile(boat);
  const starter = starters.find(({ table }) => sumOf(table) === sumOf(boat.table));
  return JSON.stringify({
    link: LINK_VERSION,
    ...(isBoatless
      ? { starter: NO_STARTER }
      : starter
        ? { starter: starter.id, sum: sumOf(starter.table) }
        : { hull }),
    ...(name !== boat.table.name && { name }),
    ...written,
    ...(asBuilt !== undefined && { asBuilt: JSON.parse(JSON.stringify(asBuilt, shorter)) as unknown }),
    ...(notebook !== null && { notebook }),
    ...(place !== null && { place }),
  });
}

const shorter = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(FIGURES)) : value;

/** Reads the letters of a link; what is wrong with it is told as the ends of sentences. */
export async function openLink(letters: string): Promise<BoatLink | Unread> {
  if (letters.length > LONGEST_LINK)
    return { faults: [`it is longer than ${LONGEST_LINK} letters; no link of ours is`] };
  const text = await unpacked(letters, LONGEST_FILE);
  return text === null ? { faults: [DAMAGED] } : readLink(text);
}

export function readLink(text: string): BoatLink | Unread {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { faults: [DAMAGED] };
  }
  const read = v.safeParse(schema, json);
  if (!read.success) return { faults: [told(read.issues[0])] };
  const { starter, sum, hull, notebook = null, place = null } = read.output;
  const isBoatless = starter === NO_STARTER;
  if (isBoatless && notebook === null) return { faults: ['it names no notebook'] };
  const plan = isBoatless ? noBoat : starters.find(({ id }) => id === starter)?.table;
  if (starter !== undefined && !plan)
    return { faults: [`the boat that it begins from, “${starter.slice(0, 40)}”, does not come along here`] };
  if (plan && !isBoatless && sumOf(plan) !== sum)
    return { faults: [`${plan.name} has other offsets here than where it was made`] };
  const boat = boatIn({ ...(json as object), hull: plan ? writeTable(plan) : hull });
  return isUnread(boat) ? boat : { boat, isBoatless, notebook, place };
}

function boatIn(json: object): Boat | Unread {
  try {
    return readBoatFile(JSON.stringify({ ...json, format: BOAT_FILE }));
  } catch {
    // Lists within lists, deeper than anything can be written.
    return { faults: ['it holds no boat'] };
  }
}

function told(fault: v.InferIssue<typeof schema>): string {
  const key = v.getDotPath(fault);
  if (key === null || fault.received === 'undefined') return 'it is no link of this notebook';
  return key === 'link' ? `it ${fault.message}` : `its ${key} ${fault.message}`;
}

const sums = new WeakMap<Table, string>();

/** A short sum of a table, by which two that are not the same are told apart. */
export function sumOf(table: Table): string {
  const known = sums.get(table);
  if (known !== undefined) return known;
  const text = numberOfWord(JSON.stringify(writeTable(table))).toString(36);
  sums.set(table, text);
  return text;
}
