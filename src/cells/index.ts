/** The calculator cells: their form, their running, and the registry. All of them at once are in `all.ts`. */
export * from './asked';
export * from './define';
export * from './instance';
export * from './lights';
export * from './manner';
export * from './quantities';
export * from './registry';
export * from './steps';
export * from './warnings';
