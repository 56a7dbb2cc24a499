import { nutAcrossCorners, USUAL_BOARD_HOLES, type Arrangement, type FitItem } from '@frameworthy/shared/fit';
import type { ArrangementValues, FitValues } from './inputs.ts';

const MM = 1e-3;
/** Usual sizes that play a small part: receiver, and the tube or print that leads the antenna out at the tail. */
const RECEIVER = { length: 14 * MM, width: 11 * MM, height: 5 * MM };
const EXIT = { length: 10 * MM, width: 8 * MM, height: 6 * MM };
/** Plugs stand in the middle of a side [m]. */
const PLUGS = 20 * MM;
/** Barrel of a camera over its body. */
export const LENS_SHARE = 0.65;

/** The transmitter, where there is one; on the stack it stands over nuts and screw ends. */
function transmitter(own: ArrangementValues, shared: FitValues): FitItem[] {
  if (own.transmitter === 'none') return [];
  const { analogueSide: side, analogueHeight } = shared;
  const size =
    own.transmitter === 'digital'
      ? { length: shared.digitalLength, width: shared.digitalWidth, height: shared.digitalHeight }
      : { length: side, width: side, height: analogueHeight };
  const at =
    own.place === 'on'
      ? { x: own.stackAt, z: shared.mounts + own.boards + shared.nuts }
      : { x: own.transmitterAt, z: shared.mounts };
  return [{ name: 'transmitter', kind: 'transmitter', ...size, ...at, y: 0, mass: 0 }];
}

/** The arrangement as the package wants it. */
export function arrange(name: string, own: ArrangementValues, shared: FitValues): Arrangement {
  const { cameraSide, lensReach, capacitorDiameter, plugs, sides } = shared;
  const wires = [
    { side: 'front', reach: plugs, width: PLUGS },
    { side: 'rear', reach: plugs, width: PLUGS },
    { side: 'left', reach: sides },
    { side: 'right', reach: sides },
  ] as const;
  const stations = own.count === 'six' ? [own.front, own.middle, own.rear] : [own.front, own.rear];
  return {
    name,
    standoffs: stations.flatMap((x) => [1, -1].map((side) => ({ x, y: (side * shared.across) / 2 }))),
    items: [
      {
        name: 'board stack',
        kind: 'board',
        length: own.boardSide,
        width: own.boardSide,
        height: own.boards,
        x: own.stackAt,
        y: 0,
        z: shared.mounts,
        pattern: own.pattern,
        screw: {
          thread: own.screw,
          hole: Math.max(...USUAL_BOARD_HOLES[own.pattern]),
          across: nutAcrossCorners(own.screw),
          height: shared.nuts,
        },
        wires,
        mass: 0,
      },
      {
        name: 'camera',
        kind: 'camera',
        length: shared.cameraLength,
        width: cameraSide,
        height: cameraSide,
        x: own.cameraAt,
        y: 0,
        z: 0,
        tilt: own.tilt,
        lens: { reach: lensReach, diameter: LENS_SHARE * cameraSide },
        openAbove: shared.cameraCover === 'open',
        mass: 0,
      },
      ...transmitter(own, shared),
      {
        name: 'capacitor',
        kind: 'capacitor',
        length: capacitorDiameter,
        width: shared.capacitorLength,
        height: capacitorDiameter,
        x: own.capacitorAt,
        y: 0,
        z: 0,
        mass: 0,
      },
      { name: 'receiver', kind: 'receiver', ...RECEIVER, x: own.receiverAt, y: 0, z: 0, mass: 0 },
      // Flush with the tail, where it leads the antenna out.
      {
        name: 'antenna exit',
        kind: 'antenna',
        ...EXIT,
        x: (EXIT.length - shared.bodyLength) / 2,
        y: 0,
        z: 0,
        overhang: MM / 2,
        mass: 0,
      },
    ],
  };
}
