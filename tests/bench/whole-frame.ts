import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { evaluateFrame, gainPerGram, type FrameRecord } from '../../shared/src/frame/index.ts';
import dunnock from '../../content/frames/dunnock-d.json' with { type: 'json' };

const EVALUATION = 2;
const GAIN = 50;
const STEPS = 20;
const SCRIPT = 80_000;

const record = dunnock as unknown as FrameRecord;

/** Milliseconds of each of `count` runs, the quickest first, after as many to warm up. */
function timed(count: number, run: () => void): number[] {
  for (let i = 0; i < count; i++) run();
  const times = Array.from({ length: count }, () => {
    const started = performance.now();
    run();
    return performance.now() - started;
  });
  return times.sort((a, b) => a - b);
}

const at = (times: readonly number[], share: number) => times[Math.floor(share * (times.length - 1))] ?? 0;

/** A whole evaluation, gain per gram, and the frame sheet's script, each against what they are meant to stay within. */
export function benchWholeFrame(dist: string): void {
  const checks = evaluateFrame(record).checks.length;
  const evaluation = timed(400, () => void evaluateFrame(record));
  console.info(
    `whole frame, ${checks} checks: median ${at(evaluation, 0.5).toFixed(2)} ms = ${(at(evaluation, 0.5) / EVALUATION).toFixed(2)} of ${EVALUATION} ms; nine in ten below ${at(evaluation, 0.9).toFixed(2)} ms`,
  );
  const { gains, impossible } = gainPerGram(record);
  const steps = gains.length + impossible.length;
  const gain = timed(30, () => void gainPerGram(record));
  const each = (at(gain, 0.5) * STEPS) / steps;
  console.info(
    `gain per gram, ${steps} steps: median ${at(gain, 0.5).toFixed(1)} ms; for ${STEPS} steps ${each.toFixed(1)} ms = ${(each / GAIN).toFixed(2)} of ${GAIN} ms`,
  );
  const html = readFileSync(join(dist, 'frame.html'), 'utf8');
  const script = [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"/g)].reduce(
    (sum, match) => sum + gzipSync(readFileSync(join(dist, match[1] as string)), { level: 9 }).length,
    0,
  );
  console.info(
    `frame sheet's script: ${(script / 1000).toFixed(1)} kB compressed = ${(script / SCRIPT).toFixed(2)} of ${SCRIPT / 1000} kB`,
  );
}
