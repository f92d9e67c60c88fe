/** A small drawing of what a word of the trade means. Whether there is one of that name is for the page to say. */
import { fencedKind } from '../text/block-kind';

const NAME = /^[a-z]+(-[a-z]+)*$/;

export const sketch = fencedKind('sketch', ({ info, text, raw }, { line, fault }) => {
  if (!NAME.test(info) || text.trim() !== '')
    return [fault('Say which small drawing, as in "sketch scarf", and leave the block empty.', raw)];
  return [{ type: 'sketch', of: info, line }];
});
