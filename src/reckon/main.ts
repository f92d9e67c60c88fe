/** The command line: words in, text out, an exit code. What it does is in reckon.ts. */
import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import process from 'node:process';
import { type Issue, issue } from '../measure';
import { reckon } from './reckon';

const LARGEST_FILE = 4_000_000;

/** npm starts commands in the project's folder and keeps the builder's own in INIT_CWD. */
function readFile(path: string): string | Issue {
  const file = resolve(process.env['INIT_CWD'] ?? process.cwd(), path);
  const stat = statSync(file, { throwIfNoEntry: false });
  if (!stat) return issue('there is no such file');
  if (!stat.isFile()) return issue('it is not a file');
  if (stat.size > LARGEST_FILE) return issue('it is far larger than any boat file');
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return issue('the system does not let it be read');
  }
}

const { out, err, code } = reckon(process.argv.slice(2), readFile);
process.stdout.write(out);
process.stderr.write(err);
process.exitCode = code;
