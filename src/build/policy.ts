/**
 * Puts a strict content security policy into the built page, so that a boat file or a link
 * made with ill will can't run script or call out. Only in the build: the development server
 * needs inline styles.
 */
import type { Plugin } from 'vite';

/** The policy, as the text of the meta element. */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

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
