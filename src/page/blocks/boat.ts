import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const WhoseBoat = later(async () => (await import('../boat/whose-boat')).WhoseBoat, 'whose-boat');

export const boat: Show<'boat'> = (block) => use(WhoseBoat, { boat: block.boat });
