/**
 * A notebook's text as a list of questions. A cell is a question; the paragraph right before it asks it, and its first
 * sentence stands in the list. Headings give the list its parts.
 */
import {
  type Block,
  type CellShown,
  type Heading,
  type Inline,
  type Paragraph,
  wordsOf,
} from '../../notebook';

export interface Question {
  /** The name of its cell. */
  readonly name: string;
  readonly cell: CellShown;
  /** As it stands in the list; empty where no paragraph asks it. */
  readonly asks: string;
  /** What is said with it when it is open. */
  readonly prose: readonly Block[];
}

export interface QuickPart {
  /** Of the first part there may be none. */
  readonly heading: Heading | null;
  /** What is said above its questions. */
  readonly lead: readonly Block[];
  readonly questions: readonly Question[];
}

/** A cell that is shown again further down is the same question. */
export function partsOf(blocks: readonly Block[]): QuickPart[] {
  const parts: { heading: Heading | null; lead: Block[]; questions: Question[] }[] = [];
  let part: (typeof parts)[number] = { heading: null, lead: [], questions: [] };
  let waiting: Block[] = [];
  /** What asks nothing belongs to the question above it, or leads in. */
  const settle = () => {
    const last = part.questions.pop();
    if (last) part.questions.push({ ...last, prose: [...last.prose, ...waiting] });
    else part.lead.push(...waiting);
    waiting = [];
  };
  const end = () => {
    settle();
    if (part.heading || part.lead.length > 0 || part.questions.length > 0) parts.push(part);
  };
  for (const block of blocks) {
    if (block.type === 'heading' && block.level <= 2) {
      end();
      part = { heading: block, lead: [], questions: [] };
    } else if (block.type === 'cell' && block.again === undefined) {
      const asking = waiting.at(-1);
      const { asks, rest } = asking?.type === 'paragraph' ? asked(asking) : { asks: '', rest: [] };
      if (asks !== '') waiting.pop();
      settle();
      part.questions.push({ name: block.instance, cell: block, asks, prose: rest });
    } else waiting.push(block);
  }
  end();
  return parts;
}

/** The first sentence, and what is said after it. */
function asked({ inside }: Paragraph): { asks: string; rest: readonly Block[] } {
  const [first, ...others] = inside;
  const [, sentence, more = ''] =
    (first?.type === 'text' && /^(.*?[?.])(?:\s+(.*))?$/s.exec(first.text)) || [];
  if (sentence === undefined) return { asks: wordsOf(inside), rest: [] };
  const left: readonly Inline[] = [
    ...(more === '' ? [] : [{ type: 'text', text: more } as const]),
    ...others,
  ];
  return { asks: sentence, rest: wordsOf(left).trim() === '' ? [] : [{ type: 'paragraph', inside: left }] };
}
