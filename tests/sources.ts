/** The files of src, and what each imports. */
import { readdirSync, readFileSync } from 'node:fs';
import { inRoot } from './tools/root.mjs';

/** A file by its path inside src, with its text. */
export interface SourceFile {
  readonly file: string;
  readonly text: string;
}

export function sources(): SourceFile[] {
  return readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => ({ file, text: readFileSync(inRoot(`src/${file}`), 'utf8') }));
}

/** What a file asks for: static, dynamic, re-exported, types, stylesheets, workers and globs. */
export function importsOf(text: string): string[] {
  // A comment begins after white space; in `'notebooks/*.md'` nothing begins.
  const code = text.replaceAll(/(?<=^|\s)\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  const forms = [
    /\b(?:import|export)\b[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g,
    /\bimport\s*['"]([^'"]+)['"]/g,
    /\bimport(?:\.meta\.glob(?:<[^(]*>)?)?\(\s*\[?\s*['"`]([^'"`]+)['"`]/g,
    /\bnew URL\(\s*['"`]([^'"`]+)['"`]\s*,\s*import\.meta\.url/g,
  ];
  return forms.flatMap((form) => [...code.matchAll(form)].map((match) => match[1] ?? ''));
}
