import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { ToolSchedule } from '../api/get-tool-schedule.ts';
import './tools.css';

type Year = ToolSchedule['schedule']['years'][number];

/** What the books hold the tool for at the start and the end of each year. */
export function ScheduleTable({ schedule, figures }: ToolSchedule) {
  const columns = useMemo(() => {
    const figure = (id: 'opening' | 'expense' | 'closing', header: string): DataColumn<Year> => ({
      id,
      header,
      isNumeric: true,
      sortBy: false,
      text: (year) => figures[year[id]]?.value ?? '',
      render: (year) => <FigureValue id={year[id]} isUnitHidden />,
      ...(id === 'expense' ? { total: <FigureValue id={schedule.total} look="total" /> } : {}),
    });
    return [
      { id: 'year', header: 'Year', text: ({ year }) => String(year), total: 'All years' },
      figure('opening', 'At its start'),
      figure('expense', 'Written off'),
      figure('closing', 'At its end'),
    ] satisfies DataColumn<Year>[];
  }, [schedule, figures]);
  const { disposal } = schedule;
  return (
    <>
      {schedule.caution !== null && <p className="register-note">{schedule.caution}</p>}
      <DataTable
        label="Yearly schedule"
        columns={columns}
        rows={schedule.years}
        rowId={({ year }) => String(year)}
      />
      {disposal !== null && (
        <p>
          Went in {disposal.year} at a book value of <FigureValue id={disposal.bookValue} />, fetched{' '}
          <FigureValue id={disposal.proceeds} />: a gain of <FigureValue id={disposal.gain} />.
        </p>
      )}
    </>
  );
}
