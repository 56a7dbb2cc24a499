import type { Point } from './drawing/paper.ts';

/** What is to be written on a line, in order of importance. */
export interface LineText {
  key: string;
  text: string;
  /** On the paper. */
  lines: readonly (readonly Point[])[];
  /** Where along the line to try first, so that families stand apart. */
  first: number;
}

interface Box {
  x: number;
  y: number;
  width: number;
}

const HEIGHT = 14;
const LETTER = 6.4;
/** A line shorter than this on the paper is left without its number. */
const SHORTEST = 24;
const TRIES = [0, 0.12, -0.12, 0.24, -0.24, 0.36, -0.36, 0.46, -0.46];

const lengthOf = (line: readonly Point[]) =>
  line.slice(1).reduce((sum, { x, y }, i) => sum + Math.hypot(x - line[i]!.x, y - line[i]!.y), 0);

function along(line: readonly Point[], share: number): Point {
  let left = share * lengthOf(line);
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const piece = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= piece && piece > 0)
      return { x: a.x + ((b.x - a.x) * left) / piece, y: a.y + ((b.y - a.y) * left) / piece };
    left -= piece;
  }
  return line.at(-1)!;
}

const clash = (a: Box, b: Box) => Math.abs(a.x - b.x) < (a.width + b.width) / 2 + 2 && Math.abs(a.y - b.y) < HEIGHT;

/** A place for each text on its line, clear of the others, of what is `taken`, and of the edges; some find none. */
export function placeTexts(
  texts: readonly LineText[],
  paper: { left: number; right: number; top: number; bottom: number },
  taken: readonly Point[],
): { key: string; text: string; at: Point }[] {
  const boxes: Box[] = taken.map(({ x, y }) => ({ x, y, width: 14 }));
  return texts.flatMap(({ key, text, lines, first }) => {
    const line = [...lines].sort((a, b) => lengthOf(b) - lengthOf(a))[0];
    if (!line || lengthOf(line) < SHORTEST) return [];
    const width = text.length * LETTER;
    for (const move of TRIES) {
      const share = first + move;
      if (share < 0.02 || share > 0.98) continue;
      const { x, y } = along(line, share);
      const inside =
        x - width / 2 > paper.left && x + width / 2 < paper.right && y - 8 > paper.top && y + 8 < paper.bottom;
      const box = { x, y, width };
      if (!inside || boxes.some((other) => clash(box, other))) continue;
      boxes.push(box);
      return [{ key, text, at: { x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10 } }];
    }
    return [];
  });
}
