/** The two lines that a bend may cross, the same in every cell: what is allowed of the wood in hand, and what any wood may take. */
import { bendShares, bendShareTexts } from '../../../trade/bend-grades';

/** Past what is allowed, and not past what picked wood takes: look again. */
export const overAllowed = {
  when: `share > allowed and share <= ${bendShares.picked}`,
  limit: `the share allowed: ${bendShareTexts.clear} for clear, straight wood is common practice`,
  weight: 'mind',
} as const;

/** Of a cell with `holds`, what one person holds. */
export const ONE_PERSON =
  'what one person holds, by your entry: 200 to 300 N (45 to 65 lbf) is common practice';

/** Past what picked wood takes, bent slowly: it breaks. */
export const overPicked = {
  when: `share > ${bendShares.picked}`,
  limit: `${bendShareTexts.picked} of the mean modulus of rupture, for picked wood bent slowly: common practice`,
  weight: 'stop',
} as const;
