/** The long timbers to choose from, in the cells that take a part's size and curve. */
import type { Option } from '../../../boat';
import { longParts } from '../../../boat/joinery/long-parts';

export const longPartOptions: readonly Option[] = longParts;
