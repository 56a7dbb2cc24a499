/** Screws, holes and clamps at the root of an arm. */
export { twoScrewRoot, type RootReactions, type TwoScrewRoot } from './two-screw-root.ts';
