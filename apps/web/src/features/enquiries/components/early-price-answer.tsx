import type { WorkedEarlyPrice } from '@scantling/contracts';
import { EARLY_PRICE_CLASSES, type EarlyPriceClass } from '@scantling/quoting';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { Section } from '../../../components/sheet.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { CLASS_LABELS } from './early-price-words.ts';
import './enquiry.css';

/** The range first, marked as what it is; then how it follows from each past piece. */
export function EarlyPriceRange({ worked }: { readonly worked: WorkedEarlyPrice }) {
  return (
    <div className="early-range" role="status" aria-label="Early price">
      <p className="early-range-prices">
        between <FigureValue id={worked.low.price} look="answer" /> and{' '}
        <FigureValue id={worked.high.price} look="answer" />
      </p>
      <p>
        likely <FigureValue id={worked.likely.price} look="total" />, in about{' '}
        <FigureValue id={worked.likely.hours} places={1} /> (<FigureValue id={worked.low.hours} places={1} />{' '}
        to <FigureValue id={worked.high.hours} places={1} />
        ); cost likely <FigureValue id={worked.likely.cost} />
      </p>
      <p className="early-mark">
        Early price, before a bill of materials; a range, not an offer.{' '}
        {worked.spread === 'band'
          ? 'One past piece: the range is a stated band around it.'
          : `From the least to the greatest of ${worked.pieces.length} past pieces.`}
      </p>
    </div>
  );
}

type Row = { readonly id: string; readonly name: EarlyPriceClass };
const ROWS: readonly Row[] = EARLY_PRICE_CLASSES.map((name) => ({ id: name, name }));

/** Class by class: what it cost then, by how much it grows, what that makes. */
export function EarlyPriceWorking({ worked }: { readonly worked: WorkedEarlyPrice }) {
  return worked.pieces.map((piece) => {
    const column = (
      part: 'past' | 'factors' | 'scaled',
      header: string,
      total?: React.ReactNode,
    ): DataColumn<Row> => ({
      id: part,
      header,
      isNumeric: true,
      sortBy: false,
      text: ({ name }) => worked.figures[piece[part][name]]?.value ?? '',
      render: ({ name }) => (
        <FigureValue
          id={piece[part][name]}
          {...(part === 'factors' ? { places: 3, isUnitHidden: true } : {})}
        />
      ),
      ...(total === undefined ? {} : { total }),
    });
    const columns: DataColumn<Row>[] = [
      { id: 'name', header: 'Class', sortBy: false, text: ({ name }) => CLASS_LABELS[name], total: 'Cost' },
      column('past', 'Then'),
      column('factors', 'Grows by'),
      column('scaled', 'Now', <FigureValue id={piece.cost} look="total" />),
    ];
    return (
      <Section
        key={piece.id}
        title={piece.name}
        note={
          <>
            makes <FigureValue id={piece.price} /> in <FigureValue id={piece.hours} places={1} />
          </>
        }
      >
        <div className="early-working">
          <DataTable
            label={`Scaled from ${piece.name}`}
            columns={columns}
            rows={ROWS}
            rowId={({ id }) => id}
          />
        </div>
      </Section>
    );
  });
}
