import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const SweepShown = later(async () => (await import('../further/sweep-shown')).SweepShown, 'sweep-to-come');

export const sweep: Show<'sweep'> = ({ ask, line }) => use(SweepShown, { ask, line });
