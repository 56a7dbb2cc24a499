/** A place or a direction in the frame's own axes: x forward, y to the left, z up [m]. */
export interface Vector {
  x: number;
  y: number;
  z: number;
}

/**
 * From one place to another.
 * @param from - start [m]
 * @param to - end [m]
 * @returns the difference, component by component [m]
 * @derivation definition of a difference
 */
export function between(from: Vector, to: Vector): Vector {
  return { x: to.x - from.x, y: to.y - from.y, z: to.z - from.z };
}

/**
 * Moment of a force about the origin.
 * $$\mathbf M = \mathbf r \times \mathbf F$$
 * @param arm - from the point of reference to the force [m]
 * @param force - components [N]
 * @returns moment about x (roll), y (pitch) and z (yaw) [N·m]
 * @source meriam-2012-dynamics, vector product
 */
export function momentOf(arm: Vector, force: Vector): Vector {
  return {
    x: arm.y * force.z - arm.z * force.y,
    y: arm.z * force.x - arm.x * force.z,
    z: arm.x * force.y - arm.y * force.x,
  };
}
