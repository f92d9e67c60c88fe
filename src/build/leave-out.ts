/** Leaves a module of Node's out of a browser's bundle, where a package asks for it only under Node. */
import type { Plugin } from 'vite';

export function leaveOut(name: string): Plugin {
  const nothing = `\0without ${name}`;
  return {
    name: 'leave-out',
    enforce: 'pre',
    resolveId: (wanted) => (wanted === name ? nothing : null),
    load: (id) => (id === nothing ? 'export {};' : null),
  };
}
