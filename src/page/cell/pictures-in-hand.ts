/** A cell's pictures, where what can be moved in its drawing is moved by hand. */
import type { Instance } from '../../cells';
import { use } from '../html';
import { later } from '../later';
import { Pictures } from '../picture/pictures';
import type { Which } from '../picture/pictures-of';

const Grips = later(async () => (await import('../grip/grips')).Grips, 'grips');

export const PicturesInHand = (props: { instance: Instance; which: readonly Which[] }) =>
  use(Pictures, { ...props, over: Grips });
