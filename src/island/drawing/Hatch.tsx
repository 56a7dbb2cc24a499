import { Outline, type Shape } from './Outline.tsx';

/** Thin lines at 45°, as for a cut through a part. */
export function HatchPattern({ id }: { id: string }) {
  return (
    <defs>
      <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V6" class="thin" />
      </pattern>
    </defs>
  );
}

/** A cut through a part: hatched, with a thick edge. */
export function Hatch(shape: Shape) {
  return <Outline {...shape} fill="hatch" />;
}
