import type { ToolRecord } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { Figures } from '../../figures/figures.tsx';
import { toolRatesQuery } from '../api/get-tool-rates.ts';
import { toolScheduleQuery } from '../api/get-tool-schedule.ts';
import { RateTable } from './rate-table.tsx';
import { ScheduleTable } from './schedule-table.tsx';
import { BASIS_WORDS } from './tool-words.ts';
import { YearChoice } from './year-choice.tsx';

const YEARS_AHEAD = 10;

/** The hour rate of a tool on all bases and its yearly schedule, every figure with its working. */
export function ToolWorking({ tool }: { readonly tool: ToolRecord }) {
  const [year, setYear] = useState(() => new Date().getFullYear());
  const isHired = tool.acquisition === 'hired';
  const rates = useQuery(toolRatesQuery(tool.id, year));
  const schedule = useQuery({ ...toolScheduleQuery(tool.id), enabled: !isHired });
  const meanings = Object.values(BASIS_WORDS).map(({ label, meaning }) => `${label}: ${meaning}`);
  return (
    // Leaves share their keys and derived figures are named apart, so both tables fit into one.
    <Figures
      table={{ ...schedule.data?.figures, ...rates.data?.figures }}
      isPending={rates.isPending || schedule.isLoading}
    >
      <Section
        title="Machine-hour rate"
        note={`${meanings.join('; ')}.`}
        actions={
          !isHired && (
            <YearChoice
              label="Book basis of"
              year={year}
              from={Number(tool.acquiredOn.slice(0, 4))}
              to={new Date().getFullYear() + YEARS_AHEAD}
              onChange={setYear}
            />
          )
        }
      >
        {rates.isPending && <Loading />}
        {rates.isError && <ErrorNotice error={rates.error} retry={() => void rates.refetch()} />}
        {rates.data && <RateTable tool={tool.name} {...rates.data} />}
      </Section>
      {!isHired && (
        <Section title="Yearly schedule" note={schedule.data?.schedule.methodLabel}>
          {schedule.isPending && <Loading />}
          {schedule.isError && <ErrorNotice error={schedule.error} retry={() => void schedule.refetch()} />}
          {schedule.data && <ScheduleTable {...schedule.data} />}
        </Section>
      )}
    </Figures>
  );
}
