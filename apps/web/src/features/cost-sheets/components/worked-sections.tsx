import type { WorkedCostSheet } from '@scantling/contracts';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { StackedBar } from '../../../components/charts/stacked-bar.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { COST_ROWS, PRICE_ROWS, piecesWords } from './class-rows.ts';
import { ClassTable } from './class-table.tsx';
import { COMPOSITION_SERIES, composition } from './composition.ts';
import { MaterialPriceTable, MaterialTable } from './material-table.tsx';
import { NoticeList } from './notice-list.tsx';
import { PartTable } from './part-table.tsx';
import { WorkTable } from './work-table.tsx';
import './cost-sheet.css';

interface WorkedProps {
  readonly worked: WorkedCostSheet;
}

/** The answer first: what to charge for one piece, then how cost and price come about at each quantity. */
export function WorkedSections({ worked, isInInches }: WorkedProps & { readonly isInInches: boolean }) {
  const { locale } = useLocale();
  const first = worked.columns[0];
  return (
    <>
      {first && (
        <div className="answer">
          <FigureValue id={first.perPiece.price} look="answer" />
          <p>
            {first.quantity === 1 ? 'for one piece' : `a piece for ${piecesWords(first.quantity)}`}; at{' '}
            <FigureValue id={first.price.floorPrice} />
            {first.quantity === 1 ? '' : ' for all of them'} you earn 0 an hour
          </p>
        </div>
      )}
      <NoticeList worked={worked} />
      <Section title="Price" note="what to charge, and what it leaves">
        <ClassTable label="Price" worked={worked} rows={PRICE_ROWS} />
      </Section>
      <Section title="Cost" note="from prime cost to the price">
        <ClassTable label="Cost" worked={worked} rows={COST_ROWS} />
      </Section>
      <Section title="Where the money goes">
        <StackedBar
          label="Net price of one piece, by what it pays for"
          barHead="Quantity"
          series={COMPOSITION_SERIES}
          bars={composition(worked)}
          write={(amount) => formatMoney(amount, worked.currency, { locale })}
        />
      </Section>
      <QuantitySections worked={worked} />
      <Section title="Parts" note="rough sizes, allowances included">
        <PartTable worked={worked} isInInches={isInInches} />
      </Section>
      <Section title="Weight">
        <p>
          <FigureValue id={worked.weight.mass} /> one finished piece
          {worked.weight.partsWithoutDensity.length > 0 && ', not all of it: see what to know above'}
        </p>
      </Section>
    </>
  );
}

/** What depends on the number of pieces line by line: one quantity at a time. */
function QuantitySections({ worked }: WorkedProps) {
  const [quantity, setQuantity] = useState(worked.columns[0]?.quantity ?? 1);
  const column = worked.columns.find((one) => one.quantity === quantity) ?? worked.columns[0];
  if (!column) return null;
  const chooser = (
    <Select
      label="Shown for"
      choices={worked.columns.map((one) => ({ id: String(one.quantity), label: piecesWords(one.quantity) }))}
      value={String(column.quantity)}
      onChange={(id) => setQuantity(Number(id))}
    />
  );
  return (
    <>
      <Section
        title={`Materials for ${piecesWords(column.quantity)}`}
        note="what is needed, used, bought and charged"
        actions={worked.columns.length > 1 ? chooser : undefined}
      >
        <MaterialTable worked={worked} column={column} />
      </Section>
      {column.materials.length > 0 && (
        <Section title="Where the prices come from" note="supplier, list and the rule that chose it">
          <MaterialPriceTable column={column} />
        </Section>
      )}
      <Section title={`Work for ${piecesWords(column.quantity)}`}>
        <WorkTable worked={worked} work={column.work} />
      </Section>
    </>
  );
}
