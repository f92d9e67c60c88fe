/**
 * What a learner hands in: a text that holds what was said to a notebook's questions, and nothing else. It is made and
 * read in the browser; a letter that was lost or changed on the way is told by the sum of what is packed.
 */
import * as v from 'valibot';
import { type Lesson, lessonsForm } from '../../boat';
import { packed, unpacked } from '../link/pack';

export interface HandedIn {
  readonly name: string;
  readonly notebook: string;
  readonly lesson: Lesson;
}
export interface Damaged {
  readonly fault: string;
}
export const isDamaged = (one: HandedIn | Damaged): one is Damaged => 'fault' in one;

export const LONGEST_NAME = 60;
/** Bytes that one may unfold to. */
const MOST = 100_000;
/** That are read of one paste. */
export const MOST_HANDED_IN = 200;

const schema = v.object({
  answers: v.literal(1),
  name: v.pipe(v.string(), v.maxLength(LONGEST_NAME)),
  notebook: v.string(),
  lesson: v.unknown(),
});

/** Between its marks, so that it is found in a letter or a list. */
export async function writeHandedIn({ name, notebook, lesson }: HandedIn): Promise<string> {
  return `BB:${await packed(JSON.stringify({ answers: 1, name, notebook, lesson }))}:BB`;
}

/** All that a text holds, in its order; what is damaged says so in its place. Spaces and line ends within count for nothing. */
export async function readHandedIn(text: string): Promise<readonly (HandedIn | Damaged)[]> {
  const found = text.split('BB:').slice(1, MOST_HANDED_IN + 1);
  return Promise.all(
    found.map(async (piece) => {
      const end = piece.indexOf(':BB');
      if (end < 0) return { fault: 'its end is missing: ask for the whole of it again' };
      const read = await unpacked(piece.slice(0, end).replaceAll(/\s/g, ''), MOST);
      return read === null
        ? { fault: 'a letter of it was lost or changed on the way: ask for it again' }
        : handedIn(read);
    }),
  );
}

function handedIn(text: string): HandedIn | Damaged {
  try {
    const read = v.safeParse(schema, JSON.parse(text));
    if (!read.success) return NOT_OURS;
    const { name, notebook, lesson } = read.output;
    const said = v.safeParse(lessonsForm, { [notebook]: lesson });
    const own = said.success ? said.output[notebook] : undefined;
    return own ? { name, notebook, lesson: own } : NOT_OURS;
  } catch {
    return NOT_OURS;
  }
}

const NOT_OURS: Damaged = { fault: 'it holds no answers to a notebook’s questions' };
