/** The lines in a fenced block of ours that begin with a word and a colon, `hint: Look at the end grain.` */
import type { BlockReading, Fence } from './block-kind';
import type { TextFault } from './page-text';

export interface WordedLine<W extends string> {
  readonly word: W;
  readonly text: string;
  /** In the notebook. */
  readonly line: number;
}

/** Blank lines are passed over; a line that is set in goes on with the one before it. */
export function readWorded<W extends string>(
  fence: Fence,
  { line: first, fault }: BlockReading,
  words: readonly W[],
): { readonly lines: readonly WordedLine<W>[]; readonly faults: readonly TextFault[] } {
  const lines: WordedLine<W>[] = [];
  const faults: TextFault[] = [];
  fence.text.split('\n').forEach((raw, at) => {
    const line = first + 1 + at;
    if (raw.trim() === '') return;
    const last = lines.at(-1);
    if (/^\s/.test(raw) && last) {
      lines[lines.length - 1] = { ...last, text: `${last.text} ${raw.trim()}`.trim() };
      return;
    }
    const [, start = '', text = ''] = /^([a-z]+)\s*:(.*)$/.exec(raw) ?? [];
    const word = words.find((one) => one === start);
    if (word === undefined)
      faults.push(fault(`A line in this block begins with ${anyOf(words)} and a colon.`, raw, line));
    else lines.push({ word, text: text.trim(), line });
  });
  const empty = lines.filter(({ text }) => text === '');
  return {
    lines: lines.filter(({ text }) => text !== ''),
    faults: [
      ...faults,
      ...empty.map(({ word, line }) => fault(`After "${word}:" nothing is said.`, `${word}:`, line)),
    ],
  };
}

const anyOf = (words: readonly string[]): string =>
  `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
