// Where the project lies, for tools that may be started from any folder.

import { fileURLToPath } from 'node:url';

/** @param {string} path inside the project */
export const inRoot = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
