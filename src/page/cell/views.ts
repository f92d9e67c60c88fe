/** Views of the page's own, by the name that a cell gives; each is fetched when it is shown. */
import type { Instance } from '../../cells';
import { type Later, later } from '../later';

export interface OwnView {
  readonly show: Later<{ instance: Instance }>;
  /** Its name where it is opened by a press; without one it is the cell itself, and stands in view. */
  readonly folded?: string;
}

export const views: Readonly<Record<string, OwnView>> = {
  offsets: { show: later(async () => (await import('../offsets/offsets-view')).OffsetsView, 'view-to-come') },
  hull: {
    show: later(async () => (await import('../hull3d/hull-view')).HullView, 'hull-to-come'),
    folded: 'In the round',
  },
  list: {
    show: later(async () => (await import('../list/tick-list')).TickList, 'list-to-come'),
    folded: 'To tick off',
  },
};
