import type { AnyCalculator, Output, Show } from './declaration.ts';
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
}

interface RowProps extends Omit<Props, 'calculator'> {
  output: Output<ValueSet, unknown>;
}

function Row({ output, values, result, showPadded }: RowProps) {
  const verdict = output.verdict?.(result, values);
  return (
    <div class={output.headline ? 'result headline' : 'result'}>
      <dt>
        {output.label}
        {output.symbol && <MathSymbol tex={output.symbol} />}
      </dt>
      <dd class="amount">{showPadded(output.value(result, values), output.quantity, output.digits)}</dd>
      {verdict && (
        <dd class="judged">
          <Verdict {...verdict} />
        </dd>
      )}
      <dd class="meaning">{output.meaning}</dd>
    </div>
  );
}

/** The answer in a sentence, the figure, the numbers with what they mean, and reasons to doubt them. */
export function Results({ calculator, ...rest }: Props) {
  const { values, result, show } = rest;
  const outputs = calculator.outputs as readonly Output<ValueSet, unknown>[];
  const headlines = outputs.filter((output) => output.headline);
  const others = outputs.filter((output) => !output.headline);
  const groups = [...new Set(others.map((output) => output.group))];
  const warnings = calculator.warnings?.(result, values) ?? [];
  return (
    <div class="results">
      <p class="says">{calculator.says(result, values, show)}</p>
      <figure class="figure">
        <calculator.Figure values={values} result={result} show={show} />
        <figcaption>{calculator.figureCaption}</figcaption>
      </figure>
      {warnings.map(({ code, message }) => (
        <p class="warning" key={code}>
          <strong>Note</strong> {message}
        </p>
      ))}
      <dl>
        {headlines.map((output) => (
          <Row key={output.key} output={output} {...rest} />
        ))}
      </dl>
      {groups.map((group) => (
        <section key={group ?? ''}>
          {group && <h3>{group}</h3>}
          <dl>
            {others
              .filter((output) => output.group === group)
              .map((output) => (
                <Row key={output.key} output={output} {...rest} />
              ))}
          </dl>
        </section>
      ))}
      <p class="estimate-note">Estimates for comparing designs.</p>
    </div>
  );
}
