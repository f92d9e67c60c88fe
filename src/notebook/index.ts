/**
 * The linked notebook: the graph, its versions and history, and the keeping of it.
 * The reader of Markdown (`markdown.ts`) and the whole catalogue (`whole-catalogue.ts`) stand apart:
 * they bring much with them that a page seldom needs.
 */
export * from './book';
export * from './catalogue';
export * from './findings';
export * from './graph';
export * from './head';
export * from './page-text';
export * from './ripple';
export * from './state';
export * from './store';
export type { Kept } from './saved-text';
