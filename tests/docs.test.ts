/** The pages of docs/ and the two at the top: what is generated is fresh, and what they point at is there. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { lexer, type Token, walkTokens } from 'marked';
import { describe, expect, test } from 'vitest';
import { quantitiesPage } from './tools/quantities-doc';
import { inRoot } from './tools/root.mjs';

const textOf = (file: string) => readFileSync(inRoot(file), 'utf8');
const pages = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(inRoot('docs'))
    .filter((file) => file.endsWith('.md'))
    .map((file) => `docs/${file}`),
];

test('docs/quantities.md is the one that the cells and starters give today; `npm run docs` renews it', () => {
  expect(textOf('docs/quantities.md')).toBe(quantitiesPage());
});

describe('docs/quantities.md', () => {
  const names = [...textOf('docs/quantities.md').matchAll(/^\| `([^`]+)` \|/gm)].map(([, name = '']) => name);

  test('has each name or pattern once', () => {
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toStrictEqual([]);
    expect(
      names.filter((name) => !/^([A-Z]+|[a-z][A-Za-z0-9]*)(\.([A-Z]+|[a-z][A-Za-z0-9]*))+$/.test(name)),
    ).toStrictEqual([]);
  });

  test('names a pattern for stations, and no station', () => {
    expect(names).toContain('STATION.EDGE.halfBreadth');
    expect(names).toContain('STATION.EDGE.PANEL.bevel');
    expect(names).toContain('FRAME.PANEL.crown');
    expect(names).toContain('scarf.taper');
    expect(names.filter((name) => /^frame\d/.test(name))).toStrictEqual([]);
  });

  test('has a meaning and a unit for each', () => {
    const bare = textOf('docs/quantities.md')
      .split('\n')
      .filter((line) => line.startsWith('| `'))
      .filter(
        (line) => !/^\| `[^`]+` \| (choice \| |\w+ \| \S+) \| \S.* \| (derived|given: \S.*) \|$/.test(line),
      );
    expect(bare).toStrictEqual([]);
  });
});

/** Where a page points: links, pictures, and files named in code spans. */
function pointers(text: string): { links: string[]; files: string[] } {
  const links: string[] = [];
  const files: string[] = [];
  void walkTokens(lexer(text), (token: Token) => {
    if (token.type === 'link' || token.type === 'image') links.push((token as { href: string }).href);
    if (token.type === 'codespan') {
      const [path] =
        /^(src|docs|notebooks|tests|public|\.ci)\/[\w./-]*$/.exec((token as { text: string }).text) ?? [];
      if (path !== undefined) files.push(path);
    }
  });
  return { links, files };
}

/** The anchors that a page's headings make, as servers of Markdown make them. */
function anchors(text: string): Set<string> {
  const found = new Set<string>();
  void walkTokens(lexer(text), (token: Token) => {
    if (token.type === 'heading') {
      const words = (token as { text: string }).text.toLowerCase().replaceAll(/[^\p{L}\p{N}\- _]/gu, '');
      found.add(words.replaceAll(' ', '-'));
    }
  });
  return found;
}

/** What a page points at in vain. */
function lost(page: string, text: string): string[] {
  const { links, files } = pointers(text);
  const lostLinks = links.filter((link) => {
    if (/^(https?|mailto):/.test(link)) return !URL.canParse(link);
    const [path = '', anchor] = link.split('#');
    const target = path === '' ? page : posix.normalize(posix.join(posix.dirname(page), decodeURI(path)));
    if (target.startsWith('..') || (target !== page && !existsSync(inRoot(target)))) return true;
    return (
      anchor !== undefined &&
      target.endsWith('.md') &&
      !anchors(target === page ? text : textOf(target)).has(anchor)
    );
  });
  return [...lostLinks, ...files.filter((file) => !existsSync(inRoot(file)))].map(
    (what) => `${page}: ${what}`,
  );
}

describe('what the pages point at is there', () => {
  test.each(pages)('%s', (page) => {
    expect(lost(page, textOf(page))).toStrictEqual([]);
  });

  test('a page that points at nothing is found out', () => {
    const page =
      '# Planks\n\n[a](planks.md) [b](method.md) [c](#planks) [d](#plonks) ![e](plank.png) `docs/planks.md` `src/boat` [f](../../x.md)\n\n[g]: nowhere.md\n\n[g]';
    expect(lost('docs/page.md', page)).toStrictEqual(
      ['planks.md', '#plonks', 'plank.png', '../../x.md', 'nowhere.md', 'docs/planks.md'].map(
        (what) => `docs/page.md: ${what}`,
      ),
    );
  });

  test('every page of docs/ is pointed at from the README or from another page of it', () => {
    const pointed = new Set(
      ['README.md', 'DEVELOPERS.md', ...pages].flatMap((page) => {
        const { links, files } = pointers(textOf(page));
        return [
          ...files,
          ...links.map((link) => posix.normalize(posix.join(posix.dirname(page), link.split('#')[0]!))),
        ];
      }),
    );
    expect(pages.filter((page) => page.startsWith('docs/') && !pointed.has(page))).toStrictEqual([]);
  });
});
