/** All cells at once, for the command line, the generated pages and the tests. The page fetches them one by one. */
import type { Cell } from './form/define';
import { registry } from './registry';

export const cells: readonly Cell[] = await Promise.all(registry.map((shelved) => shelved.load()));
