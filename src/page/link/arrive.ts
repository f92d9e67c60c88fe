/** A link was opened: what it brings is shown before any of it is taken, and what is wrong with it is said. */
import { isUnread } from '../../boat';
import { openLink } from '../../notebook/link/link';
import { lettersOfLink, way, wayTo } from '../address';
import type { Bench } from '../bench';
import { showPlace } from '../go-to';
import { linkOpen } from '../link-open';

/** Faults told of a link that can't be opened; more than these help nobody. */
const TOLD = 3;

export async function arrive(letters: string, { notice }: Bench): Promise<void> {
  const link = await openLink(letters);
  // By now the reader may have gone on.
  if (lettersOfLink() !== letters) return;
  if (isUnread(link)) {
    takeOutOfAddress();
    notice.value = { says: `The link was not opened: ${link.faults.slice(0, TOLD).join('; ')}.` };
    return;
  }
  linkOpen.value = link;
  showPlace('link-title');
}

/** Puts the way to the open place back into the address, so that loading the page again asks nothing again. */
export function takeOutOfAddress(): void {
  if (lettersOfLink() === undefined) return;
  const { notebook, place } = way.peek();
  const plain = notebook === null ? location.pathname + location.search : wayTo(notebook, place ?? undefined);
  history.replaceState(history.state, '', plain);
}
