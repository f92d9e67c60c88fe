/** A line across. */
import { markdownKind } from '../text/block-kind';

export const rule = markdownKind(['hr'], () => [{ type: 'rule' }]);
