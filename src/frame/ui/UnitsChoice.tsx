import type { UnitChoice } from '@frameworthy/shared/quantity';
import { chooseUnits } from '~/island/unit-choice.ts';

const PRESETS = { metric: 'Metric', inch: 'Inch' } as const;

/** The reader's preset; single units are chosen at any calculator. */
export function UnitsChoice({ units }: { units: UnitChoice }) {
  return (
    <fieldset class="units-choice">
      <legend>Units</legend>
      {Object.entries(PRESETS).map(([system, text]) => (
        <label key={system}>
          <input
            type="radio"
            name="sheet-system"
            checked={units.system === system}
            onChange={() => chooseUnits({ system: system as UnitChoice['system'] })}
          />
          {text}
        </label>
      ))}
    </fieldset>
  );
}
