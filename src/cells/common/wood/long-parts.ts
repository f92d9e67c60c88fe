/** The long timbers of the boat to choose from, in the cells that take a part's size and curve: nothing comes of it without her. */
import type { Option } from '../../../boat';
import { longParts } from '../../../boat/joinery/long-parts';

export const longPartOptions: readonly Option[] = longParts.map((part) => ({ ...part, ofBoat: true }));
