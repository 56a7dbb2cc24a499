import type { Output, Verdict } from '~/island/declaration.ts';
import type { FitResult, Filled } from './compute.ts';
import type { FitValues } from './inputs.ts';

type FitOutput = Output<FitValues, FitResult>;

const NO_PAIR = 'nothing to be near to';

/** What each of the margins is short of when it collides. */
const KIND = { betweenParts: 'part', toStandoffs: 'standoff', toEdge: 'edge' } as const;

/** Room for wires is air already: next to it there may be less than asked for, and nothing collides. */
function airVerdict(
  { freeMargins, collisions }: Filled,
  margin: keyof typeof KIND,
  asked: number,
): Verdict | undefined {
  const gap = freeMargins[margin]?.gap;
  if (gap === undefined) return undefined;
  if (gap < -1e-9) return { level: 'bad', text: 'they overlap' };
  return gap < asked - 1e-9 && collisions.some(({ kind }) => kind === KIND[margin])
    ? { level: 'marginal', text: 'less air than you asked for' }
    : { level: 'good', text: 'clear' };
}

function sideVerdict({ shortestStandoff: { inHit } }: Filled): Verdict | undefined {
  const side = inHit?.side;
  if (!side) return undefined;
  const pair = `${side.to}, ${side.of}`;
  return side.gap > 0 ? { level: 'good', text: pair } : { level: 'bad', text: `${pair}: they meet` };
}

function outputsOf(letter: 'A' | 'B'): FitOutput[] {
  const key = letter === 'A' ? 'a' : 'b';
  const of = (result: FitResult) => result[key];
  const group = `Arrangement ${letter}`;
  const air = (
    name: string,
    label: string,
    meaning: string,
    margin: keyof typeof KIND,
    asked: keyof FitValues,
  ): FitOutput => ({
    key: `${key}${name}`,
    label,
    quantity: 'length',
    digits: 2,
    group,
    meaning,
    value: (r) => of(r).freeMargins[margin]?.gap ?? 0,
    impossible: (r) => (of(r).freeMargins[margin] ? undefined : NO_PAIR),
    verdict: (r, values) => airVerdict(of(r), margin, values[asked] as number),
  });
  return [
    {
      key: `${key}Body`,
      label: `Shortest body, ${letter}`,
      quantity: 'length',
      headline: true,
      meaning: 'Plate with all parts and standoffs moved together in this order, your air kept.',
      value: (r) => of(r).shortestBody?.length ?? 0,
      impossible: (r) => (of(r).shortestBody ? undefined : 'too wide for the plate'),
      verdict: (r, { bodyLength }) =>
        (of(r).shortestBody?.length ?? 0) > bodyLength + 1e-9
          ? { level: 'bad', text: 'longer than your plate' }
          : { level: 'good', text: 'within your plate' },
    },
    {
      key: `${key}Collisions`,
      label: 'Collisions',
      quantity: 'count',
      group,
      meaning: 'Parts, standoffs and edges nearer to each other than you allow.',
      value: (r) => of(r).collisions.length,
      verdict: (r) => {
        const [first] = of(r).collisions;
        return first
          ? { level: 'bad', text: `${first.mover} and ${first.against}` }
          : { level: 'good', text: 'everything is clear' };
      },
    },
    {
      key: `${key}Stack`,
      label: 'Needed by the stack',
      quantity: 'length',
      group,
      meaning: 'Tallest part, what hangs over it, air and rise, nothing else moving.',
      value: (r) => of(r).shortestStandoff.byStack.needed,
      verdict: (r) => ({ level: 'good', text: `tallest: ${of(r).shortestStandoff.tallest.name}` }),
    },
    {
      key: `${key}Sway`,
      label: 'Needed with the hit',
      quantity: 'length',
      group,
      meaning: 'The same, and the dip of the swaying top plate over it.',
      value: (r) => of(r).shortestStandoff.bySway.needed,
      verdict: (r) =>
        of(r).shortestStandoff.governs === 'sway'
          ? { level: 'marginal', text: 'costs a size' }
          : { level: 'good', text: 'costs no size' },
    },
    {
      key: `${key}Standoff`,
      label: 'Shortest standoff sold',
      quantity: 'length',
      group,
      meaning: 'The next of the usual lengths at or above both.',
      value: (r) => of(r).shortestStandoff.bySway.sold ?? 0,
      impossible: (r) =>
        of(r).shortestStandoff.bySway.sold === undefined ? 'none: it folds with any length' : undefined,
    },
    {
      key: `${key}Moves`,
      label: 'Sway of the top plate',
      quantity: 'length',
      digits: 2,
      group,
      meaning: 'Of the standoff head that moves most in the hit, upper end of the band.',
      value: (r) => of(r).shortestStandoff.inHit?.sway ?? 0,
    },
    {
      key: `${key}Side`,
      label: 'Standoff to part, in the hit',
      quantity: 'length',
      digits: 2,
      group,
      meaning: 'The nearest that a swaying standoff comes to a part; 0 is a touch, less is how deep.',
      value: (r) => of(r).shortestStandoff.inHit?.side?.gap ?? 0,
      verdict: (r) => sideVerdict(of(r)),
    },
    {
      key: `${key}Longest`,
      label: 'Longest that sways clear',
      quantity: 'length',
      group,
      meaning: 'Longest length sold on which no standoff reaches a part sideways.',
      value: (r) => of(r).shortestStandoff.longest ?? 0,
      impossible: (r) =>
        of(r).shortestStandoff.longest === undefined ? 'none: even the shortest reaches a part' : undefined,
      verdict: (r) => {
        const { longest, bySway } = of(r).shortestStandoff;
        return longest !== undefined && bySway.sold !== undefined && longest < bySway.sold
          ? { level: 'bad', text: 'less than the stack needs: more air to the standoffs' }
          : { level: 'good', text: 'at or above what is needed' };
      },
    },
    air('ToStandoff', 'Nearest part to a standoff', 'At rest, wires included.', 'toStandoffs', 'columnsAir'),
    air('Between', 'Nearest two parts', 'At rest, in plan, where they share a height.', 'betweenParts', 'itemsAir'),
    air('ToEdge', 'Nearest part to the edge', 'Inwards; the antenna exit is left out.', 'toEdge', 'edgeAir'),
  ];
}

const [a, b] = [outputsOf('A'), outputsOf('B')];
export const outputs: readonly FitOutput[] = [a[0]!, b[0]!, ...a.slice(1), ...b.slice(1)];
