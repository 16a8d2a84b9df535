import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { formatMoney } from '../../../lib/format.ts';
import { mergedId } from '../../figures/merge-tables.ts';
import type { QuoteSummary } from '../api/list-quotes.ts';
import { comparisonQuery } from '../api/work-out-quote.ts';
import './quote.css';

/** What our cost of an open quote has moved by since it was sent; leads to where it is told leaf by leaf. */
export function MovedCell({ quote }: { readonly quote: QuoteSummary }) {
  const isOpen = quote.state === 'sent';
  const { data, isError } = useQuery({ ...comparisonQuery(quote.currentRevisionId), enabled: isOpen });
  const { locale } = useLocale();
  if (!isOpen) return <span className="quiet">–</span>;
  if (isError) return 'cannot be compared';
  const node = data?.figures[data.costMoved];
  if (node === undefined) return <span className="quiet">...</span>;
  const moved = decimal(node.value);
  const words = moved.isZero()
    ? 'the same'
    : `${formatMoney(moved.abs(), quote.currency, { locale })} ${moved.gt(0) ? 'dearer' : 'cheaper'}`;
  return (
    <Link
      to="/quotes/$quoteId"
      params={{ quoteId: quote.id }}
      search={{ figure: mergedId('today', data?.costMoved ?? '') }}
      hash="moved"
      aria-label={`Cost since it was sent: ${words}, working`}
    >
      {words}
    </Link>
  );
}
