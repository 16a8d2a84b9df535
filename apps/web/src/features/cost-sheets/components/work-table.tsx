import type { WorkedCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';

type Line = WorkedCostSheet['columns'][number]['work'][number];

interface WorkTableProps {
  readonly worked: WorkedCostSheet;
  readonly work: readonly Line[];
}

const TIMES = ['hours', 'machineHours', 'elapsed'];

/** Each step of work with its three times, its labour and its machine. */
export function WorkTable({ worked, work }: WorkTableProps) {
  const columns = useMemo(() => {
    const amountOf = (id: string | null): string => (id === null ? '' : (worked.figures[id]?.value ?? ''));
    const figure = (
      id: 'hours' | 'machineHours' | 'elapsed' | 'labour' | 'machineCost',
      header: string,
    ): DataColumn<Line> => ({
      id,
      header,
      isNumeric: true,
      text: (line) => amountOf(line[id]),
      sortBy: (line) => (amountOf(line[id]) === '' ? null : decimal(amountOf(line[id]))),
      render: (line) => {
        const shown = line[id];
        return shown === null ? null : (
          <FigureValue id={shown} {...(TIMES.includes(id) ? { places: 2 } : {})} />
        );
      },
    });
    return [
      { id: 'name', header: 'Step', text: (line) => line.name },
      figure('hours', 'Labour time'),
      figure('machineHours', 'Machine time'),
      figure('elapsed', 'Elapsed, glue and drying'),
      figure('labour', 'Labour'),
      { id: 'grade', header: 'Labour grade', text: (line) => line.grade },
      { id: 'machine', header: 'Machine', text: (line) => line.machine ?? '' },
      figure('machineCost', 'Machine cost'),
    ] satisfies DataColumn<Line>[];
  }, [worked]);
  return (
    <DataTable
      label="Work"
      columns={columns}
      rows={work}
      rowId={(line) => line.id}
      empty="The bill of materials of this design has no operations yet."
    />
  );
}
