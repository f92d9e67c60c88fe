/** The woods that a cell can be asked about. */
import type { Option } from '../../../boat';
import { timber } from '../../../trade/timber';

export const woods: readonly Option[] = timber.rows.map(({ id, label }) => ({ id, label }));
