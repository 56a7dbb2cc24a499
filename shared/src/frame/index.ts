/** The whole frame: one record, what it weighs and how it turns, what breaks first, and what a gram buys. */
export type { FrameRecord, HardwareItem, Spread } from './record.ts';
export {
  FIELDS,
  type ChoiceField,
  type Field,
  type LeafPath,
  type NumberField,
  type SpreadField,
} from './fields/index.ts';
export { LEAF_PATHS, leafOf, valueAt, withValue, type LeafValue } from './paths.ts';
export { boardSide, currentArrangement, electronicsGap, frameFit, type ArrangementFit } from './arrangement.ts';
export { framePlan, type FramePlan } from './plan.ts';
export { frameParts, totalOf, type FramePart, type PartGroup } from './parts.ts';
export { armSegments, hasSleeve, sleeveOf } from './arm.ts';
export { frameBalance, frameCraft, type FrameBalance, type FrameCraft } from './balance.ts';
export { CASES, MODES, type CaseName, type Check, type ModeName, type SpeedBand } from './check.ts';
export { evaluateFrame, type FrameEvaluation } from './evaluate.ts';
export { designSteps, type DesignStep } from './steps.ts';
export { STOCK_TUBES, STOCK_WALLS } from './stock.ts';
export { firstToGive, gainPerGram, governingHit, type Gain, type Impossible } from './gains.ts';
export { frameValue, isFrameField, isOfOtherArm, isWritable, withFrameValue } from './frame-field.ts';
export { frameOutline } from './outline.ts';
export { LEAST_WEB, thinWebs, type ThinWeb } from './hole-webs.ts';
export { armEndGap, BLADE_HALF_HEIGHT, propellerRoom, type UnderPropeller } from './propeller-room.ts';
export { changedCases, changedFields, type ChangedCase, type ChangedField } from './compare.ts';
export { changedLists, type ChangedLists, type ChangedParts } from './compare-lists.ts';
export { standoffForces, type StandoffForces } from './standoff-forces.ts';
