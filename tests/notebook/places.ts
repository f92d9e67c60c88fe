/** What stands in a notebook's page, in order. */
import type { Block, Inline, LiveValue, NotebookPage } from '../../src/notebook/text/page-text';

/** Every block, those within quotes, lists and comparisons too. */
const everyBlock = (blocks: readonly Block[]): Block[] =>
  blocks.flatMap((block) => {
    if (block.type === 'quote' || block.type === 'when') return [block, ...everyBlock(block.blocks)];
    if (block.type === 'list') return [block, ...block.items.flatMap(everyBlock)];
    return [block];
  });

const everyInline = (inlines: readonly Inline[]): Inline[] =>
  inlines.flatMap((inline) => [
    inline,
    ...('inside' in inline ? everyInline(inline.inside) : []),
    ...('otherwise' in inline ? everyInline(inline.otherwise) : []),
  ]);

/** Every stretch of text, those within others too. */
const inlinesOf = (blocks: readonly Block[]): Inline[] =>
  everyBlock(blocks).flatMap((block) => {
    if (block.type === 'heading' || block.type === 'paragraph') return everyInline(block.inside);
    if (block.type === 'table') return [block.head, ...block.rows].flat().flatMap(everyInline);
    return [];
  });

/** Second versions that it offers. */
export const triesOf = (page: NotebookPage) =>
  everyBlock(page.blocks).filter((block) => block.type === 'try');

/** Live values in its prose. */
export const liveValuesOf = (page: NotebookPage): LiveValue[] =>
  inlinesOf(page.blocks).filter((inline) => inline.type === 'value');

/** What stands in its blocks as a fault, in order. */
export const faultsShownIn = (page: NotebookPage) => [
  ...everyBlock(page.blocks).filter((block) => block.type === 'fault'),
  ...inlinesOf(page.blocks).filter((inline) => inline.type === 'fault'),
];
