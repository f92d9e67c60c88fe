/**
 * A searcher takes a problem as text, tells every better answer when it has one, and comes back with a sentence on
 * how sure the last is. The same problem gives the same answers in the same order: a searcher counts its own steps
 * and never looks at the clock.
 */
export type Searcher = (problem: string, tell: (answer: unknown) => void) => Promise<string>;
