/** Searches that run beside the page, in a worker of their own. */
export { type Ended, startSearch } from './start';
