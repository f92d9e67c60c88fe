/**
 * Hashes of the style texts that Observable Plot 0.6.17 puts into its figures, for the
 * content security policy: the figure itself, a legend of swatches, a legend of a colour ramp.
 * tests/dom/build/plot-styles.test.ts draws each and recomputes them, so that another version
 * of Plot fails there and not silently on the page.
 */
export const plotStyleHashes = {
  figure: 'sha256-jSYQUrW7J0b3jPqhZP9C2Xh1PyJKHKXd4s0fpGGKrww=',
  swatches: 'sha256-rCZUQsEQJf1DmnfnMZmlj08XC7qbIZySA6bEtitbQ00=',
  ramp: 'sha256-/jg3HOQ97BIOLIR7iXhepLJanBbw11P39q1Ne1E+6Jc=',
} as const;
