import type { WorkedQuote } from '@scantling/contracts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import './quote.css';

interface ReckoningProps {
  readonly worked: WorkedQuote;
  /** It does not say what the fields say, since those cannot be worked out or are being worked out. */
  readonly isStale?: boolean;
  /** The name of its table, where the sheet shows figures of several. */
  readonly of?: string;
}

/** What the quote comes to and what it leaves, in view while the lines are written. */
export function Reckoning({ worked, isStale = false, of }: ReckoningProps) {
  const { totals, margin } = worked;
  const named = (id: string): string => (of === undefined ? id : mergedId(of, id));
  return (
    <section className="reckoning" aria-label="What it comes to">
      <dl data-is-stale={isStale ? '' : undefined}>
        <div>
          <dt>Total with tax</dt>
          <dd>
            <FigureValue id={named(totals.total)} look="total" />
          </dd>
        </div>
        <div>
          <dt>Without tax</dt>
          <dd>
            <FigureValue id={named(totals.net)} />
          </dd>
        </div>
        <div>
          <dt>Cost</dt>
          <dd>
            <FigureValue id={named(margin.cost)} />
          </dd>
        </div>
        <div>
          <dt>Left over</dt>
          <dd>
            <FigureValue id={named(margin.profit)} />
          </dd>
        </div>
        <div>
          <dt>Margin</dt>
          <dd>{margin.margin === null ? 'none' : <FigureValue id={named(margin.margin)} isPercent />}</dd>
        </div>
        <div>
          <dt>Your hour brings</dt>
          <dd>
            {margin.hourlyEarnings === null ? (
              'no hours of yours'
            ) : (
              <FigureValue id={named(margin.hourlyEarnings)} places={2} />
            )}
          </dd>
        </div>
        <div>
          <dt>Deposit</dt>
          <dd>
            <FigureValue id={named(margin.deposit)} />
          </dd>
        </div>
      </dl>
      {worked.unpriced.map(({ lineId, title, materials }) => (
        <p key={lineId} className="reckoning-warning">
          <strong>“{title}” has materials without a price, so it cannot be sent:</strong>{' '}
          {materials.map(({ name, why }) => `${name} (${why})`).join(', ')}.
        </p>
      ))}
      {margin.isDepositShort && (
        <p className="reckoning-warning">
          <strong>The deposit does not pay for what must be bought:</strong> without its tax it is{' '}
          <FigureValue id={named(margin.depositWithoutTax)} />, and the wood and parts come to{' '}
          <FigureValue id={named(margin.bought)} />.
        </p>
      )}
    </section>
  );
}
