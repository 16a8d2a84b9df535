import { downloadToolRates, type ToolRecord } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { addressOf } from '../../../lib/api-client.ts';
import { formatAmount, formatMoney, formatNumber } from '../../../lib/format.ts';
import { useCurrency } from '../../../lib/use-session.ts';
import { toolHoursQuery } from '../api/list-tool-rates.ts';
import { toolCalls } from '../api/tool-calls.ts';
import { ACQUISITION_WORDS } from '../components/tool-words.ts';

/** All machines and hand tools. */
export function ToolsScreen() {
  const navigate = useNavigate();
  const currency = useCurrency();
  const hours = useQuery(toolHoursQuery);
  const columns = useMemo(() => {
    const money = (id: 'bookCost' | 'replacementCost', header: string): DataColumn<ToolRecord> => ({
      id,
      header,
      isNumeric: true,
      text: (tool) => tool[id],
      sortBy: (tool) => decimal(tool[id]),
      render: (tool) => (currency === '' ? tool[id] : formatMoney(tool[id], currency)),
    });
    return [
      {
        id: 'name',
        header: 'Tool',
        text: ({ name }) => name,
        render: (tool) => (
          <Link to="/tools/$toolId" params={{ toolId: tool.id }}>
            {tool.name}
          </Link>
        ),
      },
      { id: 'code', header: 'Code', text: ({ code }) => code },
      { id: 'acquisition', header: 'Came', text: ({ acquisition }) => ACQUISITION_WORDS[acquisition] },
      { id: 'acquiredOn', header: 'On', text: ({ acquiredOn }) => acquiredOn },
      money('bookCost', 'Paid'),
      money('replacementCost', 'Replacement cost'),
      {
        id: 'hoursPerYear',
        header: 'Hours a year',
        isNumeric: true,
        text: ({ hoursPerYear }) => hoursPerYear,
        sortBy: ({ hoursPerYear }) => decimal(hoursPerYear),
        render: ({ hoursPerYear }) => `${formatNumber(hoursPerYear, 1)} h`,
      },
      {
        id: 'rate',
        header: 'An hour of it',
        isNumeric: true,
        text: ({ id }) => hours.data?.get(id)?.value ?? '',
        sortBy: ({ id }) => decimal(hours.data?.get(id)?.value ?? '0'),
        render: ({ id }) => {
          const node = hours.data?.get(id);
          if (node === undefined) return hours.isError ? 'cannot be worked out' : '...';
          const { number, text } = formatAmount(node, { places: 2 });
          return (
            <Link
              to="/tools/$toolId"
              params={{ toolId: id }}
              search={{ figure: 'replacement/per-hour' }}
              aria-label={`${node.label}: ${text}, working`}
            >
              {number}
            </Link>
          );
        },
      },
      { id: 'soldOn', header: 'Gone', text: ({ soldOn }) => soldOn ?? '' },
      { id: 'demo', header: 'Demo', text: ({ isDemo }) => (isDemo ? 'invented' : '') },
    ] satisfies DataColumn<ToolRecord>[];
  }, [currency, hours.data, hours.isError]);
  return (
    <Sheet>
      <SheetHeader
        title="Tools"
        path={<Link to="/tools/register">Register for the accountant</Link>}
        facts={[{ label: 'Currency', value: currency }]}
        actions={
          <a className="button button-plain" href={addressOf(downloadToolRates, { query: {} })} download>
            Hour rates (XLSX)
          </a>
        }
      />
      <RecordList
        calls={toolCalls}
        label="Tools"
        columns={columns}
        newLink={<Link to="/tools/new">Enter a tool</Link>}
        emptyTitle="Here stand the machines and hand tools"
        emptyText="Enter what was paid, how long it lasts and how many hours a year it runs; the cost of an hour follows."
        onOpen={(tool) => void navigate({ to: '/tools/$toolId', params: { toolId: tool.id } })}
      />
    </Sheet>
  );
}
