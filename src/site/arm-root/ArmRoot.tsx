import { twoScrewRoot } from '@frameworthy/shared/joint';
import { formatQuantity } from '@frameworthy/shared/quantity';
import { useState } from 'preact/hooks';
import { ArmRootDrawing } from './ArmRootDrawing.tsx';
import { ARM, PULL, SPACING } from './values.ts';

interface SliderProps {
  label: string;
  value: number;
  range: { min: number; max: number; step: number };
  text: string;
  onChange: (value: number) => void;
}

function Slider({ label, value, range, text, onChange }: SliderProps) {
  return (
    <label class="pull-slider">
      <span>
        {label} <b>{text}</b>
      </span>
      <input
        type="range"
        {...range}
        value={value}
        aria-valuetext={text}
        onInput={(event) => onChange(Number(event.currentTarget.value))}
      />
    </label>
  );
}

/** The live figure of the home page: pull the tip of an arm sideways and read what the two root screws carry. */
export default function ArmRoot() {
  const [pull, setPull] = useState<number>(PULL.start);
  const [spacing, setSpacing] = useState<number>(SPACING.start);
  const { inner, outer } = twoScrewRoot({ tipForce: Math.abs(pull), armLength: ARM.length, screwSpacing: spacing });
  const force = (value: number) => formatQuantity(value, 'force', { digits: 2 });
  return (
    <figure class="pull">
      <ArmRootDrawing pull={pull} spacing={spacing} inner={inner} outer={outer} onPull={setPull} />
      <div class="pull-controls">
        <Slider label="Pull at the motor" value={pull} range={PULL} text={force(Math.abs(pull))} onChange={setPull} />
        <Slider
          label="Screw spacing"
          value={spacing}
          range={SPACING}
          text={formatQuantity(spacing, 'length', { digits: 2 })}
          onChange={setSpacing}
        />
      </div>
      <figcaption aria-live="polite">
        The outer hole presses on the tube with <strong>{force(outer)}</strong>, the inner one with{' '}
        <strong>{force(inner)}</strong>. Move the screws apart and both fall, at almost no mass. An estimate; statics
        only.
      </figcaption>
    </figure>
  );
}
