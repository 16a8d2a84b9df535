import { createLabourGrade, downloadLabourRates } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { addressOf } from '../../../lib/api-client.ts';
import { useCurrency, useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { labourRatesQuery } from '../api/get-labour-rates.ts';
import { LabourRateTable } from '../components/labour-rate-table.tsx';

/** The grades of labour, each with what its hour costs. */
export function LabourGradesScreen() {
  const worked = useQuery(labourRatesQuery);
  const currency = useCurrency();
  const mayCreate = useMayCall(createLabourGrade);
  const newLink = mayCreate && <Link to="/labour-grades/new">Enter a labour grade</Link>;
  return (
    <Sheet>
      <SheetHeader
        title="Labour grades"
        facts={[{ label: 'Currency', value: currency }]}
        actions={
          <a className="button button-plain" href={addressOf(downloadLabourRates, {})} download>
            Spreadsheet (XLSX)
          </a>
        }
      />
      {worked.isPending && <Loading />}
      {worked.isError && <ErrorNotice error={worked.error} retry={() => void worked.refetch()} />}
      {worked.data?.rates.length === 0 && (
        <EmptyState title="Here stand the grades of labour" action={newLink}>
          Enter pay, burden and the share of paid hours that goes into jobs; the cost of an hour follows.
        </EmptyState>
      )}
      {worked.data && worked.data.rates.length > 0 && (
        <Figures table={worked.data.figures}>
          <Section
            title="Cost of an hour"
            note="Pay and burden of a paid hour, over the productive share: what a job is charged."
            actions={newLink}
          >
            <LabourRateTable {...worked.data} />
          </Section>
        </Figures>
      )}
    </Sheet>
  );
}
