/** The key that puts the page on the wall, among what is reached for seldom. */
import type { TargetedEvent } from 'preact';
import { useBench } from '../bench';
import { html } from '../html';
import { keepOnWall } from './kept';

export function WallKey() {
  const bench = useBench();
  const put = ({ currentTarget }: TargetedEvent<HTMLButtonElement>) => {
    const open = currentTarget.closest('details');
    void import('./wall').then(({ putOnWall }) => {
      keepOnWall(bench.shelf, true);
      putOnWall(bench, true);
      if (open) open.open = false;
    });
  };
  return bench.wall.value
    ? null
    : html`<button type="button" onClick=${put}>On the wall: large, answers covered</button>`;
}
