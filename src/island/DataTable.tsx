import { formatNumber, unitFor, type UnitChoice } from '@frameworthy/shared/quantity';
import { useMemo } from 'preact/hooks';
import type { AnyCalculator, Table, TableColumn } from './declaration.ts';
import type { ValueSet } from './values.ts';

interface Props {
  calculator: AnyCalculator;
  table: Table<ValueSet, unknown>;
  good: { values: ValueSet; result: unknown };
  units: UnitChoice;
}

function written(cell: number | string, { quantity = 'ratio', digits }: TableColumn, units: UnitChoice): string {
  if (typeof cell === 'string') return cell;
  const shown = cell / unitFor(quantity, units).factor;
  return quantity === 'count' && Number.isInteger(shown) ? formatNumber(shown, 15) : formatNumber(shown, digits, true);
}

function titled({ label, quantity }: TableColumn, units: UnitChoice): string {
  const unit = quantity ? unitFor(quantity, units).symbol : '';
  return unit ? `${label}, ${unit}` : label;
}

/** Rows of numbers in the reader's units; the unit stands at the head of its column. */
export function DataTable({ calculator, table, good, units }: Props) {
  const rows = useMemo(() => table.rows(good.values, good.result, calculator.compute), [table, good]);
  const heading = `${calculator.id}-${table.id}`;
  const look = ({ quantity }: TableColumn) => (quantity ? undefined : 'words');
  return (
    <figure>
      <h3 id={heading}>{table.title}</h3>
      <div class="table-scroll" tabIndex={0} role="region" aria-labelledby={heading}>
        <table>
          <thead>
            <tr>
              {table.columns.map((column) => (
                <th key={column.label} scope="col" class={look(column)}>
                  {titled(column, units)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ cells, own }, index) => (
              <tr key={index} class={own ? 'own' : undefined}>
                {cells.map((cell, i) => {
                  const column = table.columns[i] as TableColumn;
                  const text = written(cell, column, units);
                  return i === 0 ? (
                    <th key={column.label} scope="row">
                      {own ? `${text}, yours` : text}
                    </th>
                  ) : (
                    <td key={column.label} class={look(column)}>
                      {text}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <figcaption id={`${heading}-caption`}>{table.caption}</figcaption>
    </figure>
  );
}
