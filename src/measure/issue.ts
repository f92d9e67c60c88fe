/** Why a value is missing, as a sentence for the builder. Issues are data: they travel in the place of a number. */
export interface Issue {
  /** The sentence, without a full stop. */
  readonly issue: string;
  /** The quantity in which the fault lies, when it lies elsewhere. */
  readonly waitsFor?: string;
  /** The names of a circle of links, when that is the fault. */
  readonly circle?: readonly string[];
  /** Where in the text that was read the fault begins, in characters; of a sum that can't be read. */
  readonly at?: number;
}

/** An issue that says `sentence`. */
export function issue(sentence: string): Issue {
  return { issue: sentence };
}

/** True for an issue, whatever else may stand in its place. */
export function isIssue(value: unknown): value is Issue {
  return typeof value === 'object' && value !== null && 'issue' in value;
}
