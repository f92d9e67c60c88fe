/**
 * The linked notebook: the graph, its versions and history, and the keeping of it.
 * The reader of Markdown (`markdown.ts`) and the catalogues of boats (`catalogue.ts`, `whole-catalogue.ts`) and the list of boats (`boats.ts`) stand
 * apart: they bring much with them that a page seldom needs, or not at once.
 */
export * from './boat-in-hand';
export * from './book';
export * from './findings';
export * from './graph';
export * from './head';
export * from './loose-catalogue';
export * from './on-hand';
export * from './page-text';
export * from './ripple';
export * from './saved-units';
export * from './state';
export * from './store';
export type { Kept } from './saved-text';
