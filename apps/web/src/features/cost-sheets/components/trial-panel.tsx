import type { WorkedCostSheet } from '@scantling/contracts';
import { applyChanges } from '@scantling/contracts';
import type { TriedTable } from '@scantling/figures';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import type { CostSheetRecord } from '../api/get-cost-sheet.ts';
import { scenariosQuery } from '../api/list-scenarios.ts';
import { KeepScenario } from './keep-scenario.tsx';
import { isOfScenario } from './scenario-changes.ts';
import { TakeOver } from './take-over.tsx';
import { TrialSection } from './trial-section.tsx';
import { TrialStrip } from './trial-strip.tsx';
import type { SheetTrial } from './use-trial.ts';

interface TrialPanelProps {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
  /** As it stands. */
  readonly worked: WorkedCostSheet;
  readonly trial: SheetTrial;
  readonly tried: TriedTable;
  readonly quantity: number;
  readonly onQuantity: (quantity: number) => void;
  /** The scenario that was tried last. */
  readonly from: string | null;
  readonly onFrom: (id: string) => void;
  /** Another variant, size or wood is tried as well, which nothing keeps yet. */
  readonly hasOtherChoice: boolean;
}

/** Everything of trying values: the strip in view, what is tried, and what can be done with it. */
export function TrialPanel(props: TrialPanelProps) {
  const { sheet, etag, worked, trial, tried, hasOtherChoice, from, onFrom } = props;
  const [isTakingOver, setIsTakingOver] = useState(false);
  const canApply = useMayCall(applyChanges);
  const scenarios = useQuery(scenariosQuery(sheet.id)).data ?? [];
  const source = scenarios.find(({ id }) => id === from);
  const isKept = scenarios.some((scenario) => isOfScenario(trial.values, scenario));
  const hasValues = tried.changed.length > 0;
  return (
    <>
      <TrialStrip
        worked={worked}
        trial={trial}
        tried={tried}
        quantity={props.quantity}
        onQuantity={props.onQuantity}
      />
      <TrialSection worked={worked} trial={trial} tried={tried} system={sheet.unitSystem}>
        {hasValues && hasOtherChoice && (
          <p className="trial-note">
            Keep “What is made” first, or go back to it: values are kept and taken over on the sheet as it is
            kept.
          </p>
        )}
        {hasValues && !hasOtherChoice && !isTakingOver && (
          <div className="trial-buttons">
            {isKept ? (
              <span className="trial-note">kept as a scenario</span>
            ) : (
              <KeepScenario
                sheetId={sheet.id}
                table={worked.figures}
                values={trial.values}
                from={source}
                onKept={({ id }) => onFrom(id)}
              />
            )}
            {canApply && <Button onPress={() => setIsTakingOver(true)}>Take over ...</Button>}
          </div>
        )}
        {isTakingOver && hasValues && (
          <TakeOver
            sheetId={sheet.id}
            etag={etag}
            tried={tried}
            system={sheet.unitSystem}
            onCancel={() => setIsTakingOver(false)}
            onDone={() => {
              setIsTakingOver(false);
              trial.take({});
              trial.setIsOn(false);
            }}
          />
        )}
      </TrialSection>
    </>
  );
}
