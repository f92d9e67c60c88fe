/** Writes the pages of docs/ that are made from the code: `npm run docs`. */
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { allChecks } from '../checks/check';
import { checkBookData, checkBookPage, checkRows } from './check-book';

// The program runs from a bundle elsewhere; its first argument is where this file lies.
const docs = join(dirname(process.argv[1] ?? ''), '../../docs');

const rows = checkRows(allChecks());
writeFileSync(join(docs, 'check-book.md'), checkBookPage(rows));
writeFileSync(join(docs, 'check-book.json'), checkBookData(rows));
process.stdout.write(`${rows.length} checks in docs/check-book.md and docs/check-book.json\n`);
