/** The calculator cells: their form, their running, and the registry. All of them at once are in `all.ts`. */
export * from './form/about';
export * from './form/asked';
export * from './form/define';
export type { Ask, Asking, Fact, ToldStep } from './form/fact';
export * from './form/groups';
export * from './form/in-words';
export * from './form/instance';
export * from './form/manner';
export * from './form/links';
export * from './form/quantities';
export * from './registry';
export * from './form/sentence';
export * from './form/steps';
export * from './form/warnings';
