/** All that can be found in the notebooks that come along, over the demo boat. */
import { readdirSync, readFileSync } from 'node:fs';
import { demoBoat } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { parseNotebook } from '../../../src/notebook/markdown';
import { onSheet } from '../../../src/page/finder/on-sheet';
import { thingsIn } from '../../../src/page/finder/things';

const folder = new URL('../../../notebooks/', import.meta.url);
const pages = readdirSync(folder)
  .map((name) => parseNotebook(readFileSync(new URL(name, folder), 'utf8'), name))
  .sort((a, b) => a.order - b.order);
const byId = new Map(cells.map((cell) => [cell.id, cell]));
const plain = cells.map(plainInstance);
const sheet = onSheet(catalogueOf(demoBoat, plain), new Map(plain.map((one) => [one.name, one])));

export const things = thingsIn(pages, byId, sheet);
/** The same where the open notebook knows no boat. */
export const thingsWithoutBoat = thingsIn(pages, byId, []);
