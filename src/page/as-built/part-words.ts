/** What is cut, as the yard calls it. */
import { partKinds } from '../../boat';
import { wordsOf } from '../../measure';

export interface PartWords {
  /** `frame 3`, `the keelson`, `the gussets`. */
  readonly the: string;
  readonly areMany: boolean;
}

/** A part as the yard calls it: what has a number goes by that, what is cut as one of many by all of them. */
export function partWords(part: string): PartWords {
  if (/\d/.test(part)) return { the: wordsOf(part), areMany: false };
  const kind = partKinds.find(({ id }) => id === part);
  return {
    the: `the ${kind?.label ?? wordsOf(part)}`,
    areMany: kind !== undefined && kind.label !== kind.one,
  };
}
