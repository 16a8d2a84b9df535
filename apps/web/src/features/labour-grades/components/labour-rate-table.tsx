import { decimal } from '@scantling/decimals';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { LabourRates } from '../api/get-labour-rates.ts';

type Rate = LabourRates['rates'][number];

/** What an hour of each grade costs, from pay to what a job is charged. */
export function LabourRateTable({ rates, figures }: LabourRates) {
  const navigate = useNavigate();
  const columns = useMemo(() => {
    const figure = (id: 'pay' | 'paidHour' | 'perHour', header: string): DataColumn<Rate> => ({
      id,
      header,
      isNumeric: true,
      text: (rate) => figures[rate[id]]?.value ?? '',
      sortBy: (rate) => decimal(figures[rate[id]]?.value ?? '0'),
      render: (rate) => <FigureValue id={rate[id]} look={id === 'perHour' ? 'total' : 'plain'} places={2} />,
    });
    return [
      {
        id: 'name',
        header: 'Labour grade',
        text: ({ name }) => name,
        render: (rate) => (
          <Link to="/labour-grades/$gradeId" params={{ gradeId: rate.gradeId }}>
            {rate.name}
          </Link>
        ),
      },
      { id: 'code', header: 'Code', text: ({ code }) => code },
      { id: 'isOwner', header: 'Whose', text: ({ isOwner }) => (isOwner ? 'owner' : 'employed') },
      figure('pay', 'Pay'),
      figure('paidHour', 'Paid hour with burden'),
      figure('perHour', 'Productive hour'),
    ] satisfies DataColumn<Rate>[];
  }, [figures]);
  return (
    <DataTable
      label="Labour rates"
      columns={columns}
      rows={rates}
      rowId={({ gradeId }) => gradeId}
      onOpenRow={({ gradeId }) => void navigate({ to: '/labour-grades/$gradeId', params: { gradeId } })}
    />
  );
}
