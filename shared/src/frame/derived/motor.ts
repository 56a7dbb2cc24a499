import { FILL_LIMIT, WRAP_FIBRE } from '../checks/mount.ts';
import { motorRise } from '../checks/running.ts';
import { withValue } from '../paths.ts';
import { framePlan } from '../plan.ts';
import type { FrameRecord } from '../record.ts';
import { always, isTube, type DerivedFields } from './derived-field.ts';

/** Of the face that the motor stands on, above the arm's axis. */
const seat = (record: FrameRecord): number =>
  framePlan(record).armHeight / 2 + (isTube(record) ? record.mount.plateThickness : 0);

const CIRCLES = [9, 12, 16, 19] as const;
const NEAR = 0.05;

/** Four holes on a circle as motors are quoted: `16x16`. */
const quoted = ({ mount: { screwCircle } }: FrameRecord): string => {
  const circle = CIRCLES.find((one) => Math.abs(one - screwCircle * 1e3) < NEAR);
  return circle === undefined ? 'own' : `${circle}x${circle}`;
};

export const MOTOR: DerivedFields = {
  'motor.rise': { get: motorRise },
  'motor.centreAbovePlate': { get: ({ motor }) => motor.height / 2 },
  'motor.propellerAbovePlate': {
    get: (record) => record.motor.propellerHeight - seat(record),
    set: (record, value) => withValue(record, 'motor.propellerHeight', value + seat(record)),
  },
  'mount.fillLimit': { get: () => FILL_LIMIT },
  'mount.fibreFraction': { get: () => WRAP_FIBRE },
  'mount.bandSpacing': {
    get: ({ mount }) => mount.plateLength - mount.bandWidth,
    set: (record, value) => withValue(record, 'mount.plateLength', value + record.mount.bandWidth),
  },
  'mount.pattern': { get: quoted },
  'mount.screwCircleAcross': { get: ({ mount }) => mount.screwCircle },
  'mount.screwCount': {
    get: ({ mount }) => String(mount.motorScrews),
    set: (record, value) => withValue(record, 'mount.motorScrews', value),
  },
  'cases.obstacle': always('entered'),
  'cases.drop.lands': always('tips'),
  'cases.drop.sharing': always('four'),
};
