/** A heading: it may be linked to, and those of the second level stand in the list of contents. */
import { wordsOf } from '../text/page-text';
import { slug } from '../text/slug';
import { markdownKind } from '../text/block-kind';
import { STAYS } from './when';

export const heading = markdownKind(['heading'], (token, { found, line, depth, turns, inlines, fault }) => {
  if (turns) return [fault(STAYS, token.raw.trimEnd())];
  const inside = inlines(token.tokens, line);
  const text = wordsOf(inside);
  const id = free(slug(text) || 'part', found.headingIds);
  found.headingIds.add(id);
  if (token.depth === 2 && depth === 0) found.headings.push({ id, text });
  return [{ type: 'heading', level: token.depth, id, inside }];
});

/** Unique on the page, and the same as long as the words are. */
function free(plain: string, taken: ReadonlySet<string>): string {
  let id = plain;
  for (let n = 2; taken.has(id); n += 1) id = `${plain}-${n}`;
  return id;
}
