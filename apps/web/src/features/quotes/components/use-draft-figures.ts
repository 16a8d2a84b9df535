import type { WorkedQuote } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { draftFiguresQuery } from '../api/work-out-quote.ts';
import { cell, type LineForm } from './line-cells.ts';
import { draftOf, type QuoteForm } from './quote-form.ts';

const PAUSE_MS = 300;

interface Asked {
  readonly form: QuoteForm;
  readonly chosen: readonly string[];
}

/** The value once it has stayed the same for a moment, so that not every letter is worked out. */
function useSettled(value: Asked): Asked {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}

interface DraftFigures {
  readonly worked: WorkedQuote | undefined;
  /** What is shown is of an earlier state of the fields. */
  readonly isStale: boolean;
  readonly error: Error | null;
  /** The lines that the error is about, in their order. */
  readonly asked: readonly LineForm[];
  readonly retry: () => void;
}

/** What the fields come to, worked out by the server as they are typed; unsaved as they are. */
export function useDraftFigures(
  form: QuoteForm,
  chosen: readonly string[],
  isReadable: boolean,
): DraftFigures {
  const [asked, setAsked] = useState<Asked>({ form, chosen });
  if (asked.form !== form || asked.chosen !== chosen) setAsked({ form, chosen });
  const settled = useSettled(asked);
  const [last, setLast] = useState<WorkedQuote | undefined>();
  const known = settled.chosen.filter((id) =>
    settled.form.lines.some((line) => line.key === id && cell(line, 'taken') !== 'included'),
  );
  const query = useQuery({ ...draftFiguresQuery(draftOf(settled.form), known), enabled: isReadable });
  // A draft that cannot be worked out keeps the last figures in view, marked as stale.
  if (query.data !== undefined && query.data !== last) setLast(query.data);
  const worked = query.data ?? last;
  return {
    worked,
    isStale: query.isError || query.isPlaceholderData || settled !== asked || !isReadable,
    error: query.isError && isReadable ? query.error : null,
    asked: settled.form.lines,
    retry: () => void query.refetch(),
  };
}
