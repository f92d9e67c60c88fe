import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const TryThis = later(async () => (await import('./try-this')).TryThis, 'try-this');

export const trying: Show<'try'> = ({ title, changes, line }) => use(TryThis, { title, changes, line });
