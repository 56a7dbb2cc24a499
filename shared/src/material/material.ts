import type { MaterialValue } from './value.ts';

/** Defaults for calculators, not allowables: the reader is meant to put in their own. */
export interface Material {
  name: string;
  /** [kg/m³] */
  density: MaterialValue;
  /** Young's modulus along the arm [Pa]. */
  youngsModulus: MaterialValue;
  /** Shear modulus in the plane of the wall or plate [Pa]. */
  shearModulus: MaterialValue;
}

/** Metals: one strength in all directions. */
export interface Metal extends Material {
  /** [Pa] */
  yieldStrength: MaterialValue;
  /** [Pa] */
  tensileStrength: MaterialValue;
  /** What a thread tapped in it strips at [Pa]. */
  shearStrength: MaterialValue;
}

/** Carbon parts: strengths by direction and by the way of loading. */
export interface CarbonPart extends Material {
  /** Bending strength along the arm: the lower of tension and compression [Pa]. */
  bendingStrength: MaterialValue;
  /** In-plane shear strength, which shear-out works against [Pa]. */
  shearStrength: MaterialValue;
  /** Bearing strength at a screw [Pa]. */
  bearingStrength: MaterialValue;
}

export interface CarbonPlate extends CarbonPart {
  /** Through the thickness, under a head with edges [Pa]. */
  headPressure: MaterialValue;
}

export interface CarbonTube extends CarbonPart {
  /** Round the tube, in bending of the wall: what a clamp works against [Pa]. */
  hoopBendingStrength: MaterialValue;
  /** Young's modulus round the tube [Pa]. */
  hoopModulus: MaterialValue;
}

export interface Adhesive {
  name: string;
  /** [kg/m³] */
  density: MaterialValue;
  /** Shear modulus of the cured paste [Pa]. */
  shearModulus: MaterialValue;
  /** Apparent lap shear strength [Pa]. */
  lapShearStrength: MaterialValue;
  /** Across the bond, of the adhesive or of the carbon's outer ply, whichever lets go first [Pa]. */
  acrossStrength: MaterialValue;
}

export interface Fibre {
  name: string;
  /** [kg/m³] */
  density: MaterialValue;
  /** Young's modulus along it [Pa]. */
  youngsModulus: MaterialValue;
  /** [Pa] */
  tensileStrength: MaterialValue;
}

export interface Resin {
  name: string;
  /** Cured [kg/m³]. */
  density: MaterialValue;
}

/** Two surfaces pressed together. */
export interface Contact {
  name: string;
  /** Share of the pressing force that resists sliding [-]. */
  friction: MaterialValue;
}
