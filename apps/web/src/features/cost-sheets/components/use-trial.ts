import type { WorkedCostSheet } from '@scantling/contracts';
import { type FigureNode, NoAnswerError, type TriedTable, tryValues, undatedKey } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { useCallback, useEffect, useMemo, useState } from 'react';
import { recorded, redone, undone } from '../../../components/edit-grid/undo-history.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import type { TryingValue } from '../../figures/trying-context.ts';
import { keepTrial, keptTrial, NOTHING_TRIED, type TriedValues, withTried } from './tried-values.ts';

export interface SheetTrial {
  readonly isOn: boolean;
  readonly setIsOn: (isOn: boolean) => void;
  readonly values: TriedValues;
  /** The sheet's table as it stands and as tried; null while the sheet is not worked out. */
  readonly tried: TriedTable | null;
  /** Set where the values, kept from before, leave no answer together on the sheet as it is now. */
  readonly fault: string | null;
  /** For the fields in the working and in the list of inputs; null while nothing is tried. */
  readonly trying: TryingValue | null;
  readonly take: (values: TriedValues) => void;
  readonly undo: (() => void) | null;
  readonly redo: (() => void) | null;
}

function attempted(worked: WorkedCostSheet, values: TriedValues): TriedTable | NoAnswerError {
  try {
    return tryValues(worked.figures, values);
  } catch (error) {
    if (error instanceof NoAnswerError) return error;
    throw error;
  }
}

/** Values tried on one sheet: worked out here, kept in this window only. */
export function useTrial(
  sheetId: string,
  worked: WorkedCostSheet | undefined,
  system: LengthSystem,
): SheetTrial {
  const [trial, setTrial] = useState(() => keptTrial(sessionStorage, sheetId));
  const [problem, setProblem] = useState<{ readonly leaf: string; readonly message: FieldMessage } | null>(
    null,
  );
  const { isOn, history } = trial;
  const values = isOn ? history.present : NOTHING_TRIED;
  useEffect(() => keepTrial(sessionStorage, sheetId, trial), [sheetId, trial]);
  const outcome = useMemo(() => (worked === undefined ? null : attempted(worked, values)), [worked, values]);
  const record = useCallback(
    (next: TriedValues): void =>
      setTrial((before) => ({ ...before, isOn: true, history: recorded(before.history, next) })),
    [],
  );
  const step = (to: typeof undone<TriedValues>): void => {
    setProblem(null);
    setTrial((before) => ({ ...before, history: to(before.history) }));
  };
  const tried = outcome instanceof NoAnswerError || outcome === null ? null : outcome;
  const trying = useMemo((): TryingValue | null => {
    if (!isOn || worked === undefined) return null;
    const given = new Map(Object.entries(values).map(([key, value]) => [undatedKey(key), value]));
    return {
      system,
      leafOf: (id) => {
        const node = worked.figures[id];
        return node?.source === undefined ? undefined : node;
      },
      triedAt: (id) => given.get(undatedKey(id)),
      wasOf: (id) => tried?.moved.get(id)?.toString(),
      problemAt: (id) => (problem?.leaf === id ? problem.message : undefined),
      attempt: (leaf: FigureNode, value) => {
        // What stands already is nothing tried.
        const next = withTried(values, leaf.id, value === leaf.value ? null : value);
        const answer = attempted(worked, next);
        if (answer instanceof NoAnswerError) {
          const mend = 'Try another value, or put back one of the others.';
          setProblem({ leaf: leaf.id, message: { message: `leaves no answer: ${answer.reason}.`, mend } });
          return;
        }
        setProblem(null);
        record(next);
      },
    };
  }, [isOn, worked, values, tried, problem, system, record]);
  return {
    isOn,
    setIsOn: (next) => setTrial((before) => ({ ...before, isOn: next })),
    values,
    tried:
      tried ??
      (worked === undefined ? null : { table: worked.figures, changed: [], moved: new Map(), gone: [] }),
    fault: outcome instanceof NoAnswerError ? outcome.reason : null,
    trying,
    take: (next) => {
      setProblem(null);
      record(next);
    },
    undo: history.past.length > 0 ? () => step(undone) : null,
    redo: history.future.length > 0 ? () => step(redone) : null,
  };
}
