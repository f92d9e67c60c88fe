/**
 * `npm run bench`, or `npm run bench -- graph`, `-- afloat`, `-- finder`: how fast it is, in one run on one machine. Numbers are for comparing with each other,
 * not with another day or another machine; no test depends on them.
 */
import { floating } from './afloat';
import { firstLoad } from './bytes';
import { finding } from './finder';
import { graphBesidePeers, twiceBesidePeers } from './peers';
import { pageResponse } from './page';
import { recomputing } from './recompute';
import { type Section, write } from './table';

const sections: Readonly<Record<string, readonly (() => Section | Promise<Section>)[]>> = {
  graph: [recomputing, graphBesidePeers, twiceBesidePeers],
  afloat: [floating],
  finder: [finding],
  page: [firstLoad, pageResponse],
};
const asked = process.argv.slice(2).flatMap((name) => sections[name] ?? []);
const run = asked.length > 0 ? asked : Object.values(sections).flat();
for (const section of run) process.stdout.write(write(await section()));
