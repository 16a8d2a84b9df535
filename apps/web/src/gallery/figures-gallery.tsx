import { decimal } from '@scantling/decimals';
import { Button } from '../components/button.tsx';
import { StackedBar } from '../components/charts/stacked-bar.tsx';
import type { DataColumn } from '../components/data-table/data-column.ts';
import { DataTable } from '../components/data-table/data-table.tsx';
import { StaleNotice } from '../components/notices.tsx';
import { Section, Sheet, SheetHeader } from '../components/sheet.tsx';
import { FigureValue } from '../features/figures/figure-value.tsx';
import { Figures } from '../features/figures/figures.tsx';
import { formatMoney } from '../lib/format.ts';
import { COST_LINES, COST_TABLE, type CostLine, PRICE, PRIME_COST } from './bench-cost.ts';

type FigureField = 'quantity' | 'timber' | 'hours' | 'labour' | 'cost';

function figureColumn(id: FigureField, header: string): DataColumn<CostLine> {
  const amountOf = (line: CostLine): string => COST_TABLE[line[id]]?.value ?? '';
  return {
    id,
    header,
    isNumeric: true,
    text: amountOf,
    sortBy: (line) => decimal(amountOf(line)),
    render: (line) => <FigureValue id={line[id]} isUnitHidden places={2} />,
    ...(id === 'cost' ? { total: <FigureValue id={PRIME_COST} look="total" /> } : {}),
  };
}

const COLUMNS: readonly DataColumn<CostLine>[] = [
  { id: 'name', header: 'Part', text: (line) => line.name, total: 'Prime cost' },
  figureColumn('quantity', 'Bought, bd ft'),
  figureColumn('timber', 'Timber'),
  figureColumn('hours', 'Time, h'),
  figureColumn('labour', 'Labour'),
  figureColumn('cost', 'Prime cost'),
];

const value = (id: string): string => COST_TABLE[id]?.value ?? '0';

export function FiguresGallery() {
  return (
    <Figures table={COST_TABLE}>
      <Sheet>
        <SheetHeader
          title="Hall bench on turned legs"
          path="Designs / Cost sheet"
          facts={[
            { label: 'Date', value: '2026-03-14' },
            { label: 'Basis', value: 'commission' },
            { label: 'Quantity', value: '1' },
            { label: 'Revision', value: 'C' },
            { label: 'Currency', value: 'USD' },
            { label: 'Price', value: <FigureValue id={PRICE} look="total" /> },
          ]}
          actions={
            <>
              <Button look="main">Work out</Button>
              <Button>Export</Button>
            </>
          }
        />
        <StaleNotice action={<Button>Work out again</Button>}>Worked out before the last change.</StaleNotice>
        <Section title="Parts" note="bought with waste, at the prices of the date above">
          <DataTable label="Parts" columns={COLUMNS} rows={COST_LINES} rowId={(line) => line.name} />
        </Section>
        <Section title="Price">
          <div>
            <FigureValue id={PRICE} look="answer" />
          </div>
        </Section>
        <Section title="Where the money goes">
          <StackedBar
            label="Prime cost by part"
            barHead="Part"
            series={[
              { id: 'timber', label: 'Timber' },
              { id: 'labour', label: 'Labour' },
            ]}
            bars={COST_LINES.map((line) => ({
              label: line.name,
              values: { timber: value(line.timber), labour: value(line.labour) },
            }))}
            write={(amount) => formatMoney(amount, 'USD')}
          />
        </Section>
      </Sheet>
    </Figures>
  );
}
