/** Whether the page was last on the wall: kept in this browser, and in the address, so that a teacher can hand on the link. */
import type { Shelf } from '../../notebook';

const KEY = 'battenbook wall';

export function keepOnWall(shelf: Shelf | null, isOn: boolean): void {
  try {
    shelf?.setItem(KEY, isOn ? 'on' : 'off');
  } catch {
    // It holds for this window, by its address.
  }
  const address = new URL(location.href);
  if (isOn) address.searchParams.set('wall', '');
  else address.searchParams.delete('wall');
  history.replaceState(history.state, '', address.href.replace('wall=', 'wall'));
}
