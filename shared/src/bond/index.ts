/** Bonded joints: laps, sleeves in tubes, scarfs, and what the adhesive makes of them. */
export { singleLap, type Adherend, type AdhesiveLayer, type LapGiven, type LapShear } from './single-lap.ts';
export { doubleLap, type DoubleLapGiven } from './double-lap.ts';
export { usefulOverlap } from './useful-overlap.ts';
export { bendingLapPeakShear, edgeMoment, type BalancedLapGiven, type EdgeMoment } from './goland-reissner.ts';
export {
  doubleLapPlateau,
  equivalentElasticShear,
  type DoubleLapStiffness,
  type DuctileAdhesive,
} from './elastic-plastic.ts';
export { balancedDoubleLapStrength, type BalancedDoubleLap, type PlasticLap } from './elastic-plastic-overlap.ts';
export { sleeveBondArea, sleeveGeometry, type SleeveGeometry, type SleeveInTube } from './sleeve-geometry.ts';
export { sleeveBond, type SleeveBond, type SleeveBondGiven, type SleeveLoad } from './sleeve-bond.ts';
export { scarfStress } from './scarf.ts';
export { BEST_BOND_LINE, USUAL_BOND_LINE, bondLineWarnings } from './bond-line.ts';
export { LAP_SHEAR_LEVELS, meanLapShear, strengthAtTemperature } from './lap-shear.ts';
export { overlapByRule, scarfLengthByRule } from './overlap-rules.ts';
