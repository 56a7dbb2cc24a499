const FACTORS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Round number of times that a small movement is drawn larger, so that it stays within the room. */
export const drawnFactor = (movement: number, room: number): number =>
  FACTORS.findLast((candidate) => candidate * movement <= room) ?? 1;
