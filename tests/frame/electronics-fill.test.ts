import { expect, test } from 'vitest';
import fit from '~/calculators/electronics-fit/index.ts';
import type { FitValues } from '~/calculators/electronics-fit/inputs.ts';
import { placeItem, type Collision, type FitItem } from '@frameworthy/shared/fit';
import { frameFit, frameValue } from '@frameworthy/shared/frame';
import { SAMPLES } from '~/frame/samples.ts';
import { filledFrom } from './filled.ts';

const revision = (name: string) => SAMPLES.find((record) => record.revision === name)!;

test('A is the arrangement in use and B the other one, each with the transmitter that it has', () => {
  const filled = filledFrom(fit, revision('D'));
  expect(filled).toMatchObject({ aTransmitter: 'analogue', analogueSide: 0.022, analogueHeight: 0.007 });
  expect(filled).toMatchObject({ aPlace: 'behind', aTransmitterAt: -0.032, aFront: 0.036, aRear: -0.036 });
  expect(filled).toMatchObject({ bTransmitter: 'digital', digitalLength: 0.034, digitalWidth: 0.03 });
  expect(filled).toMatchObject({ digitalHeight: 0.014, bStackAt: 0.006, bFront: 0.036, bRear: -0.056 });
});

test('a frame with one arrangement leaves B to the reader', () => {
  const c = revision('C');
  expect(filledFrom(fit, c)).toMatchObject({ aTransmitter: 'digital', aPlace: 'on', digitalLength: 0.03 });
  expect(frameValue(c, 'electronics.other.board.x')).toBeUndefined();
  expect(filledFrom(fit, c)['bStackAt']).toBe(fit.inputs.bStackAt.default);
});

const KINDS: Readonly<Record<string, string>> = { 'board stack': 'board', 'antenna exit': 'antenna' };

/**
 * Collisions with parts called by what they are: the calculator and a record have names, and an order, of their own. Which
 * of the two is told to move follows the order.
 */
const plain = (collisions: readonly Collision[], kindOf: (name: string) => string) =>
  collisions
    .map(({ mover, against, gap, move, moverPart, againstPart }) => {
      const both = [`${kindOf(mover)} ${moverPart}`, `${kindOf(against)} ${againstPart}`].sort();
      return [...both, gap.toFixed(9), move.toFixed(9)].join(', ');
    })
    .sort();

/** Parts moved, turned, lifted and taken away, so that some of them collide. */
const CHANGES: readonly ((item: FitItem) => FitItem | undefined)[] = [
  (item) => item,
  (item) => (item.kind === 'receiver' ? { ...item, x: item.x + 0.014, y: 0.006, z: 0 } : item),
  (item) => (item.kind === 'capacitor' ? { ...item, length: item.width, width: item.length, y: -0.009 } : item),
  (item) => (item.kind === 'antenna' ? { ...item, x: item.x - 0.017, z: 0.001 } : item),
  (item) => (item.kind === 'board' ? { ...item, x: item.x - 0.016, length: 0.042, width: 0.042 } : item),
  (item) => (item.kind === 'camera' ? { ...item, x: item.x - 0.019, tilt: 0.7 } : item),
  ({ kind, ...item }) =>
    kind === 'receiver' || kind === 'transmitter' ? undefined : { ...item, kind, y: 0.004 * +(kind === 'antenna') },
];

test.each(SAMPLES.map((record) => [`${record.name} ${record.revision}`, record] as const))(
  '%s: the calculator finds the collisions that the frame sheet finds, and as much room in height',
  (_, sample) => {
    let found = 0;
    for (const change of CHANGES) {
      const record = {
        ...sample,
        electronics: {
          ...sample.electronics,
          arrangements: sample.electronics.arrangements.map((one) => ({
            ...one,
            items: one.items.map(change).filter((item) => item !== undefined),
          })),
        },
      };
      const { current, arrangements } = record.electronics;
      const filled = fit.compute(filledFrom(fit, record) as FitValues);
      const ofSheet = frameFit(record);
      const other = arrangements.find(({ name }) => name !== current)?.name;
      for (const [letter, name] of [
        ['a', current],
        ['b', other],
      ] as const) {
        if (name === undefined) continue;
        const { items } = arrangements.find((one) => one.name === name)!;
        const kindOf = (part: string) => items.find((item) => item.name === part)?.kind ?? part;
        const expected = plain(ofSheet.find((one) => one.name === name)!.collisions, kindOf);
        expect(
          plain(filled[letter].collisions, (part) => KINDS[part] ?? part),
          `${letter}, ${change}`,
        ).toEqual(expected);
        found += expected.length;
        const tops = items.filter(({ openAbove }) => !openAbove).map((item) => placeItem(item).top);
        expect(filled[letter].shortestStandoff.tallest.top).toBeCloseTo(Math.max(...tops), 9);
      }
    }
    expect(found).toBeGreaterThan(5);
  },
);
