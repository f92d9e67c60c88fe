import { isPost, type Station } from './station';

/** Which way the wood stands off its line: a transom and a stem have it inboard, where their outer face is on the line. */
export function sideOf(station: Station, side: string, outerFace: boolean): 'forward' | 'aft' {
  if (station.role === 'frame') return side === 'forward' || side === 'aft' ? side : station.stands;
  const stern = station.role === 'transom' || station.role === 'sternpost';
  return stern === (outerFace || isPost(station.role)) ? 'forward' : 'aft';
}
