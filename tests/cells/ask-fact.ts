/** A fact of a cell on given values, outside the graph. */
import type { Found, Hull } from '../../src/boat';
import type { Values } from '../../src/cells';
import type { Fact } from '../../src/cells/form/fact';
import { scopeAlone } from '../../src/cells/form/steps';

/** @throws the sentence that says why it has no value */
export const askFact = <T>(of: Fact<never, T>, values: Values, hull: Hull, found?: Found): T =>
  scopeAlone((key) => values[key]!, hull, found).ask(of);
