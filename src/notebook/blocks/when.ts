/** Text that is said only where a comparison holds: Markdown again, but for what is linked to from elsewhere. */
import { readCondition } from '../text/condition';
import { fencedKind } from '../text/block-kind';
import { deeper } from './quote';

/** Said by the kinds that can't come and go. */
export const STAYS = 'A cell or a heading stays where it is; only text can turn on a comparison.';

export const when = fencedKind('when', ({ info, text, raw }, reading) =>
  deeper(raw, reading, () => {
    const { line } = reading;
    const holds = readCondition(info);
    if (typeof holds === 'string') return reading.fault(holds, raw);
    return { type: 'when', holds, blocks: reading.turning(text, line + 1), line };
  }),
);
