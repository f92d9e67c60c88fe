/** What passes between the page and the worker. */

export interface SearchAsked {
  /** Which searcher is asked. */
  readonly by: string;
  readonly problem: string;
}

export type SearchTold =
  | { readonly found: unknown }
  /** The search is over: what may be said of the last answer, as a sentence. */
  | { readonly over: string };
