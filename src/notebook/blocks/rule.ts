/** A line across. */
import { markdownKind } from '../block-kind';

export const rule = markdownKind(['hr'], () => [{ type: 'rule' }]);
