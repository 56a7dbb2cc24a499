import { nutAcrossCorners, USUAL_BOARD_HOLES, type Arrangement, type FitItem } from '@frameworthy/shared/fit';
import type { ArrangementValues, FitValues } from './inputs.ts';

const MM = 1e-3;
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
      : { x: own.transmitterAt, z: own.transmitterAbove };
  return [{ name: 'transmitter', kind: 'transmitter', ...size, ...at, y: 0, mass: 0 }];
}

/** Capacitor, receiver and the exit of the antenna: those that are there, wherever they lie. */
function smallParts(own: ArrangementValues, shared: FitValues): FitItem[] {
  const lying = (
    kind: 'capacitor' | 'receiver',
    size: { longer: number; other: number; height: number },
  ): FitItem | false => {
    const lies = own[`${kind}Lies`];
    if (lies === 'none') return false;
    const [length, width] = lies === 'along' ? [size.longer, size.other] : [size.other, size.longer];
    const at = { x: own[`${kind}At`], y: own[`${kind}Aside`], z: own[`${kind}Above`] };
    return { name: kind, kind, length, width, height: size.height, ...at, mass: 0 };
  };
  const { capacitorDiameter, capacitorLength, receiverLength, receiverWidth, receiverHeight } = shared;
  const exit = { length: shared.exitLength, width: shared.exitWidth, height: shared.exitHeight };
  const parts: (FitItem | false)[] = [
    lying('capacitor', { longer: capacitorLength, other: capacitorDiameter, height: capacitorDiameter }),
    lying('receiver', { longer: receiverLength, other: receiverWidth, height: receiverHeight }),
    own.exit !== 'none' && {
      name: 'antenna exit',
      kind: 'antenna',
      ...exit,
      ...(own.exit === 'tail'
        ? { x: (exit.length - shared.bodyLength) / 2, y: 0, overhang: MM / 2 }
        : { x: own.exitAt, y: own.exitAside }),
      z: own.exitAbove,
      mass: 0,
    },
  ];
  return parts.filter((part) => part !== false);
}

/** The arrangement as the package wants it. */
export function arrange(name: string, own: ArrangementValues, shared: FitValues): Arrangement {
  const { cameraSide, lensReach, plugs, sides } = shared;
  const wires = [
    { side: 'front', reach: plugs, width: PLUGS },
    { side: 'rear', reach: plugs, width: PLUGS },
    { side: 'left', reach: sides },
    { side: 'right', reach: sides },
  ] as const;
  const stations = [
    { x: own.front, across: own.frontAcross },
    ...(own.count === 'six' ? [{ x: own.middle, across: own.middleAcross }] : []),
    { x: own.rear, across: own.rearAcross },
  ];
  return {
    name,
    standoffs: stations.flatMap(({ x, across }) => [1, -1].map((side) => ({ x, y: (side * across) / 2 }))),
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
        z: shared.cameraAbove,
        tilt: own.tilt,
        lens: { reach: lensReach, diameter: LENS_SHARE * cameraSide },
        openAbove: shared.cameraCover === 'open',
        mass: 0,
      },
      ...transmitter(own, shared),
      ...smallParts(own, shared),
    ],
  };
}
