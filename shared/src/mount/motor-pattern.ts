import type { FrameThread } from '../fastener/index.ts';

/** Holes of a motor's base: two pairs, each quoted by the distance between its two opposite holes. */
export interface MotorPattern {
  /** One pair [m]. */
  first: number;
  /** The other pair, at right angles [m]. */
  second: number;
  thread: FrameThread;
}

const pattern = (first: number, second: number, thread: FrameThread): MotorPattern => ({
  first: first * 1e-3,
  second: second * 1e-3,
  thread,
});

/** Usual patterns by the millimetres that they are quoted with, and the thread that goes with them. common-practice. */
export const MOTOR_PATTERNS = {
  '9x9': pattern(9, 9, 'M2'),
  '12x12': pattern(12, 12, 'M2'),
  '16x16': pattern(16, 16, 'M3'),
  '16x19': pattern(16, 19, 'M3'),
  '19x19': pattern(19, 19, 'M3'),
} as const satisfies Record<string, MotorPattern>;

export type MotorPatternName = keyof typeof MOTOR_PATTERNS;
