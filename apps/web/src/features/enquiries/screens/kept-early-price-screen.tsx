import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { Figures } from '../../figures/figures.tsx';
import { earlyPriceQuery } from '../api/early-prices.ts';
import { EarlyPriceRange, EarlyPriceWorking } from '../components/early-price-answer.tsx';
import { CopyAnswer } from '../components/keep-early-price.tsx';

/** An early price as it was given. */
export function KeptEarlyPriceScreen() {
  const { enquiryId = '', number = '' } = useParams({ strict: false });
  const kept = useQuery(earlyPriceQuery(enquiryId, Number(number)));
  const path = (
    <Link to="/enquiries/$enquiryId" params={{ enquiryId }}>
      Enquiry
    </Link>
  );
  if (!kept.data) {
    return (
      <Sheet>
        <SheetHeader title="Early price" path={path} />
        {kept.isPending && <Loading />}
        {kept.isError && <ErrorNotice error={kept.error} retry={() => void kept.refetch()} />}
      </Sheet>
    );
  }
  const { worked, givenOn, note } = kept.data;
  return (
    <Figures table={worked.figures}>
      <Sheet>
        <SheetHeader
          title={`Early price no. ${kept.data.number}`}
          path={path}
          facts={[
            { label: 'Given on', value: givenOn },
            { label: 'Standing', value: 'as given; it never changes' },
            { label: 'Currency', value: worked.currency },
            ...(note === '' ? [] : [{ label: 'Note', value: note }]),
          ]}
        />
        <EarlyPriceRange worked={worked} />
        <Section title="Answer">
          <CopyAnswer worked={worked} />
        </Section>
        <EarlyPriceWorking worked={worked} />
      </Sheet>
    </Figures>
  );
}
