import { InputError } from '../error.ts';
import { requireBetween, requireFinite, requireNotNegative, requirePositive } from '../require.ts';

export interface WireSlot {
  /** [m] */
  slotWidth: number;
  /** From its inner end to the tube's end [m]. */
  slotLength: number;
  /** Wires through the slot [-]. */
  wireCount: number;
  /** Over the insulation [m]. */
  wireDiameter: number;
  /** How far the wires stand out of the tube's outline where they leave it; below zero where they lie inside [m]. */
  proud: number;
  /** Shallowest angle between the arm and what it scrapes along [rad]. */
  scrapeAngle: number;
  /** Tube that may wear off its end [m]. */
  wear: number;
}

export interface WireSlotResult {
  /** Wires side by side across the slot [-]. */
  abreast: number;
  rows: number;
  /** From the inner end of the slot to the outer side of the wires [m]. */
  bundle: number;
  /** Tube beyond the wires [m]. */
  standPast: number;
  /** Tube that has to stand beyond them [m]. */
  needed: number;
}

/**
 * How far a slotted tube end stands past the wires in it, and how far it has to, so that a scrape meets tube first.
 * $$e = \tfrac b2 - \sqrt{\tfrac{b^2-(n_b d_w)^2}{4}} + n_r d_w,\quad s = l - e,\quad
 * s_{min} = w + \frac{\max(0,p)}{\tan\theta}$$
 * @param slot - slot with a round inner end, wires, scrape
 * @returns wires abreast and rows; bundle, stand and needed stand [m]
 * @validity wires pulled to the inner end of the slot; obstacle flat, meeting end and wires together
 * @throws InputError when the wires are wider than the slot or longer than it
 * @derivation rows of n_b wires start where the round end is n_b d_w wide. A plane at angle θ to the arm that touches the
 * end of the tube passes s tan θ above its outline at the wires: they are clear where that is more than they stand out
 */
export function wireSlot(slot: WireSlot): WireSlotResult {
  const { slotWidth, slotLength, wireCount, wireDiameter, proud, scrapeAngle, wear } = slot;
  requirePositive(slotWidth, { parameter: 'slotWidth', quantity: 'width of the slot', kind: 'length' });
  requirePositive(slotLength, { parameter: 'slotLength', quantity: 'length of the slot', kind: 'length' });
  requireBetween(wireCount, 1, 100, { parameter: 'wireCount', quantity: 'number of wires', kind: 'count' });
  const wire = { parameter: 'wireDiameter', quantity: 'wire over its insulation', kind: 'length' } as const;
  requirePositive(wireDiameter, wire);
  requireFinite(proud, { parameter: 'proud', quantity: 'stand of the wires out of the tube', kind: 'length' });
  requireBetween(scrapeAngle, Math.PI / 180, Math.PI / 2, {
    parameter: 'scrapeAngle',
    quantity: 'angle of the scrape',
    kind: 'angle',
  });
  requireNotNegative(wear, { parameter: 'wear', quantity: 'wear of the end', kind: 'length' });
  const count = Math.ceil(wireCount);
  // A hair of play in the comparison, so that two wires of half the slot do fit.
  const abreast = Math.min(count, Math.floor(slotWidth / wireDiameter + 1e-9));
  if (abreast < 1)
    throw new InputError({ ...wire, value: wireDiameter, rule: 'does not fit into the slot', limit: slotWidth });
  const rows = Math.ceil(count / abreast);
  const roundEnd = slotWidth / 2 - Math.sqrt(Math.max(0, slotWidth ** 2 - (abreast * wireDiameter) ** 2)) / 2;
  const bundle = roundEnd + rows * wireDiameter;
  if (bundle > slotLength)
    throw new InputError({
      parameter: 'slotLength',
      quantity: 'length of the slot',
      value: slotLength,
      rule: 'is too short for its wires',
      limit: bundle,
      kind: 'length',
    });
  return {
    abreast,
    rows,
    bundle,
    standPast: slotLength - bundle,
    needed: wear + Math.max(0, proud) / Math.tan(scrapeAngle),
  };
}
