/** Round numbers for axes. A general library for it would be twice the script; the tests hold these against one. */

/** 1, 2 or 5 times a power of ten, of which about `count` fill the span. */
function stepOf(span: number, count: number): number {
  const power = 10 ** Math.floor(Math.log10(span / count));
  const parts = span / count / power;
  return power * (parts >= Math.sqrt(50) ? 10 : parts >= Math.sqrt(10) ? 5 : parts >= Math.SQRT2 ? 2 : 1);
}

/** Without the dust of binary fractions. */
const tidy = (value: number) => Number(value.toPrecision(12));

/** Round numbers from one to the other, about `count` of them. `to` is the larger one. */
export function ticks(from: number, to: number, count: number): number[] {
  const step = stepOf(to - from, count);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step));
}

/** The same span, widened to end at ticks. */
export function nice(from: number, to: number, count: number): [number, number] {
  let [low, high, before] = [from, to, 0];
  for (let step = stepOf(high - low, count); step !== before; step = stepOf(high - low, count)) {
    [low, high, before] = [tidy(Math.floor(low / step) * step), tidy(Math.ceil(high / step) * step), step];
  }
  return [low, high];
}
