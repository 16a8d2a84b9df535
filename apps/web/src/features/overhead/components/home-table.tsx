import { decimal } from '@scantling/decimals';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { OverheadRecovery } from '../api/get-overhead-recovery.ts';
import { HOME_WORDS } from './overhead-words.ts';

/** The amount that is worked out from the enquiries, not entered. */
const LOST_ENQUIRIES = 'lost-enquiries';

type Line = OverheadRecovery['proof']['lines'][number];
type Share = 'amount' | 'byMachineRates' | 'byLabourRates' | 'inPool' | 'nowhere';

/** Each yearly amount with its one home, and where it comes back. */
export function HomeTable({ proof, figures }: Pick<OverheadRecovery, 'proof' | 'figures'>) {
  const navigate = useNavigate();
  const columns = useMemo(() => {
    const share = (id: Share, header: string): DataColumn<Line> => ({
      id,
      header,
      isNumeric: true,
      text: (line) => figures[line[id]]?.value ?? '',
      sortBy: (line) => decimal(figures[line[id]]?.value ?? '0'),
      render: (line) => <FigureValue id={line[id]} isUnitHidden places={2} />,
      ...(id === 'amount'
        ? { total: <FigureValue id={proof.total} look="total" isUnitHidden places={2} /> }
        : {}),
    });
    return [
      {
        id: 'name',
        header: 'Yearly amount',
        text: ({ name }) => name,
        render: (line) =>
          line.id === LOST_ENQUIRIES ? (
            <Link to="/enquiries">{line.name}</Link>
          ) : (
            <Link to="/overhead/$amountId" params={{ amountId: line.id }}>
              {line.name}
            </Link>
          ),
        total: 'All amounts',
      },
      { id: 'home', header: 'Its one home', text: ({ home }) => HOME_WORDS[home] },
      share('amount', 'Amount a year'),
      share('byMachineRates', 'By machine-hour rates'),
      share('byLabourRates', 'By labour rates'),
      share('inPool', 'In a pool'),
      share('nowhere', 'Nowhere'),
    ] satisfies DataColumn<Line>[];
  }, [proof, figures]);
  return (
    <DataTable
      label="Yearly amounts and their homes"
      columns={columns}
      rows={proof.lines}
      rowId={({ id }) => id}
      onOpenRow={({ id }) =>
        void navigate(
          id === LOST_ENQUIRIES
            ? { to: '/enquiries' }
            : { to: '/overhead/$amountId', params: { amountId: id } },
        )
      }
    />
  );
}
