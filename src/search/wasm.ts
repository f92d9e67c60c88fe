/**
 * Where the solver finds its program: the bundler names the file in the built page. Outside a browser (in
 * tests) the solver finds it beside its own script.
 */
import address from 'highs/runtime?url';

export async function wasmOf(): Promise<{ wasmBinary?: ArrayBuffer }> {
  if (typeof location === 'undefined') return {};
  const answer = await fetch(new URL(address, import.meta.url));
  if (!answer.ok) throw new Error('the solver did not arrive');
  return { wasmBinary: await answer.arrayBuffer() };
}
