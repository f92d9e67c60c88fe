/** What a learner writes into the questions of a notebook, kept with the boat as it was typed; what it is worth is told anew each time. */
import * as v from 'valibot';

/** Of one question. Each text is as it was typed. */
export interface SaidTo {
  /** What stands in the field and is not written down yet. */
  readonly draft: string;
  /** What was written down, in its order; the last is the one that counts. */
  readonly guesses: readonly string[];
  /** Whether the answer is uncovered. */
  readonly shown: boolean;
  /** How many hints were asked for. */
  readonly hints: number;
  /** What stands in the blanks of the worked example, by the number of the step. */
  readonly steps: Readonly<Record<string, string>>;
  /** How many more steps are blank than the notebook leaves blank: each time through, one. */
  readonly round: number;
  readonly sentence: string;
}

/** Of one notebook. */
export interface Lesson {
  /** The word that the learner's own numbers are drawn by; empty where they are the notebook's. */
  readonly seed: string;
  /** By the names of the questions. */
  readonly said: Readonly<Record<string, SaidTo>>;
}

/** By the ids of the notebooks. */
export type Lessons = Readonly<Record<string, Lesson>>;

export const nothingSaid: SaidTo = {
  draft: '',
  guesses: [],
  shown: false,
  hints: 0,
  steps: {},
  round: 0,
  sentence: '',
};
export const noLesson: Lesson = { seed: '', said: {} };

export const LONGEST_SEED = 60;
export const LONGEST_SAID = 1000;
export const MOST_GUESSES = 20;
/** Letters of all notebooks together, as JSON. */
const LONGEST_LESSONS = 200_000;

/** Why so much is not kept, as the end of a sentence; null where it is. */
export function tooMuchSaid(lessons: Lessons): string | null {
  return JSON.stringify(lessons).length > LONGEST_LESSONS
    ? `must be at most ${LONGEST_LESSONS} letters long together`
    : null;
}

const text = (longest: number) =>
  v.optional(
    v.pipe(v.string('must be a text'), v.maxLength(longest, `must be at most ${longest} letters long`)),
    '',
  );
const count = v.optional(
  v.pipe(v.number('must be a number'), v.safeInteger('must be a whole number'), v.minValue(0)),
  0,
);
const said = v.object(
  {
    draft: text(LONGEST_SAID),
    guesses: v.optional(
      v.pipe(
        v.array(v.pipe(v.string('must be a text'), v.maxLength(LONGEST_SAID)), 'must be a list'),
        v.maxLength(MOST_GUESSES, `must be ${MOST_GUESSES} at most`),
      ),
      [],
    ),
    shown: v.optional(v.boolean('must be true or false'), false),
    hints: count,
    steps: v.optional(
      v.record(
        v.pipe(v.string(), v.regex(/^\d{1,3}$/, 'is not the number of a step')),
        v.pipe(v.string('must be a text'), v.maxLength(LONGEST_SAID)),
        'must be an object',
      ),
      {},
    ),
    round: count,
    sentence: text(LONGEST_SAID),
  },
  'must be what was said to a question',
);

/** In the form in which it is kept, and as a stranger's file may have it. */
export const lessonsForm = v.pipe(
  v.record(
    v.pipe(
      v.string(),
      v.regex(/^[\p{Letter}\p{Number}]+(-[\p{Letter}\p{Number}]+)*$/u, 'is not the name of a notebook'),
    ),
    v.object(
      {
        seed: text(LONGEST_SEED),
        said: v.optional(
          v.record(
            v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]*$/, 'is not the name of a question')),
            said,
            'must be an object',
          ),
          {},
        ),
      },
      'must be a lesson',
    ),
    'must be an object',
  ),
  v.check(
    (lessons) => tooMuchSaid(lessons) === null,
    ({ input }) => tooMuchSaid(input as Lessons) ?? '',
  ),
);
