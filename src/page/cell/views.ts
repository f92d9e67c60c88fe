/** Views of the page's own, by the name that a cell gives; each is fetched when its cell stands on the page. */
import type { FunctionComponent } from 'preact';
import type { Instance } from '../../cells';
import { later } from '../later';

export const views: Readonly<Record<string, FunctionComponent<{ instance: Instance }>>> = {
  offsets: later(async () => (await import('../offsets/offsets-view')).OffsetsView, 'view-to-come'),
  hull: later(async () => (await import('../hull3d/hull-view')).HullView, 'hull-to-come'),
};
