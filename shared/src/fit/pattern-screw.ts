import { InputError } from '../error.ts';
import { clearanceHole, type FrameThread, type HoleSeries } from '../fastener/index.ts';
import { requireBetween, requireNotNegative } from '../require.ts';
import { requireFitSize } from './require-fit.ts';
import { HOLE_PATTERNS, type HolePattern } from './types.ts';

/** Between neighbouring holes [m]; common practice. */
export const PATTERN_SPACING: Readonly<Record<HolePattern, number>> = {
  '20x20': 20e-3,
  '25.5x25.5': 25.5e-3,
  '30.5x30.5': 30.5e-3,
};

/** Hole of a board as it is sold on each pattern, and as it is drilled or bushed for a larger screw [m]; common practice. */
export const USUAL_BOARD_HOLES: Readonly<Record<HolePattern, readonly number[]>> = {
  '20x20': [2.2e-3, 3.2e-3],
  '25.5x25.5': [2.2e-3],
  '30.5x30.5': [3.2e-3, 4e-3],
};

export interface ScrewedPattern {
  pattern: HolePattern;
  thread: FrameThread;
  /** In the board, or in the soft mount that sits in it [m]. */
  hole: number;
  /** Shorter side of the board [m]. */
  boardSide: number;
  /** Head or nut, across its corners [m]. */
  across: number;
  /** How far it stands above the board [m]. */
  height: number;
  /** Of ISO 273; fine where not given. */
  series?: HoleSeries;
}

export interface ScrewedPatternResult {
  /** Hole that the screw needs [m]. */
  needed: number;
  /** Hole less that [m]. */
  room: number;
  /** Board left between hole and edge [m]. */
  web: number;
  /** How far the head or nut stands past the edge of the board; negative where it stays inside [m]. */
  past: number;
}

/**
 * Four screws through a board: whether they pass its holes, and what the holes leave.
 * $$h \ge d_h,\quad w = \frac{b - p - h}{2}$$
 * @param board - pattern, thread, hole, side of the board, head or nut
 * @returns hole needed, room, web to the edge, head past the edge [m]
 * @validity square patterns in the middle of the board
 * @throws InputError when the screw does not pass the hole, the head falls through it, or the holes break the edge
 * @source iso-1979-273, table of clearance holes
 */
export function patternScrew(board: ScrewedPattern): ScrewedPatternResult {
  const { pattern, thread, hole, boardSide, across, height } = board;
  if (!HOLE_PATTERNS.includes(pattern))
    throw new InputError({
      parameter: 'pattern',
      quantity: 'hole pattern',
      value: pattern,
      rule: 'must be one of those listed',
    });
  const needed = clearanceHole(thread, board.series ?? 'fine');
  const subject = { parameter: 'hole', quantity: 'hole in the board', kind: 'length' } as const;
  requireFitSize(hole, subject.parameter, subject.quantity);
  if (hole < needed - 1e-9)
    throw new InputError({
      ...subject,
      value: hole,
      rule: `is too small for ${thread} screws, which need at least`,
      limit: needed,
    });
  requireFitSize(boardSide, 'boardSide', 'side of the board');
  const spacing = PATTERN_SPACING[pattern];
  if (boardSide <= spacing + hole)
    throw new InputError({
      parameter: 'boardSide',
      quantity: 'side of the board',
      value: boardSide,
      rule: `leaves nothing round the holes of a ${pattern} mm pattern, which needs more than`,
      limit: spacing + hole,
      kind: 'length',
    });
  requireFitSize(across, 'across', 'head or nut on the board');
  if (across <= hole)
    throw new InputError({
      parameter: 'across',
      quantity: 'head or nut on the board',
      value: across,
      rule: 'falls through a hole as wide; it needs more than',
      limit: hole,
      kind: 'length',
    });
  const stands = { parameter: 'screwHeight', quantity: 'height of heads or nuts', kind: 'length' } as const;
  requireNotNegative(height, stands);
  requireBetween(height, 0, 0.1, stands);
  const margin = (boardSide - spacing) / 2;
  return { needed, room: Math.max(0, hole - needed), web: margin - hole / 2, past: across / 2 - margin };
}

/**
 * Patterns whose usual boards pass a screw.
 * $$\max h_{usual} \ge d_h$$
 * @param thread - of the screw
 * @param series - of ISO 273
 * @returns patterns in order of size, each with the least usual hole that passes [m]
 * @validity boards as sold or drilled, common practice; measure yours
 * @throws InputError when the thread or series is not in the table
 * @source iso-1979-273, table of clearance holes
 */
export function patternsFor(
  thread: FrameThread,
  series: HoleSeries,
): readonly { pattern: HolePattern; hole: number }[] {
  const needed = clearanceHole(thread, series);
  return HOLE_PATTERNS.flatMap((pattern) => {
    const hole = USUAL_BOARD_HOLES[pattern].find((usual) => usual >= needed - 1e-9);
    return hole === undefined ? [] : [{ pattern, hole }];
  });
}
