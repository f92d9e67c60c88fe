/**
 * Puts a strict content security policy into the built page, so that a boat file or a link
 * made with ill will can't run script or call out. Only in the build: the development server
 * needs inline styles.
 */
import type { Plugin } from 'vite';

type Rules = Readonly<Record<string, string>>;

/** Of the page as a server sends it: all that it needs lies beside it. */
const rules: Rules = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'font-src': "'self'",
  'img-src': "'self' data: blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

/**
 * Of the page as one file: no address at all, of a network or a disk. Its one script and its one style go by their
 * hashes; the worker is made by the page itself, and the solver in it runs from its own text.
 */
export const rulesOfOneFile = (script: string, style: string): Rules => ({
  ...rules,
  'script-src': `${script} 'wasm-unsafe-eval'`,
  'style-src': style,
  'font-src': 'data:',
  'img-src': 'data: blob:',
  'connect-src': 'data:',
  'worker-src': 'blob:',
  'manifest-src': "'none'",
});

/** As the text of the meta element. */
export const policyText = (of: Rules): string =>
  Object.entries(of)
    .map((rule) => rule.join(' '))
    .join('; ');

/** Of the page as a server sends it. */
export const contentSecurityPolicy = policyText(rules);

export function policy(): Plugin {
  return {
    name: 'policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}
