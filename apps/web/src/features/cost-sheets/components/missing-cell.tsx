import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { missingPricesQuery } from '../api/work-out-cost-sheet.ts';
import { missingWords } from './missing-prices.ts';
import './cost-sheet.css';

/** Whether a sheet's price can be relied on, as it would be worked out now; leads to the sheet, which says what to mend. */
export function MissingCell({ sheetId }: { readonly sheetId: string }) {
  const { data, isPending, isError } = useQuery(missingPricesQuery(sheetId));
  if (isPending) return <span className="class-note">...</span>;
  const words = isError ? 'cannot be worked out' : missingWords(data);
  if (words === '') return 'all there';
  return (
    <Link to="/cost-sheets/$sheetId" params={{ sheetId }} className="sheet-missing">
      {words}
    </Link>
  );
}
