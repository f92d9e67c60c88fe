/**
 * `npm run bench`: how fast it is, in one run on one machine. Numbers are for comparing with each other,
 * not with another day or another machine; no test depends on them.
 */
import { firstLoad } from './bytes';
import { graphBesidePeers } from './peers';
import { pageResponse } from './page';
import { recomputing } from './recompute';
import { type Section, write } from './table';

const sections: readonly (() => Section | Promise<Section>)[] = [
  recomputing,
  graphBesidePeers,
  firstLoad,
  pageResponse,
];
for (const section of sections) process.stdout.write(write(await section()));
