// Imports in this folder carry their extension: vite reads its own configuration without a bundler.
export { leaveOut } from './leave-out.ts';
export { notebooks } from './notebooks.ts';
export { offline } from './offline.ts';
export { policy } from './policy.ts';
export { singleFile } from './single.ts';
export { leanParser } from './lean-parser.ts';
export { tighten } from './tighten.ts';
