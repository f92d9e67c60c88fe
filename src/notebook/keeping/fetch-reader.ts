/** Fetches the reader of what is kept; as it comes it stands by in `saved-reader.ts`. */
export async function fetchReader(): Promise<void> {
  await import('./read-saved');
}
