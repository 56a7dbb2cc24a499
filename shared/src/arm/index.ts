/** An arm as a whole, tube or strip of plate: sections along it, wires in its bore, and sizes that match another arm. */
export {
  roundEndArea,
  stripRoot,
  stripSection,
  stripSegments,
  type DrilledStrip,
  type StripEdges,
  type StripMaterial,
  type StripSize,
  type TaperedStrip,
} from './tapered-strip.ts';
export { bundleDiameter } from './wire-bundle.ts';
export { matchingSize, type Match, type MatchSearch } from './matching-size.ts';
export { largestTipForce, type LoadedSection } from './largest-tip-force.ts';
