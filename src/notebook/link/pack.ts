/**
 * A text as letters that may stand in an address, and back: the browser's own gzip, whose sum (CRC-32) tells a letter
 * that was changed on the way, in base64url (RFC 4648, section 5).
 */

/** Letters of an address that `packed` gives. */
export const PACKED = /^[\w-]+$/;

export async function packed(text: string): Promise<string> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  const letters = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return letters.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/**
 * The text, or null where these letters hold none, or one of more bytes than `most`: a small link may be made to unfold
 * into more than the memory holds, so unfolding stops there.
 */
export async function unpacked(letters: string, most: number): Promise<string | null> {
  const bytes = bytesOf(letters);
  if (!bytes) return null;
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const reader = stream.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let left = most;
  try {
    for (;;) {
      // One piece after the other, for each may be one too many.
      // oxlint-disable-next-line no-await-in-loop
      const { done, value } = await reader.read();
      if (done) return text + decoder.decode();
      left -= value.length;
      if (left < 0) return null;
      text += decoder.decode(value, { stream: true });
    }
  } catch {
    return null;
  } finally {
    // What was given up is not unfolded any further; it has failed already where it can't be.
    reader.cancel().catch(() => undefined);
  }
}

function bytesOf(letters: string): Uint8Array<ArrayBuffer> | null {
  if (!PACKED.test(letters)) return null;
  try {
    const code = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(code, (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
