import type { Material } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { localToday } from '../../../lib/local-today.ts';
import { materialPricesQuery } from '../api/list-material-prices.ts';
import { PriceHistory } from './price-history.tsx';
import { PriceToday } from './price-today.tsx';

/** The prices of a material: the one used today, and how they went. */
export function MaterialPrices({ material }: { readonly material: Material }) {
  const prices = useQuery(materialPricesQuery(material.id));
  const today = localToday();
  if (prices.isPending) return <Loading />;
  if (prices.isError) return <ErrorNotice error={prices.error} retry={() => void prices.refetch()} />;
  if (prices.data.length === 0) {
    return (
      <EmptyState
        title="Its prices will stand here."
        action={<Link to="/price-lists/import">Import a price list</Link>}
      >
        A list names this material by its code in the column "material", or its article is linked to it.
      </EmptyState>
    );
  }
  return (
    <>
      <Section title="Price used today" note={today}>
        <PriceToday materialId={material.id} today={today} />
      </Section>
      <Section title="Price history">
        <PriceHistory prices={prices.data} today={today} />
      </Section>
    </>
  );
}
