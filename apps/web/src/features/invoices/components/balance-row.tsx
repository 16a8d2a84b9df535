import { FigureValue } from '../../figures/figure-value.tsx';
import './invoice.css';

interface BalanceRowProps {
  readonly label: string;
  /** What each sum is called, and the figure it is. */
  readonly sums: readonly { readonly label: string; readonly figure: string }[];
}

/** Sums side by side, the last one what it comes to. */
export function BalanceRow({ label, sums }: BalanceRowProps) {
  return (
    <section aria-label={label}>
      <dl className="money-sums">
        {sums.map((sum, at) => (
          <div key={sum.label}>
            <dt>{sum.label}</dt>
            <dd>
              <FigureValue id={sum.figure} look={at === sums.length - 1 ? 'total' : 'plain'} />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
