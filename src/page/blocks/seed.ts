import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const SeedView = later(async () => (await import('../ask/seed-view')).SeedView, 'seed-to-come');

export const seed: Show<'seed'> = (block, { notebook }) => use(SeedView, { seed: block, notebook });
