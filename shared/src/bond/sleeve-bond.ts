import type { QuantityKind } from '../quantity/kinds.ts';
import { requireLength, requireLoad, requireModulus } from '../require-physical.ts';
import { loadTransfer, transferAt } from './load-transfer.ts';
import type { LapShear } from './single-lap.ts';
import { sleeveGeometry, type SleeveGeometry, type SleeveInTube } from './sleeve-geometry.ts';

export type SleeveLoad = 'axial' | 'torque' | 'bending';

export interface SleeveBondGiven extends SleeveInTube {
  /** What the joint carries. */
  kind: SleeveLoad;
  /** Force along the tube, torque about it, or bending moment [N or N·m]. */
  load: number;
  overlap: number;
  /** Young's modulus of the tube along its axis; in torque its shear modulus [Pa]. */
  tubeModulus: number;
  /** The same of the sleeve [Pa]. */
  sleeveModulus: number;
  /** Shear modulus of the adhesive [Pa]. */
  shearModulus: number;
}

/** What stands for stiffness, layer and bond in each kind of load. `arm` turns transfer per length into shear stress. */
const KINDS: Record<
  SleeveLoad,
  {
    kind: QuantityKind;
    property: (section: SleeveGeometry['tube']) => number;
    layer: (r: number) => number;
    arm: (r: number) => number;
  }
> = {
  axial: { kind: 'force', property: (s) => s.area, layer: (r) => 2 * Math.PI * r, arm: (r) => 2 * Math.PI * r },
  torque: {
    kind: 'moment',
    property: (s) => s.torsionConstant,
    layer: (r) => 2 * Math.PI * r ** 3,
    arm: (r) => 2 * Math.PI * r ** 2,
  },
  bending: {
    kind: 'moment',
    property: (s) => s.vertical.secondMomentOfArea,
    layer: (r) => Math.PI * r ** 3,
    arm: (r) => Math.PI * r ** 2,
  },
};

export interface SleeveBond extends LapShear {
  geometry: SleeveGeometry;
}

/**
 * Shear stress along the bond of a tube joined to a sleeve that carries the whole load on.
 * $$\lambda^2 = \frac{2\pi rG}{h}\left(\frac{1}{EA_t}+\frac{1}{EA_s}\right),\quad
 * \lambda^2 = \frac{2\pi r^3G}{h}\left(\frac{1}{GJ_t}+\frac{1}{GJ_s}\right),\quad
 * \lambda^2 = \frac{\pi r^3G}{h}\left(\frac{1}{EI_t}+\frac{1}{EI_s}\right)$$
 * @param given - parts, moduli, adhesive, overlap, kind of load and load
 * @returns mean, peak and course of the bond shear at the most stressed line [Pa]; position 0 is the end of the sleeve
 * where the tube still carries all
 * @validity elastic parts and adhesive. In bending no credit is given to the sleeve pressing on the bore, so the peak
 * is on the safe side
 * @throws InputError when the sleeve does not fit, or a value is not physical
 * @source pugno-2003-tubular, behaviour under axial load: the peak stays however long the overlap
 * @derivation A ring of bond of length dx hands over 2πr τ dx of force or 2πr² τ dx of torque, with τ = (G/h) times
 * the relative movement at r. In bending τ = (G/h) r sinθ times the relative rotation; integrating τ r sinθ round the
 * ring gives πr³G/h for the moment per rotation, and πr² times the highest τ.
 */
export function sleeveBond({
  kind,
  load,
  overlap,
  tubeModulus,
  sleeveModulus,
  shearModulus,
  ...parts
}: SleeveBondGiven): SleeveBond {
  const { property, layer, arm, kind: quantity } = KINDS[kind];
  requireLoad(load, { parameter: 'load', quantity: 'load on the joint', kind: quantity });
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  requireModulus(tubeModulus, { parameter: 'tubeModulus', quantity: 'modulus of the tube' });
  requireModulus(sleeveModulus, { parameter: 'sleeveModulus', quantity: 'modulus of the sleeve' });
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'adhesive shear modulus' });
  const geometry = sleeveGeometry(parts);
  const transfer = loadTransfer({
    load,
    overlap,
    firstStiffness: tubeModulus * property(geometry.tube),
    secondStiffness: sleeveModulus * property(geometry.sleeve),
    layerStiffness: (shearModulus / geometry.bondLine) * layer(geometry.bondRadius),
  });
  const per = arm(geometry.bondRadius);
  return {
    geometry,
    lambda: transfer.lambda,
    jointNumber: transfer.jointNumber,
    mean: transfer.mean / per,
    peak: transfer.peak / per,
    atStart: transfer.atStart / per,
    atEnd: transfer.atEnd / per,
    at: (position) => transferAt(transfer, position) / per,
  };
}
