import { downloadToolRegister } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { addressOf } from '../../../lib/api-client.ts';
import { useCurrency } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { toolRegisterQuery } from '../api/get-tool-register.ts';
import { RegisterTable } from '../components/register-table.tsx';
import { YearChoice } from '../components/year-choice.tsx';

const YEARS_BACK = 15;

/** The register of tools of a year, to read and to hand on. */
export function ToolRegisterScreen() {
  const now = new Date().getFullYear();
  const [year, setYear] = useState(now);
  const register = useQuery(toolRegisterQuery(year));
  const currency = useCurrency();
  const fileAddress = (format: 'csv' | 'xlsx') =>
    addressOf(downloadToolRegister, { query: { year, format } });
  const { data } = register;
  return (
    <Sheet>
      <SheetHeader
        title="Register of tools"
        path={<Link to="/tools">Tools</Link>}
        facts={[
          { label: 'Year', value: year },
          { label: 'Currency', value: currency },
        ]}
      />
      <Section
        title={`Book values of ${year}`}
        note={
          <>
            For the accountant, as a file: <a href={fileAddress('xlsx')}>XLSX</a>{' '}
            <a href={fileAddress('csv')}>CSV</a>
          </>
        }
        actions={<YearChoice label="Year" year={year} from={now - YEARS_BACK} to={now} onChange={setYear} />}
      >
        {register.isPending && <Loading />}
        {register.isError && <ErrorNotice error={register.error} retry={() => void register.refetch()} />}
        {data && (
          <Figures table={data.figures}>
            <RegisterTable register={data} />
            {data.note !== '' && <p className="register-note">{data.note}</p>}
            {data.leftOut.length > 0 && (
              <p className="register-note">
                Hired, and so in nobody's books here: {data.leftOut.join(', ')}.
              </p>
            )}
          </Figures>
        )}
      </Section>
    </Sheet>
  );
}
