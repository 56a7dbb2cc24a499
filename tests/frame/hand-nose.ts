import { frame, inertia } from './hand-sheet.ts';

/**
 * Nose-first hit of the Dunnock D, by hand: four posts of 22 mm at 72 x 33 mm between plates of 3 and 2 mm. SI. Plain
 * arithmetic, nothing of the package; own derivation from the sources named.
 */
const { PI, sqrt, hypot, log } = Math;

/* Post, 5 mm outside, thread of 3 mm, aluminium 6061. Gere, 2004, Appendix D; κ by Cowper, 1966, with ν of 0.3. */
const E = 69e9;
const area = (PI / 4) * (0.005 ** 2 - 0.003 ** 2);
const second = (PI / 64) * (0.005 ** 4 - 0.003 ** 4);
const bore = 3 / 5;
const kappa = (6 * 1.3 * (1 + bore ** 2) ** 2) / ((7 + 1.8) * (1 + bore ** 2) ** 2 + (20 + 3.6) * bore ** 2);
const L = 0.022;
const bend = E * second;
const shear = kappa * area * 26e9;

/* Rocking boss of 2.5 mm in a plate free to 8 mm, supported: plate bending in cos θ. Roark, 2002, table 11.2 case 20. */
const PLATE = 47e9;
const nu = 0.3;
const b = 2.5 / 8;
/**
 * w = c₁r + c₂r³ + c₃/r + c₄ r ln r, radii in parts of 8 mm, boss turned by one. At the edge w = 0 and no radial moment;
 * at the boss w = r and w' = 1. Taking one of these from the other leaves c₄ = 2c₃/b² − 2c₂b², then all in c₃.
 */
const ratio = -(2 - 2 * nu + (2 * (1 + nu)) / b ** 2) / (6 + 2 * nu - 2 * (1 + nu) * b ** 2);
const c4 = 2 / b ** 2 - 2 * ratio * b ** 2;
const turned = -ratio - 1 + ratio * b ** 2 + 1 / b ** 2 + c4 * log(b);
const rigidity = (t: number) => (PLATE * t ** 3) / (12 * (1 - nu ** 2));
const footStiffness = (t: number) => (4 * PI * rigidity(t) * Math.abs(c4)) / Math.abs(turned);
/** Radial moment at the boss for a moment of one on it, then 6M/t². */
const radial = (6 + 2 * nu) * b * ratio + (2 - 2 * nu) / b ** 3 + ((1 + nu) * c4) / b;
const footStress = (t: number, moment: number) => (6 * (Math.abs(radial / c4) / (4 * PI * 0.008)) * moment) / t ** 2;

/* A cantilever on the foot's spring, with the head's spring on top: movement and tilt for a push and a moment. */
const [c, d] = [1 / footStiffness(0.003), 1 / footStiffness(0.002)];
const movePush = L ** 3 / (3 * bend) + L / shear + L ** 2 * c;
const moveMoment = L ** 2 / (2 * bend) + L * c;
const tiltMoment = L / bend + c + d;
/** Inverted, two by two. */
const det = movePush * tiltMoment - moveMoment ** 2;
const sway = tiltMoment / det;
const coupling = -moveMoment / det;
const tilt = movePush / det;
const axial = (E * area) / L;

/* The stiff top plate on four posts at ±36, ±16.5 mm; pushed back by one newton at 48, 8, 2 mm. */
const [a, w] = [0.036, 0.0165];
const hit = { x: a + 0.012, y: 0.008, z: 0.002 };
const S = 4 * sway;
const C = 4 * coupling;
const T = 4 * tilt + 4 * axial * a ** 2;
const push = -1;
const pitching = hit.z * push;
const u = (push * T - C * pitching) / (S * T - C ** 2);
const pitch = (S * pitching - C * push) / (S * T - C ** 2);
const yaw = (-hit.y * push) / (4 * sway * (a ** 2 + w ** 2));
/** Movement of the point that is hit, along the push. */
const give = -(u + pitch * hit.z - yaw * hit.y);

/* Mass shown, stiffness in a row with 100 N/mm, peak at 5 m/s. Hibbeler, § 14.4. */
const { m, centre, topPlateAt } = frame;
const above = hit.z - (centre.z - topPlateAt);
export const mass = 1 / (1 / m.all + above ** 2 / inertia.pitch + hit.y ** 2 / inertia.yaw);
const stiffness = 1 / (give + 1 / 100e3);
export const force = 5 * sqrt(stiffness * mass);

/** What each of the four carries. */
const posts = [a, -a].flatMap((x) =>
  [w, -w].map((y) => {
    const forward = u - yaw * y;
    const left = yaw * x;
    // A tilt about the left axis bends a post forward; nothing tilts the plate sideways.
    const headX = coupling * forward + tilt * pitch;
    const headY = coupling * left;
    const pushX = sway * forward + coupling * pitch;
    const pushY = sway * left;
    return {
      head: force * hypot(headX, headY),
      foot: force * hypot(pushX * L + headX, pushY * L + headY),
      pull: force * axial * -pitch * x,
    };
  }),
);
const most = (of: (post: (typeof posts)[number]) => number) => Math.max(...posts.map(of));
/** N/A + Mc/I: Gere, 2004, § 5.12. */
export const wall = most(({ head, foot, pull }) => Math.abs(pull) / area + (Math.max(head, foot) * 0.0025) / second);
/** Largest press on a post, over its area. */
export const pressed = most(({ pull }) => -pull) / area;
/**
 * Stocky strut, held against turning at both ends while its top sways, so that it counts at its own length: Johnson's
 * parabola, A. Pytel, J. Kiusalaas, Mechanics of Materials, 2nd edition, 2012, § 10.4. Slenderness L/√(I/A) is below C.
 */
const slender = L / sqrt(second / area);
const slenderest = sqrt((2 * PI ** 2 * E) / 276e6);
export const buckles = 276e6 * (1 - slender ** 2 / (2 * slenderest ** 2));
/** Moments about the middle of the ring, once the face has lifted: T = N + M/r with r of a quarter of D + d. */
export const screw = most(({ head, foot, pull }) => pull + Math.max(head, foot) / 0.002);
/**
 * Pull or press through the plate, simply supported at 8 mm, spread over the post's face of 2.5 mm: moment in the middle
 * W/(4π) ((1 + ν) ln(a/r₀) + 1). Young and Budynas, Roark's Formulas for Stress and Strain, 7th edition, 2002,
 * Table 11.2, case 16; r₀ is the face itself, as it is wider than half the plate is thick.
 */
const pulled = (t: number, pull: number) => ((6 / t ** 2) * Math.abs(pull) * (1.3 * Math.log(8 / 2.5) + 1)) / (4 * PI);
export const topFoot = most(({ head, pull }) => footStress(0.002, head) + pulled(0.002, pull));
export const mainFoot = most(({ foot, pull }) => footStress(0.003, foot) + pulled(0.003, pull));

/* Room of 3 mm: transmitter 22 mm wide beside posts 33 mm apart and 5 mm thick, 16.5 − 11 − 2.5. */
export const gap = 0.0165 - 0.011 - 0.0025;
/** Movement at the corner of a board of 38 mm that moves most, for each newton. */
const half = 0.019;
export const corner = Math.max(
  ...[half, -half].flatMap((x) => [half, -half].map((y) => hypot(u - yaw * y, yaw * x, -pitch * x))),
);
/** All posts fold at both ends: plastic moment σ(D³−d³)/6 each. */
const fold = (4 * 2 * 276e6 * (0.005 ** 3 - 0.003 ** 3)) / 6 / L;
/** Energy: elastic up to the folding force, then at that force over what is left of the room. */
export const touch = sqrt((2 / mass) * (fold * (gap - corner * fold) + fold ** 2 / (2 * stiffness)));
export const elastic = corner * force;
