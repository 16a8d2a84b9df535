import type { WorkedCostSheet } from '@scantling/contracts';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';

type Part = WorkedCostSheet['parts'][number];

/** Rough sizes: what has to be cut out of the stock for each part. */
export function PartTable({
  worked,
  isInInches,
}: {
  readonly worked: WorkedCostSheet;
  readonly isInInches: boolean;
}) {
  const columns = useMemo(() => {
    const figure = (id: 'roughLength' | 'roughWidth' | 'roughFace', header: string): DataColumn<Part> => ({
      id,
      header,
      isNumeric: true,
      sortBy: false,
      text: (part) => worked.figures[part[id]]?.value ?? '',
      render: (part) => <FigureValue id={part[id]} isInInches={isInInches} />,
    });
    return [
      { id: 'name', header: 'Part', text: (part) => part.name },
      { id: 'stock', header: 'Stock', text: (part) => part.stock },
      figure('roughLength', 'Rough length'),
      figure('roughWidth', 'Rough width'),
      figure('roughFace', 'Rough face'),
    ] satisfies DataColumn<Part>[];
  }, [worked, isInInches]);
  return (
    <DataTable
      label="Parts"
      columns={columns}
      rows={worked.parts}
      rowId={(part) => part.id}
      empty="The bill of materials of this design has no parts yet."
    />
  );
}
