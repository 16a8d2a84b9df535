import { takeBackOwnValue, type WorkedCostSheet } from '@scantling/contracts';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import type { CostSheetRecord } from '../api/get-cost-sheet.ts';
import { useTakeBackOwnValue } from '../api/take-back-own-value.ts';
import './trial.css';

interface OwnValuesProps {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
  readonly worked: WorkedCostSheet | undefined;
}

/** The values that stand on this sheet alone, each with the way back to the record; nothing where there are none. */
export function OwnValuesSection({ sheet, etag, worked }: OwnValuesProps) {
  const { locale } = useLocale();
  const takeBack = useTakeBackOwnValue(sheet.id);
  const canTakeBack = useMayCall(takeBackOwnValue);
  if (sheet.ownValues.length === 0) return null;
  return (
    <Section title="Own values" note="they stand on this sheet alone, in place of what the records say">
      {takeBack.isError && <ErrorNotice error={takeBack.error} />}
      <div className="trial-table-frame">
        <table className="trial-table">
          <caption className="visually-hidden">Own values</caption>
          <thead>
            <tr>
              <th scope="col">Input</th>
              <th scope="col" className="numeric">
                Own value
              </th>
              <th scope="col">
                <span className="visually-hidden">Acts</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {sheet.ownValues.map(({ leaf, label, value, by, on }) => {
              const node = worked?.figures[leaf];
              return (
                <tr key={leaf}>
                  <th scope="row">
                    {label}
                    <span className="trial-note">{node?.source?.text ?? `entered by ${by} on ${on}`}</span>
                  </th>
                  <td className="numeric">
                    {node === undefined ? value : leafWords(node, value, sheet.unitSystem, locale)}
                  </td>
                  <td>
                    {canTakeBack && (
                      <Button
                        look="quiet"
                        aria-label={`Take back the own value for ${label}`}
                        isPending={takeBack.isPending && takeBack.variables.leaf === leaf}
                        onPress={() => takeBack.mutate({ leaf, etag })}
                      >
                        Take back
                      </Button>
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </Section>
  );
}
