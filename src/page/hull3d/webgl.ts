/** Whether this browser draws with WebGL 2, tried without fetching anything. */
export function hasWebGl(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2');
    // A browser keeps few contexts: this one is given back.
    context?.getExtension('WEBGL_lose_context')?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}
