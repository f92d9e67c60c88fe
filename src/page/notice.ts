/** A sentence to the builder, with at most one thing to do about it. */
export interface Notice {
  readonly says: string;
  readonly key?: { readonly words: string; readonly act: () => void };
}
