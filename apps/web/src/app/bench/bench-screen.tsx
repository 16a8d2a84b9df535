import { useQueries } from '@tanstack/react-query';
import { ErrorNotice } from '../../components/notices.tsx';
import { Loading } from '../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../components/sheet.tsx';
import { localToday } from '../../lib/local-today.ts';
import { useCurrency } from '../../lib/use-session.ts';
import { AllScreens } from './all-screens.tsx';
import { FIRST_STEPS, isEnteredQuery } from './first-steps.ts';
import { FirstStepsSection } from './first-steps-section.tsx';
import { GoOnSections } from './go-on-sections.tsx';
import './bench.css';

/** Where work begins: the way to a first price, then what was worked on last and what waits. */
export function BenchScreen() {
  const entered = useQueries({ queries: FIRST_STEPS.map(isEnteredQuery) });
  const currency = useCurrency();
  const failed = entered.find(({ isError }) => isError);
  const steps = FIRST_STEPS.map((step, place) => ({ step, isEntered: entered[place]?.data ?? false }));
  const hasPrice = steps.at(-1)?.isEntered ?? false;
  const isKnown = entered.every(({ isSuccess }) => isSuccess);
  return (
    <Sheet>
      <SheetHeader
        title="Bench"
        facts={[
          { label: 'Today', value: localToday() },
          { label: 'Currency', value: currency },
        ]}
      />
      {failed && <ErrorNotice error={failed.error} retry={() => void failed.refetch()} />}
      {!isKnown && !failed && <Loading />}
      {isKnown && !hasPrice && <FirstStepsSection steps={steps} hasPrice={false} />}
      {isKnown && <GoOnSections />}
      {isKnown && hasPrice && steps.some(({ isEntered }) => !isEntered) && (
        <FirstStepsSection steps={steps} hasPrice />
      )}
      <AllScreens />
    </Sheet>
  );
}
