import { CATALOGUE_LENGTHS } from '../standoff/index.ts';
import type { FrameRecord } from './record.ts';
import { before, gradeChange, grower, mm, next, STANDOFF_SIZES, UNKNOWN, type Change } from './stock.ts';

export function bodyChanges(record: FrameRecord): Change[] {
  const { standoff } = record.body;
  const grow = grower(record);
  const post = (key: string, value: unknown, says: string): Change[] =>
    value ? [{ path: `body.standoff.${key}`, value, says: `standoffs ${says}`, unpriced: true }] : [];
  const shorter = before(CATALOGUE_LENGTHS, standoff.length);
  const thicker = next(STANDOFF_SIZES, standoff.outerDiameter);
  const lie = record.battery.lie === 'lengthwise' ? 'crosswise' : 'lengthwise';
  return [
    ...post('length', shorter, `of ${mm(shorter ?? 0)}`),
    ...post('outerDiameter', thicker, `${mm(thicker ?? 0)} outside`),
    ...(standoff.material === 'aluminium-7075' ? [] : post('material', 'aluminium-7075', 'of aluminium 7075-T6')),
    ...gradeChange('body.standoff.screwClass', standoff.screwClass, 'standoff screws'),
    grow('body.mainPlate.thickness', 0.5, 'main plate'),
    grow('body.crossPlate.thickness', 0.5, 'cross plate'),
    grow('body.topPlate.thickness', 0.5, 'top plate'),
    grow('body.tongueWidth', 2, 'tongues wide'),
    { ...grow('body.tongueLength', -2, 'tongues free over'), ...UNKNOWN },
    { path: 'battery.lie', value: lie, says: `battery ${lie}` },
  ];
}
