/** `npm run docs`: makes the generated pages anew. Tests hold them to be those that this would make. */
import { writeFileSync } from 'node:fs';
import { allChecks } from '../checks/check';
import { checkBookData, checkBookPage, checkRows } from './check-book';
import { quantitiesPage } from './quantities-doc';
import { inRoot } from './root.mjs';

const rows = checkRows(allChecks());
const pages: Readonly<Record<string, string>> = {
  'docs/check-book.md': checkBookPage(rows),
  'docs/check-book.json': checkBookData(rows),
  'docs/quantities.md': quantitiesPage(),
};
for (const [file, text] of Object.entries(pages)) {
  writeFileSync(inRoot(file), text);
  console.log(file);
}
