/**
 * The linked notebook: the graph, its versions and history, and the keeping of it.
 * The reader of Markdown (`markdown.ts`) and the catalogues of boats (`catalogue.ts`, `whole-catalogue.ts`) and the list of boats (`boats.ts`) stand
 * apart: they bring much with them that a page seldom needs, or not at once.
 */
export * from './keeping/boat-in-hand';
export * from './book';
export * from './graph/findings';
export * from './graph/graph';
export * from './text/head';
export * from './graph/loose-catalogue';
export * from './graph/on-hand';
export * from './text/page-text';
export * from './graph/ripple';
export * from './keeping/fetch-reader';
export * from './keeping/saved-reader';
export * from './keeping/saved-units';
export * from './keeping/shelf';
export * from './state/state';
export * from './keeping/store';
export type { Kept } from './keeping/saved-text';
