/** A notebook's text with the first use of each word of the trade as a link to what the word means. */
import type { Block, Inline, NotebookPage } from '../../notebook';
import { sentenceOf, type Word, WORDS } from '../../notebook/text/glossary';

export interface WordFinder {
  /** Finds every form of every word, the longest first. */
  readonly pattern: RegExp;
  readonly byForm: ReadonlyMap<string, Word>;
}

export function finderOf(words: readonly Word[]): WordFinder {
  const byForm = new Map(
    words.flatMap((word) => word.forms.map((form) => [form.toLowerCase(), word] as const)),
  );
  const longest = [...byForm.keys()].toSorted((a, b) => b.length - a.length);
  const escaped = longest.map((form) => form.replaceAll(/[^\p{Letter}\s-]/gu, String.raw`\$&`));
  const pattern = new RegExp(
    String.raw`(?<![\p{Letter}-])(${escaped.join('|')})(?:e?s)?(?![\p{Letter}-])`,
    'giu',
  );
  return { pattern, byForm };
}

/** The notebook of words itself, and a text without any of them, stay as they are. */
export function linked(page: NotebookPage, finder: WordFinder): NotebookPage {
  if (page.id === WORDS || finder.byForm.size === 0) return page;
  const used = new Set<Word>();
  const spans = (inlines: readonly Inline[]): readonly Inline[] =>
    inlines.flatMap((inline): readonly Inline[] => {
      if (inline.type === 'text') return pieces(inline.text, finder, used);
      if (inline.type === 'strong' || inline.type === 'emphasis')
        return [{ ...inline, inside: spans(inline.inside) }];
      return [inline];
    });
  const all = (blocks: readonly Block[]): readonly Block[] =>
    blocks.map((block): Block => {
      // What is said only at times is no place for the one link to a word, nor is what is itself a link or a heading.
      if (block.type === 'paragraph') return { ...block, inside: spans(block.inside) };
      if (block.type === 'list') return { ...block, items: block.items.map(all) };
      return block.type === 'quote' ? { ...block, blocks: all(block.blocks) } : block;
    });
  return { ...page, blocks: all(page.blocks) };
}

function pieces(text: string, { pattern, byForm }: WordFinder, used: Set<Word>): readonly Inline[] {
  const found: Inline[] = [];
  let from = 0;
  for (const match of text.matchAll(pattern)) {
    const [whole, form = ''] = match;
    const word = byForm.get(form.toLowerCase());
    if (!word || used.has(word)) continue;
    used.add(word);
    if (match.index > from) found.push({ type: 'text', text: text.slice(from, match.index) });
    found.push({
      type: 'link',
      to: `${WORDS}.md#${word.place}`,
      says: sentenceOf(word.says),
      inside: [{ type: 'text', text: whole }],
    });
    from = match.index + whole.length;
  }
  if (from === 0) return [{ type: 'text', text }];
  return from < text.length ? [...found, { type: 'text', text: text.slice(from) }] : found;
}
