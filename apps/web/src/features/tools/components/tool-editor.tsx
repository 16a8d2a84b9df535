import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { localToday } from '../../../lib/local-today.ts';
import { useCurrency } from '../../../lib/use-session.ts';
import { workshopQuery } from '../api/get-workshop.ts';
import { toolCalls } from '../api/tool-calls.ts';
import { toolGroups } from './tool-groups.ts';
import { freshTool, toolInput, toolValues } from './tool-values.ts';
import { ACQUISITION_WORDS } from './tool-words.ts';
import { ToolWorking } from './tool-working.tsx';

/** The sheet of a tool; `id` is null for a new one. */
export function ToolEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  const currency = useCurrency();
  const workshop = useQuery(workshopQuery);
  const tools = useQuery(toolCalls.listQuery);
  const groups = useMemo(() => {
    const others = (tools.data ?? []).filter((tool) => tool.id !== id);
    return toolGroups(
      currency,
      others.map(({ code, name }) => ({ id: code, label: name, note: code })),
    );
  }, [currency, tools.data, id]);
  if (workshop.data === undefined || tools.isPending) {
    return (
      <Sheet>
        <SheetHeader title={id === null ? 'New tool' : 'Tool'} path={<Link to="/tools">Tools</Link>} />
        {workshop.isError ? (
          <ErrorNotice error={workshop.error} retry={() => void workshop.refetch()} />
        ) : (
          <Loading />
        )}
      </Sheet>
    );
  }
  const fresh = freshTool(workshop.data.value.settings, localToday());
  return (
    <RecordSheet
      calls={toolCalls}
      id={id}
      path={<Link to="/tools">Tools</Link>}
      newTitle="New tool"
      consequence="Operations that name its code can no longer be costed. A tool that was sold stays on record with the day it went."
      facts={(tool) => [
        { label: 'Code', value: tool.code },
        { label: 'Came on', value: tool.acquiredOn },
        { label: 'How', value: ACQUISITION_WORDS[tool.acquisition] },
        { label: 'Currency', value: currency },
      ]}
      groups={groups}
      toValues={(tool) => (tool === null ? fresh : toolValues(tool, fresh))}
      toInput={toolInput}
      above={(tool) => <ToolWorking tool={tool} />}
      onCreated={(tool) => void navigate({ to: '/tools/$toolId', params: { toolId: tool.id } })}
      onRemoved={() => void navigate({ to: '/tools' })}
    />
  );
}
