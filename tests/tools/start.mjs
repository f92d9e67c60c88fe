// `npm start`: builds the site and serves it at port 4173, or the next one that is free, and says where.

import './ready.mjs';

const { builtSite, serveSite } = await import('./site.mjs');
const { url } = await serveSite(await builtSite(), 4173);
console.log(`Battenbook is open at ${url}\nCtrl+C closes it.`);
