import type { AnyCalculator, Output, Show } from './declaration.ts';
import { SaveDrawing } from './SaveDrawing.tsx';
import { MathSymbol } from './symbol.tsx';
import { Verdict } from './Verdict.tsx';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  values: ValueSet;
  result: unknown;
  show: Show;
  /** The same, with zeros kept at the end. */
  showPadded: Show;
  /** The whole calculation as plain text. */
  text: () => string;
}

interface RowProps extends Omit<Props, 'calculator' | 'text'> {
  id: string;
  output: Output<ValueSet, unknown>;
}

function Row({ id, output, values, result, showPadded }: RowProps) {
  const impossible = output.impossible?.(result, values);
  const verdict =
    impossible === undefined ? output.verdict?.(result, values) : ({ level: 'bad', text: impossible } as const);
  return (
    <div class={output.headline ? 'result headline' : 'result'}>
      <dt>
        {output.label}
        {output.symbol && <MathSymbol tex={output.symbol} />}
      </dt>
      <dd class="amount">
        {impossible === undefined ? showPadded(output.value(result, values), output.quantity, output.digits) : 'none'}
      </dd>
      {verdict && (
        <dd class="judged">
          <Verdict {...verdict} />
        </dd>
      )}
      <dd class="meaning" id={id}>
        {output.meaning}
      </dd>
    </div>
  );
}

/** The answer in a sentence, the figure, the numbers with what they mean, and reasons to doubt them. */
export function Results({ calculator, text, ...rest }: Props) {
  const { values, result, show } = rest;
  const outputs = calculator.outputs as readonly Output<ValueSet, unknown>[];
  const headlines = outputs.filter((output) => output.headline);
  const others = outputs.filter((output) => !output.headline);
  const groups = [...new Set(others.map((output) => output.group))];
  const warnings = calculator.warnings?.(result, values, show) ?? [];
  const row = (output: Output<ValueSet, unknown>) => (
    <Row key={output.key} id={`${calculator.id}-${output.key}-meaning`} output={output} {...rest} />
  );
  const draw = () => <calculator.Figure values={values} result={result} show={show} />;
  return (
    <div class="results">
      <p class="says">{calculator.says(result, values, show)}</p>
      <figure class="figure">
        {draw()}
        <figcaption id={`${calculator.id}-figure-caption`}>{calculator.figureCaption}</figcaption>
        <SaveDrawing title={calculator.title} name={calculator.id} text={text} draw={draw} />
      </figure>
      {warnings.map(({ code, message }) => (
        <p class="warning" key={code}>
          <strong>Note</strong> {message}
        </p>
      ))}
      <dl>{headlines.map(row)}</dl>
      {groups.map((group) => (
        <section key={group ?? ''}>
          {group && <h3>{group}</h3>}
          <dl>{others.filter((output) => output.group === group).map(row)}</dl>
        </section>
      ))}
      <p class="estimate-note">Estimates for comparing designs.</p>
    </div>
  );
}
