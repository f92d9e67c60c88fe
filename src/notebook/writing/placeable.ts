/**
 * What can be placed in a notebook, each with the text that it begins as. A new kind of block has its line here; types
 * ask for it. Cells and numbers are offered one by one, for there are many of each.
 */
import type { Block } from '../text/page-text';

export interface Placeable {
  readonly title: string;
  /** What it is for, in a few words; they are searched too. */
  readonly says: string;
  /** Markdown; what stands between « and » is chosen at first, to be typed over. */
  readonly text: (near: Near) => string;
}

/** What stands near the place: examples are written with its names. */
export interface Near {
  /** Full name of a number that is typed: `scarf.slope`. */
  readonly entry: string;
  /** What stands in its field. */
  readonly typed: string;
  /** Full name of a number that is worked out: `scarf.taper`. */
  readonly answer: string;
  /** A name that nothing else goes by, after this one. */
  readonly free: (name: string) => string;
}

const plain = (title: string, says: string, text: string): Placeable => ({ title, says, text: () => text });

const byKind: { readonly [T in Block['type']]: readonly Placeable[] } = {
  paragraph: [plain('Paragraph', 'A few sentences', '«»')],
  heading: [
    plain('Heading', 'Of a part; it stands in the contents', '## «What comes next»'),
    plain('Smaller heading', 'Within a part', '### «Mark it»'),
  ],
  list: [
    plain('List', 'Points, each on a line', '- «First»\n- Second'),
    plain('Numbered steps', 'What is done one after the other', '1. «Mark it.»\n2. Cut it.'),
    plain('Boxes to tick', 'What is to be done, ticked off with the boat', '- [ ] «Marked on both faces»'),
  ],
  quote: [plain('Quote', 'What somebody else says', '> «What they say»')],
  table: [
    plain('Plain table', 'Words and figures in columns', '| «Part» | Pieces |\n|---|---|\n| Frame | 4 |'),
  ],
  code: [plain('Text as it is typed', 'Every letter and space kept', '```\n«As typed»\n```')],
  rule: [plain('Line across', 'Between two parts', '---')],
  cell: [],
  try: [
    {
      title: 'Try a second version',
      says: 'A key that changes a number and shows both',
      text: ({ entry, typed }) => `\`\`\`try «What is to be tried»\n${entry} = ${typed}\n\`\`\``,
    },
  ],
  when: [
    {
      title: 'Text for when a number says so',
      says: 'Shown only where a comparison holds',
      text: ({ answer }) => `\`\`\`when ${answer}\n«Said where there is such a number.»\n\`\`\``,
    },
  ],
  ask: [
    {
      title: 'Question',
      says: 'The guess is written before the answer is shown',
      text: ({ answer, free }) =>
        `\`\`\`ask ${free('guess')}\nquestion: «What does it come to?»\nanswer: ${answer}\nwithin: 10 %\nhint: Look at what it hangs on.\n\`\`\``,
    },
  ],
  seed: [
    {
      title: 'Numbers for each',
      says: 'A word draws numbers of one’s own for each learner',
      text: ({ entry, typed }) => `\`\`\`seed\n${entry} = «${typed}» or ${typed}\n\`\`\``,
    },
  ],
  formula: [
    {
      title: 'Formula',
      says: 'Sums of your own, usable anywhere by name',
      text: ({ answer, free }) => `\`\`\`formula ${free('sums')}\n«twice = 2 * ${answer}»\n\`\`\``,
    },
  ],
  sweep: [
    {
      title: 'Graph of a number',
      says: 'A number drawn against another that it hangs on',
      text: ({ entry, answer }) => `\`\`\`sweep\nresult: «${answer}»\nagainst: ${entry}\n\`\`\``,
    },
  ],
  boat: [plain('A boat for a story', 'A key that brings a certain boat', '```boat «ferry-dory»\n```')],
  sketch: [],
  fault: [],
};

export const placeable: readonly Placeable[] = Object.values(byKind).flat();

/** The text that it begins as, and which of its letters are chosen. */
export function begunAs({ text }: Placeable, near: Near): { text: string; from: number; to: number } {
  const [before = '', chosen = '', after = ''] = text(near).split(/[«»]/);
  return { text: before + chosen + after, from: before.length, to: before.length + chosen.length };
}
