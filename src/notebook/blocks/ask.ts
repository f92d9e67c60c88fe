/** A question that is answered in writing before its answer is uncovered. */
import { isIssue, kinds, plainShown, read } from '../../measure';
import { type BlockReading, fencedKind } from '../text/block-kind';
import type { AskAnswer, AskPlace, AskStep, Block, Direction } from '../text/page-text';
import { readWorded, type WordedLine } from '../text/worded-lines';

const words = [
  'question',
  'answer',
  'change',
  'words',
  'within',
  'hint',
  'step',
  'blank',
  'fade',
  'see',
  'sentence',
] as const;
type Word = (typeof words)[number];
type Line = WordedLine<Word>;

const KEY = /^[a-z][A-Za-z0-9]*$/;
const QUANTITY = /^[a-z][A-Za-z0-9]*(\.[A-Za-z0-9]+)+$/;
const CHANGE = /^([a-z][A-Za-z0-9]*(?:\.[A-Za-z0-9]+)+)\s*=\s*(\S.*)$/;
const directions: readonly Direction[] = ['rises', 'falls', 'stays'];
/** A line that may be given more than once. */
const repeated: readonly Word[] = ['change', 'hint', 'step', 'see'];
const MOST_LINES = 40;

export const ask = fencedKind('ask', (fence, reading) => {
  const { info, raw } = fence;
  const { line, depth, turns, found } = reading;
  const told = (says: string) => [reading.fault(says, raw)];
  if (turns || depth > 0) return told('A question stands by itself, not in a list, a quote or a comparison.');
  // Names that the language itself has are kept by no reader.
  if (!KEY.test(info) || info in {} || info === 'prototype')
    return told('A question has a name of one word, small letter first, as in "ask taperGuess".');
  if (found.asks.has(info)) return told(`There is a question "${info}" above; give this one another name.`);
  found.asks.add(info);
  const { lines, faults } = readWorded(fence, reading, words);
  if (faults.length > 0) return faults;
  if (lines.length > MOST_LINES) return told(`A question has ${MOST_LINES} lines at most.`);
  const place = placeOf(info, lines, reading, line);
  return 'says' in place ? told(place.says) : [place];
});

/** What is wrong with the block as a whole. */
interface Amiss {
  readonly says: string;
}

function placeOf(
  name: string,
  lines: readonly Line[],
  reading: BlockReading,
  line: number,
): AskPlace | Amiss {
  const all = (word: Word) => lines.filter((one) => one.word === word);
  const text = (word: Word) => all(word)[0]?.text ?? '';
  const blocks = (of: readonly Line[]) => of.flatMap((one) => reading.turning(one.text, one.line));
  const twice = words.find((word) => !repeated.includes(word) && all(word).length > 1);
  if (twice) return { says: `"${twice}:" is given twice.` };
  if (all('question').length === 0) return { says: 'A question needs a line "question: …".' };
  const answer = answerOf(all('answer')[0]?.text, all('change'), all('words'), blocks);
  if ('says' in answer) return answer;
  const within = withinOf(text('within'), answer);
  if (within !== null) return { says: within };
  const steps = all('step').map((one) => stepOf(one, reading));
  const odd = steps.find((step) => 'says' in step);
  if (odd && 'says' in odd) return odd;
  const blank = Number(text('blank') || 0);
  if (!Number.isInteger(blank) || blank < 0 || blank > steps.length)
    return { says: `"blank:" is how many of the steps are blank, from 0 to ${steps.length}.` };
  const [, end = ''] = /^(?:from the )?(end|start)$/.exec(text('fade') || 'end') ?? [];
  if (end === '') return { says: '"fade:" is "from the end" or "from the start".' };
  return {
    type: 'ask',
    name,
    question: blocks(all('question')),
    answer,
    within: text('within'),
    hints: all('hint').map((one) => blocks([one])),
    steps: steps.filter((step): step is AskStep => !('says' in step)),
    blank,
    fades: end as 'end' | 'start',
    see: blocks(all('see')),
    sentence: blocks(all('sentence')),
    line,
  };
}

function answerOf(
  text: string | undefined,
  changes: readonly Line[],
  inWords: readonly Line[],
  blocks: (of: readonly Line[]) => readonly Block[],
): AskAnswer | Amiss {
  if (text === undefined)
    return changes.length > 0
      ? { says: 'Where something changes, say of which number it is asked: "answer: scarf.taper".' }
      : { is: 'words', blocks: blocks(inWords) };
  if (inWords.length > 0) return { says: 'A question has "answer:" or "words:", not both.' };
  if (changes.length === 0) {
    const so = directions.find((one) => one === text);
    return so ? { is: 'direction', so } : numberOf(text);
  }
  if (!QUANTITY.test(text))
    return {
      says: 'Where something changes, the answer is the name of a number, as in "answer: scarf.taper".',
    };
  const written = changes.map((one) => CHANGE.exec(one.text));
  if (written.includes(null))
    return { says: 'A change is a name, "=" and an entry, as in "change: scarf.slope = 12".' };
  const entries = written.map((one): [string, string] => [one?.[1] ?? '', one?.[2] ?? '']);
  return { is: 'moves', of: text, changes: Object.fromEntries(entries) };
}

/** The name of a number, or a number with its unit. */
function numberOf(text: string): Extract<AskAnswer, { is: 'quantity' | 'literal' }> | Amiss {
  if (QUANTITY.test(text)) return { is: 'quantity', of: text };
  const field = 'the answer';
  const kind = kinds.find(
    ({ id }) => id !== 'choice' && !isIssue(read(text, { kind: id, shown: plainShown, field })),
  );
  return kind
    ? {
        is: 'literal',
        text,
        kind: text.startsWith('1 in ') ? 'slope' : text.endsWith('%') ? 'share' : kind.id,
      }
    : {
        says: `"${text}" is no answer: it is the name of a number (scarf.taper), a number with its unit (144 mm), or rises, falls or stays.`,
      };
}

/** What is wrong with how far a guess may be off; null where nothing is. */
function withinOf(text: string, answer: AskAnswer): string | null {
  if (text === '') return null;
  if (answer.is === 'words' || answer.is === 'direction')
    return 'Only of a number can a guess be off by so much: leave "within:" out.';
  const isOne = kinds.some(({ id }) => {
    if (id === 'choice') return false;
    const reading = read(text, { kind: id, shown: plainShown, field: 'within' });
    return !isIssue(reading) && reading.names.length === 0;
  });
  return isOne
    ? null
    : `"within:" is a share of the answer, as 10 %, or a measure, as 5 mm; "${text}" is neither.`;
}

/** `8 times 18 mm | scarf.taper`: the last bar parts what is done from what it comes to. */
function stepOf({ text, line }: Line, reading: BlockReading): AskStep | Amiss {
  const bar = text.lastIndexOf('|');
  if (bar < 1)
    return {
      says: 'A step is what is done, a bar and what it comes to, as in "step: 8 times 18 mm | 144 mm".',
    };
  const answer = numberOf(text.slice(bar + 1).trim());
  if ('says' in answer) return answer;
  const inside = reading
    .turning(text.slice(0, bar).trim(), line)
    .flatMap((block) => (block.type === 'paragraph' ? block.inside : []));
  return { words: inside, answer };
}
