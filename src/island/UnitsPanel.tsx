import { KIND_NAMES, unitFor, unitsOf, type QuantityKind, type UnitChoice } from '@frameworthy/shared/quantity';
import type { AnyCalculator } from './declaration.ts';
import { chooseUnits } from './unit-choice.ts';
import { inputsOf, isQuantity } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  units: UnitChoice;
  refused: boolean;
}

const PRESETS = { metric: 'Metric', inch: 'Inch' } as const;

/** The kinds of quantity that appear in this calculator and can be shown in more than one unit. */
function kindsOf(calculator: AnyCalculator): QuantityKind[] {
  const inputs = inputsOf(calculator).flatMap(([, input]) => (isQuantity(input) ? [input.quantity] : []));
  const outputs = calculator.outputs.map((output) => output.quantity);
  const plots = calculator.plots.flatMap((plot) => [plot.x.quantity, plot.y.quantity]);
  return [...new Set([...inputs, ...outputs, ...plots])].filter((kind) => unitsOf(kind).length > 1);
}

function title(kind: QuantityKind): string {
  const name = KIND_NAMES[kind].replace(/^an? /, '');
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** The reader's units: a preset, and single kinds that differ from it. */
export function UnitsPanel({ calculator, units, refused }: Props) {
  return (
    <details class="units">
      <summary>{`Units: ${PRESETS[units.system].toLowerCase()}`}</summary>
      <fieldset>
        <legend>Preset, for all calculators</legend>
        {Object.entries(PRESETS).map(([system, text]) => (
          <label key={system}>
            <input
              type="radio"
              name={`${calculator.id}-system`}
              checked={units.system === system}
              onChange={() => chooseUnits({ system: system as UnitChoice['system'] })}
            />
            {text}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>Single quantities</legend>
        {kindsOf(calculator).map((kind) => {
          const current = unitFor(kind, units).symbol;
          return (
            <label key={kind}>
              {title(kind)}
              <select
                onChange={(event) =>
                  chooseUnits({ ...units, units: { ...units.units, [kind]: event.currentTarget.value } })
                }
              >
                {unitsOf(kind).map(({ symbol }) => (
                  <option key={symbol} value={symbol} selected={symbol === current}>
                    {symbol}
                  </option>
                ))}
              </select>
            </label>
          );
        })}
      </fieldset>
      {refused && <p>This browser does not let the page remember the choice. It holds until the page is closed.</p>}
    </details>
  );
}
