import { requireLength, requireLoad, requireModulus } from '../require-physical.ts';
import { loadTransfer, transferAt } from './load-transfer.ts';

export interface Adherend {
  /** Young's modulus along the load [Pa]. */
  modulus: number;
  /** Thickness [m]. */
  thickness: number;
}

export interface AdhesiveLayer {
  /** Shear modulus of the adhesive [Pa]. */
  shearModulus: number;
  /** Bond-line thickness [m]. */
  thickness: number;
}

export interface LapGiven {
  /** Load per width of joint [N/m]. */
  loadPerWidth: number;
  /** Overlap [m]. */
  overlap: number;
  /** Adherend that brings the load in at position 0. */
  first: Adherend;
  /** Adherend that takes it out at the far end. */
  second: Adherend;
  layer: AdhesiveLayer;
}

export interface LapShear {
  /** Rate of load transfer [1/m]. */
  lambda: number;
  /** `lambda` times overlap. */
  jointNumber: number;
  /** Mean shear stress of the bond [Pa]. */
  mean: number;
  /** Highest shear stress of the bond [Pa]. */
  peak: number;
  /** Shear stress where the first adherend is fully loaded [Pa]. */
  atStart: number;
  /** Shear stress where the second adherend is fully loaded [Pa]. */
  atEnd: number;
  /** Shear stress at a distance from the first end [Pa]. */
  at: (position: number) => number;
}

export function requireAdherend({ modulus, thickness }: Adherend, name: string): void {
  requireModulus(modulus, { parameter: `${name}Modulus`, quantity: 'adherend modulus' });
  requireLength(thickness, { parameter: `${name}Thickness`, quantity: 'adherend thickness' });
}

export function requireLayer({ shearModulus, thickness }: AdhesiveLayer): void {
  requireModulus(shearModulus, { parameter: 'shearModulus', quantity: 'adhesive shear modulus' });
  requireLength(thickness, { parameter: 'bondLine', quantity: 'bond-line thickness' });
}

/**
 * Shear stress along a flat single lap whose adherends may differ.
 * $$\lambda = \sqrt{\frac{G}{h}\left(\frac{1}{E_1t_1}+\frac{1}{E_2t_2}\right)},\quad
 * \frac{\tau_{max}}{\tau_{mean}} = \frac{\lambda L}{2}\left[\coth\frac{\lambda L}{2} + \frac{1-\psi}{1+\psi}\tanh\frac{\lambda L}{2}\right]$$
 * with $\psi$ the softer over the stiffer $Et$.
 * @param given - load, overlap, adherends and adhesive layer
 * @returns mean, peak and course of the bond shear [Pa]
 * @validity no bending of the joint: multiply by judgement or see `edgeMomentFactor` for one that is free to bend
 * @throws InputError for sizes and moduli that are not physical
 * @source willberg-2023-lectures, seminar Aufgabe 3
 */
export function singleLap({ loadPerWidth, overlap, first, second, layer }: LapGiven): LapShear {
  requireLoad(loadPerWidth, { parameter: 'loadPerWidth', quantity: 'load per width', kind: 'forcePerLength' });
  requireLength(overlap, { parameter: 'overlap', quantity: 'overlap' });
  requireAdherend(first, 'first');
  requireAdherend(second, 'second');
  requireLayer(layer);
  const transfer = loadTransfer({
    load: loadPerWidth,
    overlap,
    firstStiffness: first.modulus * first.thickness,
    secondStiffness: second.modulus * second.thickness,
    layerStiffness: layer.shearModulus / layer.thickness,
  });
  const { lambda, jointNumber, mean, peak, atStart, atEnd } = transfer;
  return { lambda, jointNumber, mean, peak, atStart, atEnd, at: (position) => transferAt(transfer, position) };
}
