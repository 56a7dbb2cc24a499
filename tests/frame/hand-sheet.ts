/**
 * The Dunnock D worked by hand, as in a spreadsheet: each line is plain arithmetic on the numbers of its file and calls
 * nothing of the package. Millimetres, newtons, megapascals, grams at first; SI from where things move.
 *
 * The formulas are from the sources named beside them, the numbers are ours: own derivation, not a published number.
 * Gere: J. M. Gere, Mechanics of Materials, 6th edition, 2004. Hibbeler: R. C. Hibbeler, Mechanics of Materials.
 * Meriam: J. L. Meriam, L. G. Kraige, Engineering Mechanics: Dynamics, 7th edition, 2012.
 */
const { PI, sqrt, hypot, atan2, acos, cos, log } = Math;
export const G = 9.80665;

/* Layout: a square of propellers, tips 30 mm apart. Pythagoras. */
export const spacing = 129 + 30;
export const wheelbase = spacing * sqrt(2);
export const rootDistance = wheelbase / 2 - 70;

/* Sections. Gere, Appendix D: ring, second moment π(D⁴−d⁴)/64. */
const ringArea = (outer: number, inner: number) => (PI / 4) * (outer ** 2 - inner ** 2);
const ringSecond = (outer: number, inner: number) => (PI / 64) * (outer ** 4 - inner ** 4);
export const tubeArea = ringArea(14, 12);
export const tubeSecond = ringSecond(14, 12);
/** Sleeve: 0.1 mm of adhesive all round, so 11.8 mm outside; 1 mm wall. */
const sleeveArea = ringArea(11.8, 9.8);
export const sleeveSecond = ringSecond(11.8, 9.8);
/** The sleeve passes the outer screw by 48 − 10 − 24 mm. */
const doubled = 48 - 10 - 24;
const bare = 70 - doubled;

/* Masses in grams: volume [mm³] times density [g/mm³]. */
const CARBON = 1550e-6;
const PLATE = 1580e-6;
/** Inner end, root, arm, and half the motor plate of 26 mm past the motor’s axis. */
const tubeMass = tubeArea * (10 + 24 + 70 + 13) * CARBON;
const sleeveMass = sleeveArea * 48 * CARBON + PI * 11.8 * 48 * 0.1 * 1200e-6;
const motorPlate = 26 * 26 * 2 * PLATE;
/** Its glue, 26 mm of it: 0.2 mm to the tube, a fillet of 2 mm whose centre stands 9 from the tube’s and 5.2 above it. */
const aside = sqrt(9 ** 2 - 5.2 ** 2);
/** Both sides: a trapezium, 7.2 and 2 high, less the sectors of tube and fillet. */
const mountGlue = 26 * 1200e-6 * (aside * (7.2 + 2) - 7 ** 2 * atan2(aside, 5.2) - 2 ** 2 * (PI - atan2(aside, 5.2)));
/** Tow over the plate, down its sides, straight to the tube, round below: tangents to a circle of 7 mm. */
export const leg = atan2(13, 7.2) + acos(7 / hypot(13, 7.2));
export const towTurn = 26 + 2 * 2 + 2 * sqrt(13 ** 2 + 7.2 ** 2 - 7 ** 2) + 2 * 7 * (PI - leg);
/** Two bands of six turns at 198 tex; a wrap laid by hand weighs 1.7 times its dry tow (stated on the sheet). */
const tow = 1.7 * 2 * 6 * 198e-6 * towTurn;
export const armMass = tubeMass + sleeveMass + motorPlate + mountGlue + tow + 4;
/** Plates: outline 150 long, tapering from 56 to 26 mm, 68 % left; four tongues of 16 mm to 5 mm past the outer screw. */
const outline = (150 * (56 + 26)) / 2;
const tongues = 4 * 16 * (rootDistance + 5 - 56 / 2);
const mainPlate = (outline + tongues) * 0.68 * 3 * PLATE;
const crossPlate = (24 + 10 + 5) * 16 * 4 * 2 * PLATE;
const topPlate = outline * (130 / 150) * 0.68 * 2 * PLATE;
const standoffs = 4 * ringArea(5, 3) * 22 * 2700e-6;
const electronics = 10 + 24 + 8 + 2 + 6 + 6;
const hardware = 8 * 1.6 + 8 * 0.7 + 4 * 1.2 + 6 + 11 + 22;
export const bodyMass = mainPlate + crossPlate + topPlate + standoffs + electronics + hardware;
export const allUp = bodyMass + 4 * armMass + 4 * 37.5 + 230;

/* Balance, kg and m. Heights from the arms' axis, x forward. Parallel axes and plain bodies: Meriam, appendix B. */
const kg = 1e-3;
const m = {
  body: bodyMass * kg,
  arm: armMass * kg,
  motor: 0.0375,
  battery: 0.23,
  all: allUp * kg,
};
export const deck = 0.007 + 0.003;
export const topPlateAt = deck + 0.022;
const bodyTop = topPlateAt + 0.002;
const bodyBottom = -0.007 - 0.002;
const body = {
  x: (10 * 0.047 + 24 * 0 - 8 * 0.032 - 2 * 0.053 - 6 * 0.0685 - 6 * 0.053) / bodyMass,
  z: (bodyTop + bodyBottom) / 2,
  height: bodyTop - bodyBottom,
};
const battery = { x: 0.004, z: bodyTop + 0.003 + 0.046 / 2 };
const motorAt = (spacing / 2) * 1e-3;
const motorZ = 0.027 / 2;
export const centre = {
  x: (m.body * body.x + m.battery * battery.x) / m.all,
  z: (m.body * body.z + m.battery * battery.z + 4 * m.motor * motorZ) / m.all,
};
/** Middle of an arm on each axis: half its length inside the motor. */
const armAt = motorAt - 0.035 / sqrt(2);
const rod = (m.arm * 0.07 ** 2) / 12;
const motorAcross = m.motor * ((3 * 0.014 ** 2 + 0.02 ** 2) / 12);
const motorUpright = (m.motor * 0.014 ** 2) / 2;
/** Squares of the distance of each part from the middle of mass in z and x. */
const dz = (z: number) => (z - centre.z) ** 2;
const dx = (x: number) => (x - centre.x) ** 2;
/** Sum over two in front and two behind. */
const pairs = (at: number) => 2 * dx(at) + 2 * dx(-at);
export const inertia = {
  roll:
    (m.body * (0.056 ** 2 + body.height ** 2)) / 12 +
    m.body * dz(body.z) +
    // Crosswise: the long side lies across.
    (m.battery * (0.078 ** 2 + 0.046 ** 2)) / 12 +
    m.battery * dz(battery.z) +
    4 * (rod / 2 + m.arm * (armAt ** 2 + dz(0))) +
    4 * (motorAcross + m.motor * (motorAt ** 2 + dz(motorZ))),
  pitch:
    (m.body * (0.15 ** 2 + body.height ** 2)) / 12 +
    m.body * (dz(body.z) + dx(body.x)) +
    (m.battery * (0.04 ** 2 + 0.046 ** 2)) / 12 +
    m.battery * (dz(battery.z) + dx(battery.x)) +
    4 * (rod / 2 + m.arm * dz(0)) +
    m.arm * pairs(armAt) +
    4 * (motorAcross + m.motor * dz(motorZ)) +
    m.motor * pairs(motorAt),
  yaw:
    (m.body * (0.15 ** 2 + 0.056 ** 2)) / 12 +
    m.body * dx(body.x) +
    (m.battery * (0.078 ** 2 + 0.04 ** 2)) / 12 +
    m.battery * dx(battery.x) +
    4 * (rod + m.arm * armAt ** 2) +
    m.arm * pairs(armAt) +
    4 * (motorUpright + m.motor * motorAt ** 2) +
    m.motor * pairs(motorAt),
  /** Product in x and z, of the parts that lie off both. */
  xz:
    m.body * (body.x - centre.x) * (body.z - centre.z) +
    m.battery * (battery.x - centre.x) * (battery.z - centre.z) +
    4 * m.arm * (0 - centre.x) * (0 - centre.z) +
    4 * m.motor * (0 - centre.x) * (motorZ - centre.z),
};

/** Mass that a free body shows to a blow: Meriam, § 6/8, impulse and angular impulse; lever and line in m. */
function shownMass(lever: readonly [number, number, number], line: readonly [number, number, number]): number {
  const [x, y, z] = lever;
  const [nx, ny, nz] = line;
  const turn = [y * nz - z * ny, z * nx - x * nz, x * ny - y * nx] as const;
  // Roll and yaw hang together by the product: two equations by hand.
  const { roll, pitch, yaw, xz } = inertia;
  const determinant = roll * yaw - xz ** 2;
  const spinX = (yaw * turn[0] + xz * turn[2]) / determinant;
  const spinZ = (roll * turn[2] + xz * turn[0]) / determinant;
  return 1 / (1 / m.all + turn[0] * spinX + turn[1] ** 2 / pitch + turn[2] * spinZ);
}

/* The arm as a spring at the motor, SI. Gere, §§ 9.3, 9.5: each piece bends under the moment of what lies outside it. */
const E = 90e9;
const SHEAR = 10e9;
const L = 0.07;
const reach = doubled * 1e-3;
const bendBare = E * tubeSecond * 1e-12;
const bendDoubled = E * (tubeSecond + sleeveSecond) * 1e-12;
/** κ of a ring: G. R. Cowper, The Shear Coefficient in Timoshenko's Beam Theory, 1966, table; ν of 0.3. */
const kappa = (bore: number) =>
  (6 * 1.3 * (1 + bore ** 2) ** 2) / ((7 + 1.8) * (1 + bore ** 2) ** 2 + (20 + 3.6) * bore ** 2);
const shearBare = kappa(12 / 14) * tubeArea * 1e-6 * SHEAR;
const shearDoubled = shearBare + kappa(9.8 / 11.8) * sleeveArea * 1e-6 * SHEAR;
/** ∫(L−x)² over each piece. */
const bending = (L ** 3 - (L - reach) ** 3) / 3 / bendDoubled + (L - reach) ** 3 / 3 / bendBare;
const shearing = reach / shearDoubled + (L - reach) / shearBare;
const rooted = (spring: number) => L ** 2 / spring;
export const armVertical = 1 / (bending + shearing + rooted(3000));
const armHorizontal = 1 / (bending + shearing + rooted(4000));
/** Twist: Gere, § 3.4; the polar moment of a ring is twice its second moment. */
const armTwist =
  1 /
  (reach / (SHEAR * 2 * (tubeSecond + sleeveSecond) * 1e-12) +
    (L - reach) / (SHEAR * 2 * tubeSecond * 1e-12) +
    1 / 1500);
const armAlong = 1 / (reach / (E * (tubeArea + sleeveArea) * 1e-6) + (bare * 1e-3) / (E * tubeArea * 1e-6));
/** Slope at the motor under a moment there. */
const slopePerMoment = reach / bendDoubled + (L - reach) / bendBare + 1 / 3000;

/* Blows at 5 m/s against 100 N/mm, 12 mm above the arm's axis, on the front right arm. Energy: Hibbeler, § 14.4. */
const CONTACT = 100e3;
const SPEED = 5;
const HIT = 0.012;
const lever = [motorAt - centre.x, -motorAt, HIT - centre.z] as const;
const half = sqrt(0.5);
const blow = (compliance: number, line: readonly [number, number, number]): number =>
  SPEED * sqrt(shownMass(lever, line) / (compliance + 1 / CONTACT));
/** Mass that the blow from above or below meets. */
export const shown = { vertical: shownMass(lever, [0, 0, 1]) };
export const strike = {
  vertical: blow(1 / armVertical, [0, 0, 1]),
  sideways: blow(1 / armHorizontal + HIT ** 2 / armTwist, [half, half, 0]),
  along: blow(1 / armAlong + HIT ** 2 * slopePerMoment, [-half, half, 0]),
};

/* Root: moments about each screw (statics). N, mm, MPa. */
export const outer = (force: number) => (force * (70 + 24)) / 24;
export const inner = (force: number) => (force * 70) / 24;
/** Bearing on both walls of tube and sleeve: C. Willberg, lectures on fibre composites, 2023, exercise 2. */
const walls = 2 * (1 + 1);
const bearing = (force: number) => force / (3 * walls);
/** Tear-out along two planes of each wall, from the hole's edge to the end, or half the way to the next hole. */
const tearOut = (force: number, plane: number) => force / (2 * plane * walls);
/** What a hole of 3.2 mm takes from the second moment of a ring, screws upright: strips summed across the hole. */
export function holeTakes(outside: number, inside: number, direction: 'up' | 'across'): number {
  const strips = 4000;
  const width = 3.2 / strips;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const x = -1.6 + (i + 0.5) * width;
    const [top, bottom] = [sqrt((outside / 2) ** 2 - x ** 2), sqrt((inside / 2) ** 2 - x ** 2)];
    sum += direction === 'up' ? (2 / 3) * (top ** 3 - bottom ** 3) * width : 2 * x ** 2 * (top - bottom) * width;
  }
  return sum;
}
/** The sheet's root counts the sleeve as wall without a glue line: 12 outside, 10 inside. */
const net = (direction: 'up' | 'across') =>
  tubeSecond - holeTakes(14, 12, direction) + ringSecond(12, 10) - holeTakes(12, 10, direction);
/** Farthest fibre that is left: the edge of the hole, or the side of the tube. */
const edge = sqrt(7 ** 2 - 1.6 ** 2);
/** J. M. Whitney, R. J. Nuismer, 1974, point stress criterion with K of 3; d₀ of 1.016 mm. */
const xi = 1.6 / (1.6 + 1.016);
export const notched = 2 / (2 + xi ** 2 + 3 * xi ** 4);
/** M3, class 10.9: stress area 5.03 mm², 1040 and 830 MPa, ISO 898-1, 2013, tables 3 to 5; EN 1993-1-8, 2005, table 3.4. */
const SCREW = 5.03;
export const root = {
  bearingOuter: bearing(outer(strike.sideways)),
  bearingInner: bearing(inner(strike.sideways)),
  tearOuter: tearOut(outer(strike.sideways), (24 - 3.2) / 2),
  tearInner: tearOut(inner(strike.sideways), 10 - 1.6),
  holeUpright: (strike.vertical * 70 * edge) / net('up'),
  holeSideways: (strike.sideways * 70 * 7) / net('across'),
  screwTension: outer(strike.vertical) / (1040 * SCREW),
  screwShear: outer(strike.sideways) / (2 * 0.5 * 1040 * SCREW),
  bearingAlong: bearing(strike.along / 2),
};
/** Past the sleeve the bare tube has the moment of 56 mm. */
export const bareArm = {
  vertical: (strike.vertical * bare * 7) / tubeSecond,
  sideways: (strike.sideways * bare * 7) / tubeSecond,
  along: strike.along / tubeArea + (strike.along * 12 * 7) / tubeSecond,
};
/* Tightening: T = K d F with K of 0.2 (J. A. Speck, Mechanical Fastening, 2015, p. 85), a quarter of scatter. */
export const preloadHigh = (1.25 * 0.5) / (0.2 * 0.003);
/** Pinched ring: M = WR/π, Roark, 7th edition, 2002, table 9.2 case 1; curved bar: Boresi, 2003, chapter 9. */
const ringMean = 6;
const neutral = 2 / log(7 / 5);
const curved = (2 * (neutral - 5)) / (6 * (ringMean - neutral) * 5);
export const crush = (PI * 2 ** 2 * 20 * 200) / (6 * ringMean * curved);

/* Full thrust: how far 15 N turn the motor. Gere, § 9.5. */
export const tilt = 15 * ((L ** 2 - (L - reach) ** 2) / 2 / bendDoubled + (L - reach) ** 2 / 2 / bendBare + L / 3000);
/* First frequency by energy: tip mass and 33/140 of the tube on the tip's spring, turning of the motor left out. */
export const quickFrequency = (spring: number): number => {
  // The sheet's frequencies are of the bare tube all along.
  const stiffness = 1 / (L ** 3 / 3 / bendBare + L / shearBare + rooted(spring));
  const mass = m.motor + (33 / 140) * tubeArea * L * 1e6 * CARBON * kg * 1e-3;
  return sqrt(stiffness / mass) / (2 * PI);
};

/* Flat drop of 3 m on four arm ends: F/mg = 1 + √(1 + 2h/δ). Hibbeler, § 14.4. */
const ground = 4 / (1 / armVertical + 1 / CONTACT);
const rest = (m.all * G) / ground;
export const dropForce = ((m.all * G) / 4) * (1 + sqrt(1 + (2 * 3) / rest));
/** Speed whose peak is so many times that of this drop. */
export const dropSpeed = (margin: number): number =>
  sqrt(G * rest * (((margin * 4 * dropForce) / (m.all * G) - 1) ** 2 - 1));

/* Tongue: plates of 3 and 2 mm, 16 wide, 12 long, 14 mm of arm between them, held parallel by the arm at the screw. */
const PLATES = 47e3;
const sheet = (t: number) => (PLATES * 16 * t ** 3) / 12;
const apart = 14 + (3 + 2) / 2;
/** Both plates side by side in a row: EA of the couple. */
const pair = (PLATES * 16 * 3 * 2) / (3 + 2);
export function tongueUpright(force: number): number {
  const own = sheet(3) + sheet(2);
  const moment = force * 12;
  // The mean moment is half of it; the couple takes the share that its rigidity has.
  const couple = (moment / 2) * ((pair * apart ** 2) / (pair * apart ** 2 + own));
  const left = moment - couple;
  const stress = (t: number) => couple / apart / (16 * t) + (6 * left * (sheet(t) / own)) / (16 * t ** 2);
  return Math.max(stress(3), stress(2));
}
/** Sideways they bend in their own plane, 5 mm thick together. */
export const tongueSideways = (force: number): number => (6 * force * 12) / (5 * 16 ** 2);

export const frame = { m, centre, topPlateAt, cos45: cos(PI / 4) };
