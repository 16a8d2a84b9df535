import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { unlinkedCountQuery } from '../api/list-supplier-items.ts';
import '../../../components/button.css';
import '../../../components/notices.css';

/** What of a supplier's articles no cost sheet can use yet, with the way to link them; nothing where all are linked. */
export function UnlinkedArticles({ supplierId }: { readonly supplierId: string }) {
  const { data = 0 } = useQuery(unlinkedCountQuery(supplierId));
  if (data === 0) return null;
  return (
    <div role="status" className="stale-notice">
      <p>
        <strong>
          {data === 1
            ? '1 article of this supplier is linked to no material.'
            : `${data} articles of this supplier are linked to no material.`}
        </strong>{' '}
        Their prices are kept, but no cost sheet uses them until it is said which material each is.
      </p>
      <Link
        to="/price-lists/articles"
        search={{ supplier: supplierId, linked: 'no' }}
        className="button button-plain"
      >
        Link them
      </Link>
    </div>
  );
}
