import type { Verdict } from '~/island/declaration.ts';

/** Below half of the strength there is room for what the model leaves out. */
const COMFORTABLE = 0.5;

/** What a share of a strength means: `of`, in words, completes `uses 40 % of ...`. */
export function verdictOfUse(use: number, of: string): Verdict {
  const share = use < 0.01 ? 'less than 1 % of' : use > 10 ? 'many times' : `${Math.round(use * 100)} % of`;
  const level = use <= COMFORTABLE ? 'good' : use < 1 ? 'marginal' : 'bad';
  return { level, text: `uses ${share} ${of}` };
}
