import { OBSTACLES } from '@frameworthy/shared/impact';
import type { QuantityInput } from '~/island/declaration.ts';

interface Stated {
  group: string;
  label: string;
  frameField: string;
}

/** What is hit: a stiffness as entered, or one of the stated ones. */
export const obstacleInputs = ({ group, label, frameField }: Stated) => ({
  obstacle: {
    label,
    choices: {
      entered: 'stiffness as entered',
      concrete: `${OBSTACLES.concrete.name}: 100 N/mm`,
      wood: `${OBSTACLES.wood.name}: 50 N/mm`,
      branch: `${OBSTACLES.branch.name}: 20 N/mm`,
      grass: `${OBSTACLES.grass.name}: 5 N/mm`,
    } as const,
    default: 'entered',
    group,
    frameField: 'cases.obstacle',
    help: 'Common practice, no source: good to a factor of two or three.',
  },
  contactStiffness: {
    label: 'Stiffness of the contact',
    symbol: 'k_c',
    quantity: 'stiffness',
    default: OBSTACLES.concrete.stiffness,
    min: 1e3,
    max: 5e6,
    step: 1e3,
    group,
    frameField,
    shownWhen: (values) => values.obstacle === 'entered',
    help: 'Obstacle and crushed spot in a row. About 100 N/mm on concrete, worked back from drop tests.',
  } satisfies QuantityInput as QuantityInput,
});

type ObstacleValues = Readonly<{ obstacle: 'entered' | keyof typeof OBSTACLES; contactStiffness: number }>;

export const contactOf = ({ obstacle, contactStiffness }: ObstacleValues): number =>
  obstacle === 'entered' ? contactStiffness : OBSTACLES[obstacle].stiffness;
