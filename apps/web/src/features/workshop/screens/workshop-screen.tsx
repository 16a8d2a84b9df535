import { removeDemo } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { workshopQuery } from '../api/get-workshop.ts';
import { DemoSection } from '../components/demo-section.tsx';
import { WorkshopForm } from '../components/workshop-form.tsx';

/** The workshop and its settings. */
export function WorkshopScreen() {
  const read = useQuery(workshopQuery);
  const workshop = read.data?.value;
  const mayRemoveDemo = useMayCall(removeDemo);
  return (
    <Sheet>
      <SheetHeader
        title="Workshop settings"
        facts={
          workshop
            ? [
                { label: 'Currency', value: workshop.currency },
                { label: 'Lengths', value: workshop.unitSystem === 'metric' ? 'mm' : 'ft and in' },
              ]
            : []
        }
      />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {read.data && (
        <Section title="Settings" note="Every cost sheet, every rate and every paper rests on them.">
          <WorkshopForm read={read.data} readAgain={async () => (await read.refetch()).data} />
        </Section>
      )}
      {mayRemoveDemo && <DemoSection />}
    </Sheet>
  );
}
