import { sweep, type Plot, type Table } from '~/island/declaration.ts';
import { PLACE_WORDS, solve, type TongueAnswer } from './compute.ts';
import type { TongueValues } from './inputs.ts';

const LINKS = ['none', 'sliding', 'tied', 'bonded'] as const;
const NAMES = {
  none: 'one plate',
  sliding: 'two that slide',
  tied: 'tied at the screw',
  bonded: 'joined all along',
} as const;

export const tables: readonly Table<TongueValues, TongueAnswer>[] = [
  {
    id: 'second-plate',
    title: 'What the second plate adds',
    caption:
      'The last row is a limit: what joins the plates would have to be stiff in shear itself. Sideways both lie side by side, and the way they are joined does not matter.',
    columns: [
      { label: 'Plates' },
      { label: 'Movement at the outer screw', quantity: 'length', digits: 2 },
      { label: 'Movement at the motor', quantity: 'length', digits: 2 },
      { label: 'Stress in the main plate', quantity: 'stress' },
      { label: 'Pull and push', quantity: 'force' },
      { label: 'Strength used', quantity: 'percent', digits: 2 },
      { label: 'Weakest place' },
    ],
    rows: (values) =>
      LINKS.map((link) => {
        const r = solve(values, link);
        return {
          own: link === values.link,
          cells: [
            NAMES[link],
            r.deflection,
            r.motorMovement,
            r.bottom.rootStress,
            Math.abs(r.bottom.axial),
            r.use,
            PLACE_WORDS[r.weakest],
          ],
        };
      }),
  },
];

const LENGTHS = Array.from({ length: 19 }, (_, i) => 0.005 + i * 0.0025);

export const plots: readonly Plot<TongueValues, TongueAnswer>[] = [
  {
    id: 'length',
    title: 'Movement at the motor against length of the tongue, motor in its place',
    caption:
      'A longer tongue shortens the arm’s lever but bends with the third power of its length. The hole keeps its place.',
    x: { label: 'Body to the outer screw', quantity: 'length' },
    y: { label: 'Movement', quantity: 'length' },
    data: (values) => {
      const reach = values.armLength + values.tongueLength;
      // A hole needs its place on the tongue, and the arm some of its length.
      const x = [...new Set([...LENGTHS, values.tongueLength])].sort((a, b) => a - b);
      const of = (link: TongueValues['link']) =>
        x.map((tongueLength) => {
          if (tongueLength > reach - 0.01 || (values.holeDiameter > 0 && values.holeAt > tongueLength))
            return Number.NaN;
          return solve({ ...values, tongueLength, armLength: reach - tongueLength }, link).motorMovement;
        });
      return {
        x,
        series: [
          { label: 'one plate', role: 'comparison', y: of('none') },
          { label: 'two that slide', role: 'main', y: of('sliding') },
          { label: 'tied', role: 'second', y: of('tied') },
        ],
        marker: values.tongueLength,
      };
    },
  },
  {
    id: 'thickness',
    title: 'Strength used against thickness of the main plate',
    caption: 'Up and down it falls with the square of the thickness, sideways only in step with it.',
    x: { label: 'Main plate', quantity: 'length' },
    y: { label: 'Strength used', quantity: 'percent' },
    data: (values, _, compute) =>
      sweep(values, compute, { input: 'bottomPlate', from: 0.0015, to: 0.006, count: 21 }, [
        { label: 'weakest place', of: (r) => r.use },
        { label: 'edge of the body', of: (r) => r.useOf('root'), role: 'second' },
        { label: 'strength', of: () => 1, role: 'limit' },
      ]),
  },
  {
    id: 'web',
    title: 'Stress in the worse web against width of the cutout',
    caption: 'The last millimetres of a cutout save the least mass and cost the most strength.',
    x: { label: 'Width of the cutout', quantity: 'length' },
    y: { label: 'Stress', quantity: 'stress' },
    data: (given, _, compute) => {
      // Without a cutout its offset means nothing: the sweep then widens one in the middle.
      const values = given.cutoutWidth > 0 ? given : { ...given, cutoutOffset: 0 };
      return sweep(values, compute, { input: 'cutoutWidth', from: 0.001, to: 0.85 * values.plateWidth, count: 21 }, [
        { label: 'worse web', of: (r) => r.web.stress },
        { label: 'strength', of: (r) => r.strength, role: 'limit' },
      ]);
    },
  },
];
