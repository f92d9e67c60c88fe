// `npm start`: builds the site and serves it at port 4173, or the next one that is free, and says where.

import './ready.mjs';
import { inRoot } from './root.mjs';

const { buildSite, serveSite } = await import('./site.mjs');
const site = inRoot('dist');
await buildSite(site);
const { url } = await serveSite(site, 4173);
console.log(`Battenbook is open at ${url}\nCtrl+C closes it.`);
