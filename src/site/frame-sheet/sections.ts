import type { FrameRecord } from '@frameworthy/shared/frame';

export interface SheetSection {
  id: string;
  title: string;
  /** Fields whose path begins so, in the order of the record's description. */
  starts: readonly string[];
  /** Whether it concerns this frame. */
  when?: (record: FrameRecord) => boolean;
  open?: boolean;
}

const isTube = ({ arm }: FrameRecord) => arm.kind === 'tube';
const isStrip = ({ arm }: FrameRecord) => arm.kind === 'strip';

/** The record, section by section, as a maker goes through a frame. */
export const SECTIONS: readonly SheetSection[] = [
  { id: 'layout', title: 'Layout and propellers', starts: ['propeller.', 'layout.'], open: true },
  { id: 'arm', title: 'Arms', starts: ['arm.kind', 'arm.length', 'arm.wireMass'], open: true },
  { id: 'tube', title: 'Tube and sleeve', starts: ['arm.tube.', 'arm.sleeve.'], when: isTube, open: true },
  { id: 'strip', title: 'Plate arm', starts: ['arm.strip.'], when: isStrip, open: true },
  { id: 'root', title: 'Root: where arm and body join', starts: ['arm.root.'], open: true },
  { id: 'mount', title: 'Motor mount', starts: ['mount.'], when: isTube },
  { id: 'motor', title: 'Motors', starts: ['motor.'] },
  {
    id: 'body',
    title: 'Body and plates',
    starts: [
      'body.length',
      'body.width',
      'body.end',
      'body.crossPlate.',
      'body.mainPlate.',
      'body.topPlate.',
      'body.solidShare',
      'body.tongue',
    ],
  },
  { id: 'standoffs', title: 'Standoffs', starts: ['body.standoff.'], open: true },
  { id: 'battery', title: 'Battery', starts: ['battery.'] },
  { id: 'cases', title: 'Hits to reckon with', starts: ['cases.'] },
  { id: 'materials', title: 'Materials: low, typical, high', starts: ['materials.'] },
  { id: 'costs', title: 'Costs, in your own currency', starts: ['costs.'] },
];
