/** What the rest of the page needs to know of what covers an answer: the wall, and a question that waits for a guess. */
import type { FunctionComponent, VNode } from 'preact';
import type { Block, NotebookPage } from '../notebook';

export interface PlateProps {
  /** The cell, by its name in the notebook. */
  readonly instance: string;
  /** What of the cell lies under it: an answer's key, or one of the words below. */
  readonly part: string;
  /** What a press shows: `the working`. */
  readonly what: string;
  /** Of an answer, what it is the answer to: `taper`. */
  readonly label?: string;
  readonly inside: () => VNode | null;
}

export interface Cover {
  readonly Plate: FunctionComponent<PlateProps>;
  /** A number covered in the middle of a sentence. */
  readonly blank: (of: string) => VNode;
  /** Whether this quantity is covered; tracked. */
  readonly hides: (name: string) => boolean;
}

export interface Wall extends Cover {
  /** The keys that show and cover everything, at the foot of the window. */
  readonly Bar: FunctionComponent;
}

/** What the questions of the open notebook cover until their guesses are written. */
export interface AskCover<Bench> extends Cover {
  /** The bench as the page sees it: what is covered has no value there. */
  readonly bench: Bench;
  /** The same with all its values, for what asks and judges. */
  readonly bare: Bench;
  /** The question that asks for just this number, by its name; tracked. */
  readonly waits: (name: string) => string | undefined;
  /** Whether a cell, or a formula, has a covered number, by its name in the notebook; tracked. */
  readonly over: (instance: string) => boolean;
  /** What stands below a notebook with questions: what to hand in, and the teacher's keys. */
  readonly Foot: FunctionComponent<FootProps>;
}

export interface FootProps {
  readonly page: NotebookPage;
  /** What shows the text in it. */
  readonly blocks: (inside: readonly Block[]) => VNode[];
}
