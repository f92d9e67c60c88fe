/** The notebook of words: each is a heading of the third level, `Limber, limber hole`, and what it means stands below. */
import { type Block, type NotebookPage, wordsOf } from './page-text';

/** Its id. */
export const WORDS = 'words';

export interface Word {
  /** As it is headed. */
  readonly word: string;
  /** All forms that it is headed with: `limber`, `limber hole`. */
  readonly forms: readonly string[];
  /** Its place in the notebook. */
  readonly place: string;
  /** What it means. */
  readonly says: string;
}

export function wordsIn({ blocks }: Pick<NotebookPage, 'blocks'>): readonly Word[] {
  return blocks.flatMap((block, at) => {
    if (block.type !== 'heading' || block.level !== 3) return [];
    const word = wordsOf(block.inside);
    const forms = word.split(',').map((form) => form.trim());
    return [{ word, forms, place: block.id, says: firstParagraph(blocks.slice(at + 1)) }];
  });
}

function firstParagraph(blocks: readonly Block[]): string {
  const [next] = blocks.filter(({ type }) => type === 'paragraph' || type === 'heading');
  return next?.type === 'paragraph' ? wordsOf(next.inside) : '';
}

/** The first sentence of a text. */
export const sentenceOf = (says: string): string => /^.*?[.?](?=\s|$)/s.exec(says)?.[0] ?? says;
