/** The catalogue with every cell under its own name, for the command line, the generated pages and the tests. */
import type { Ends, Table } from '../../boat';
import { plainInstance } from '../../cells';
import { cells } from '../../cells/all';
import { catalogueOf } from './catalogue';
import type { Catalogue } from './on-hand';

export function wholeCatalogue(table: Table, ends?: Ends): Catalogue {
  return catalogueOf(table, cells.map(plainInstance), ends);
}
