/** Parts that are laid of boards along edges of the hull. A file of its own, so that a list of them brings no plan with it. */
export const longParts = [
  { id: 'keelson', label: 'keelson' },
  { id: 'chineLog', label: 'chine log' },
  { id: 'sheerClamp', label: 'sheer clamp' },
  { id: 'rubRail', label: 'rub rail' },
] as const;

export type LongPart = (typeof longParts)[number]['id'];
