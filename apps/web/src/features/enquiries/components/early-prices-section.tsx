import type { KeptEarlyPrice } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { earlyPricesQuery } from '../api/early-prices.ts';
import './enquiry.css';

/** Early prices as they were given; a correction is another one. */
export function EarlyPricesSection({ enquiryId }: { readonly enquiryId: string }) {
  const { locale } = useLocale();
  const navigate = useNavigate();
  const kept = useQuery(earlyPricesQuery(enquiryId));
  const at = (number: number) =>
    ({
      to: '/enquiries/$enquiryId/early-prices/$number',
      params: { enquiryId, number: String(number) },
    }) as const;
  const amount = (id: 'low' | 'likely' | 'high', header: string): DataColumn<KeptEarlyPrice> => ({
    id,
    header,
    isNumeric: true,
    text: (price) => formatMoney(price[id], price.currency, { locale }),
    sortBy: (price) => decimal(price[id]),
    render: (price) => {
      const text = formatMoney(price[id], price.currency, { locale });
      return (
        <Link
          {...at(price.number)}
          search={{ figure: `${id}/price` }}
          aria-label={`${header}: ${text}, working`}
        >
          {text}
        </Link>
      );
    },
  });
  const columns: DataColumn<KeptEarlyPrice>[] = [
    {
      id: 'number',
      header: 'Given',
      text: ({ givenOn, number }) => `${givenOn}, no. ${number}`,
      render: (price) => (
        <Link {...at(price.number)}>
          {price.givenOn}, no. {price.number}
        </Link>
      ),
    },
    amount('low', 'Low'),
    amount('likely', 'Likely'),
    amount('high', 'High'),
    { id: 'from', header: 'Scaled from', text: ({ from }) => from.join('; ') },
    { id: 'note', header: 'Note', text: ({ note }) => note },
  ];
  return (
    <Section title="Early prices" note="Ranges before a bill of materials exists; no offers.">
      {kept.isPending && <Loading />}
      {kept.isError && <ErrorNotice error={kept.error} retry={() => void kept.refetch()} />}
      {kept.data?.length === 0 && (
        <p className="enquiry-note">None given yet. An early price takes two minutes from a past piece.</p>
      )}
      {kept.data && kept.data.length > 0 && (
        <DataTable
          label="Early prices"
          columns={columns}
          rows={kept.data}
          rowId={({ number }) => String(number)}
          onOpenRow={({ number }) => void navigate(at(number))}
        />
      )}
    </Section>
  );
}
