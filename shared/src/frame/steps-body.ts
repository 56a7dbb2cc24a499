import { CATALOGUE_LENGTHS } from '../standoff/index.ts';
import type { FrameRecord } from './record.ts';
import { before, MM, mm, next, plus, STANDOFF_SIZES, type Change } from './stock.ts';

export function bodyChanges(record: FrameRecord): Change[] {
  const { body, battery } = record;
  const { standoff } = body;
  const shorter = before(CATALOGUE_LENGTHS, standoff.length);
  const thicker = next(STANDOFF_SIZES, standoff.outerDiameter);
  const plate = (id: string, path: string, thickness: number, words: string): Change => ({
    id,
    path,
    value: plus(thickness, 0.5 * MM),
    says: `${words} ${mm(thickness + 0.5 * MM)}`,
  });
  return [
    ...(shorter
      ? [{ id: 'standoff-length', path: 'body.standoff.length', value: shorter, says: `standoffs of ${mm(shorter)}` }]
      : []),
    ...(thicker
      ? [
          {
            id: 'standoff-diameter',
            path: 'body.standoff.outerDiameter',
            value: thicker,
            says: `standoffs ${mm(thicker)} outside`,
          },
        ]
      : []),
    ...(standoff.material === 'aluminium-7075'
      ? []
      : [
          {
            id: 'standoff-alloy',
            path: 'body.standoff.material',
            value: 'aluminium-7075',
            says: 'standoffs of aluminium 7075-T6',
          },
        ]),
    plate('main-plate', 'body.mainPlate.thickness', body.mainPlate.thickness, 'main plate'),
    plate('cross-plate', 'body.crossPlate.thickness', body.crossPlate.thickness, 'cross plate'),
    plate('top-plate', 'body.topPlate.thickness', body.topPlate.thickness, 'top plate'),
    {
      id: 'tongue',
      path: 'body.tongueWidth',
      value: plus(body.tongueWidth, 2 * MM),
      says: `tongues ${mm(body.tongueWidth + 2 * MM)} wide`,
    },
    {
      id: 'battery-turned',
      path: 'battery.lie',
      value: battery.lie === 'lengthwise' ? 'crosswise' : 'lengthwise',
      says: battery.lie === 'lengthwise' ? 'battery crosswise' : 'battery lengthwise',
    },
  ];
}
