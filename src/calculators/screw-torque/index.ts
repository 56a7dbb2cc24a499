import { defineCalculator, sweep } from '~/island/declaration.ts';
import { compute, ENGAGEMENT, type ScrewResult } from './compute.ts';
import { ScrewFigure } from './figure.tsx';
import { inputs } from './inputs.ts';
import { LIMITER_WORDS, outputs, steps } from './outputs.ts';

export default defineCalculator({
  id: 'screw-torque',
  title: 'Screw torque',
  question: 'How hard may I tighten this screw, and how much thread does it need?',
  inputs,
  compute,
  outputs,
  warnings: ({ warnings }) => warnings,
  says: (result, values, show) =>
    `Tighten to about ${show(result.advisedTorque, 'moment', 2)}: past ${show(result.damageTorque, 'moment', 2)} ${LIMITER_WORDS[result.limiter]}. Your ${show(values.torque, 'moment', 2)} clamp with ${show(result.preload.low, 'force')} to ${show(result.preload.high, 'force')}.`,
  steps,
  plots: [
    {
      id: 'preload-over-torque',
      title: 'Preload against torque',
      caption:
        'Three lines for one torque: friction decides which it is. Where the highest meets a limit, something gives.',
      x: { label: 'Torque', quantity: 'moment' },
      y: { label: 'Preload', quantity: 'force' },
      data: (values, result, calculate) =>
        sweep(values, calculate, { input: 'torque', from: 0, to: Math.max(values.torque, result.damageTorque) * 1.3 }, [
          { label: 'meant', of: ({ preload }) => preload.nominal, role: 'main' },
          { label: 'low end', of: ({ preload }) => preload.low, role: 'comparison' },
          { label: 'high end', of: ({ preload }) => preload.high, role: 'second' },
          { label: 'weakest part', of: ({ least }) => least, role: 'limit' },
        ]),
    },
    {
      id: 'strip-over-engagement',
      title: 'Stripping against engagement',
      caption:
        'Where the thread meets the proof load of the screw, more thread adds nothing to the torque it can take.',
      x: { label: 'Thread engaged', quantity: 'length' },
      y: { label: 'Force', quantity: 'force' },
      data: (values, result, calculate) =>
        sweep(
          values,
          calculate,
          { input: ENGAGEMENT[values.into], from: 0.001, to: Math.max(0.01, result.engagement) },
          [
            { label: 'thread strips', of: ({ limit }) => limit.thread, role: 'main' },
            { label: 'proof load of the screw', of: ({ limit }) => limit.screw, role: 'limit' },
            ...(values.into === 'insert'
              ? [{ label: 'insert comes out', of: ({ hold }: ScrewResult) => hold.low, role: 'second' as const }]
              : []),
          ],
        ),
    },
  ],
  Figure: ScrewFigure,
  figureCaption: 'A cut along the screw, to scale; plates are drawn 2 mm thick.',
  assumptions: [
    'Torque by hand or driver scatters by a quarter either way, after a NASA report on preloaded joints.',
    'The thread of standoff, nut or insert is the worst that tolerance 6H allows, the screw the worst of 6g; both recalled from ISO 965.',
    'Two turns at the ends of the engaged thread hold nothing.',
    'Pressure under the head is even; the strength of the plate under it is a cautious number without a published source.',
    'The share of 65 % is published for the screw; that thread, plate and insert get the same share is our choice.',
    'A press nut is pulled onto its flange; its knurl is not counted. Sizes and metals of nuts and inserts are common practice.',
    'An insert counts as pulled out by the preload, which is so where it sits below the face. One flush under a part that overlaps it is only squeezed.',
    'Neither nut nor insert is checked against turning in its hole: no source gives a load.',
    'Heat, creep of the resin and repeated tightening lower the preload later; nothing here counts that.',
  ],
  sources: [
    'chambers-1995-tm106943',
    'speck-2015-fastening',
    'iso-2013-898',
    'iso-2009-3506',
    'titanium-data-sheet',
    'aluminum-association-7075',
    'fed-h28-2',
    'barrett-1990-fastener',
    'iso-1998-965',
    'iso-1979-273',
    'iso-2004-4762',
    'iso-2011-7380',
    'iso-2000-7089',
    'common-practice',
  ],
  formulas: [
    'fastener/tightening-limit.ts',
    'fastener/thread-shear.ts',
    'fastener/head-bearing.ts',
    'fastener/pull-out.ts',
    'joint/preload.ts',
    'joint/screw-use.ts',
  ],
});
