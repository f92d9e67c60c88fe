/** The linked notebook: the graph, its versions and history, and the reading and keeping of it. */
export * from './book';
export * from './catalogue';
export * from './graph';
export * from './ripple';
export * from './state';
export * from './markdown';
export * from './page-text';
export * from './store';
export type { Kept } from './saved-text';
