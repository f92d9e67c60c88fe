/** Text that is shown as it is typed, line by line. */
import { markdownKind } from '../text/block-kind';

export const code = markdownKind(['code'], (token) => [{ type: 'code', text: token.text }]);
