import { useState } from 'preact/hooks';
import type { Input } from '~/island/declaration.ts';
import { isFrames, type FrameLineProps } from '~/island/FrameLine.tsx';
import { isQuantity } from '~/island/values.ts';
import type { FrameAccess } from '../attend.ts';

type FilledProps = FrameLineProps & { frame: FrameAccess };

/** What is wrong with the frame in the address, and what the reader's frame does here. */
export function Filled(props: FilledProps) {
  const { title, problems } = props.view;
  return (
    <>
      {problems.length > 0 && (
        <p class="stale-note" role="alert">
          {problems.join(' ')}
        </p>
      )}
      {title !== undefined && <Fills {...props} title={title} />}
    </>
  );
}

/** Which fields the reader's frame fills, where they differ from it, and the way back into it. */
function Fills({ frame, calculator, view, title, state, show }: FilledProps & { title: string }) {
  const [said, setSaid] = useState<readonly string[]>([]);
  /** The stamp of the frames after the write from here. */
  const [written, setWritten] = useState<unknown>();
  const inputs = calculator.inputs as Record<string, Input>;
  const keys = Object.keys(view.values);
  const differ = keys.filter((key) => !isFrames(state.values[key], view.values[key]));
  const changes = differ.filter((key) => frame.writable(inputs[key]!.frameField!));
  const text = (key: string, value: number | string) => {
    const input = inputs[key]!;
    return isQuantity(input) ? show(value as number, input.quantity, 4) : (input.choices[value as string] ?? '');
  };
  // Hidden fields wait for the other kind of arm; those that are seen are this page's own.
  const strangers = Object.values(inputs).filter(
    ({ frameField, shownWhen }) =>
      frameField !== undefined && (shownWhen?.(state.values) ?? true) && frame.ofOtherArm(frameField) !== undefined,
  );
  const [stranger] = strangers;
  const tubes = stranger && frame.ofOtherArm(stranger.frameField!) === 'tube';
  const write = () => {
    const problems = frame.write(changes.map((key) => [inputs[key]!.frameField!, state.values[key]!] as const));
    setWritten(problems.length === 0 ? frame.stamp() : undefined);
    setSaid(problems.length === 0 ? [`Written to ${title}.`] : ['Not written, the frame is as it was.', ...problems]);
  };
  return (
    <>
      <p>
        {`${title} fills ${keys.length - differ.length} of ${Object.keys(inputs).length} fields, marked “frame”. `}
        <a href="../frame.html">Frame sheet</a>
      </p>
      {stranger && (
        <p>
          {`${title} has ${tubes ? 'plate arms' : 'tubes for arms'}. ${strangers.length} fields here are of ${tubes ? 'tubes' : 'plate arms'} and keep this page’s own values: ${strangers.map(({ label }) => label).join(', ')}.`}
        </p>
      )}
      {differ.length > 0 && (
        <>
          <p>
            {`Here it is otherwise: ${differ
              .map(
                (key) =>
                  `${inputs[key]!.label} ${text(key, state.values[key]!)} (frame: ${text(key, view.values[key]!)})`,
              )
              .join('; ')}.`}
          </p>
          <p class="buttons">
            <button type="button" onClick={() => state.setAll(view.values)}>{`Take ${title}’s values`}</button>
            {changes.length > 0 && (
              <button type="button" onClick={write}>
                {`Write ${changes.length === 1 ? inputs[changes[0]!]!.label : `${changes.length} values`} to ${title}`}
              </button>
            )}
          </p>
        </>
      )}
      {view.outside.length > 0 && <p>{`Outside what this calculator takes: ${view.outside.join(', ')}.`}</p>}
      <div role="status">
        {said.map((words) => (
          <p key={words}>{words}</p>
        ))}
        {written !== undefined && written === frame.stamp() && (
          <button
            type="button"
            onClick={() => {
              frame.undo();
              setWritten(undefined);
              setSaid(['The frame is as it was before.']);
            }}
          >
            Undo in the frame
          </button>
        )}
      </div>
    </>
  );
}
