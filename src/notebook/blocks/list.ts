/** A list, numbered or not; its items may have boxes to tick. */
import type { MarkedToken, Token } from 'marked';
import { linesIn } from '../text/inline';
import { type Block, type Inline, wordsOf } from '../text/page-text';
import { markdownKind, type BlockReading } from '../text/block-kind';
import { deeper } from './quote';

export const list = markdownKind(['list'], (token, reading) =>
  deeper(token.raw, reading, () => {
    let at = reading.line;
    const items = token.items.map((item) => {
      const blocks = readItem(item.tokens, at, reading);
      at += linesIn(item.raw);
      return blocks;
    });
    return { type: 'list', from: token.ordered ? Number(token.start) : null, items };
  }),
);

/** In a list without gaps the box to tick stands before the item's first line, not in it. */
function readItem(tokens: readonly Token[], line: number, { blocks }: BlockReading): Block[] {
  const [box, ...rest] = tokens as readonly MarkedToken[];
  if (box?.type !== 'checkbox') return blocks(tokens, line);
  const [first, ...others] = blocks(rest, line);
  const words = first?.type === 'paragraph' ? first.inside : [];
  const ticked: Inline = { type: 'box', label: wordsOf(words).trim(), ticked: box.checked };
  if (first?.type !== 'paragraph')
    return [{ type: 'paragraph', inside: [ticked] }, ...(first ? [first] : []), ...others];
  return [{ ...first, inside: [ticked, ...first.inside] }, ...others];
}
