/** How stiff plywood is along its face grain and across it, ply by ply. */

/**
 * Share of the second moment of area that lies in plies whose grain runs as that of the faces.
 *
 * @param plies of one thickness, turned by turns; of an even number the middle two lie alike
 */
export function faceShare(plies: number): number {
  let share = 0;
  let sign = 1;
  for (let left = Math.round(plies); left > 0; left -= 2) {
    share += sign * (left / plies) ** 3;
    sign = -sign;
  }
  return share;
}
