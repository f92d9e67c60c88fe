/** A quote; what stands in it is read as everywhere. */
import type { Block } from '../text/page-text';
import { markdownKind, type BlockReading } from '../text/block-kind';

/** Lists, quotes and texts that turn on a comparison may stand in each other this deep. */
const DEEPEST = 8;

export const quote = markdownKind(['blockquote'], (token, reading) =>
  deeper(token.raw, reading, () => ({ type: 'quote', blocks: reading.blocks(token.tokens) })),
);

/** What has others inside, as far down as any reader goes. */
export function deeper(raw: string, { depth, fault }: BlockReading, read: () => Block): readonly Block[] {
  return depth < DEEPEST ? [read()] : [fault('This is too deep within lists or quotes to be read.', raw)];
}
