/** All that is needed to put a boat on the bench; a notebook without one does without. */
export { demoBoat, lists, starter } from '../../boat';
export { catalogueOf } from '../../notebook/graph/catalogue';
