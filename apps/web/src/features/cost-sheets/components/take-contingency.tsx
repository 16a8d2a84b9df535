import { editCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney, formatPercent } from '../../../lib/format.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditCostSheet } from '../api/edit-cost-sheet.ts';
import { choiceOf } from './design-choice.ts';
import { contingencyShare } from './risk-words.ts';
import { type AskedSheet, figureOf } from './use-asked-sheet.ts';
import './question.css';

interface TakeContingencyProps {
  readonly asked: AskedSheet;
  /** Cost that is not exceeded in the share of runs chosen, as decimal text. */
  readonly percentile: string;
  /** The share of runs, as decimal text. */
  readonly share: string;
}

/** Takes the contingency of the runs into the terms of the sheet, in place of the percentage that stands there. */
export function TakeContingency({ asked, percentile, share }: TakeContingencyProps) {
  const { locale } = useLocale();
  const { sheet, etag, worked, column } = asked;
  const edit = useEditCostSheet(sheet.id);
  const canEdit = useMayCall(editCostSheet);
  const { costOfProduction, contingency } = column.classes;
  const standing = decimal(figureOf(worked.figures, contingency).value);
  const before = decimal(figureOf(worked.figures, costOfProduction).value).minus(standing);
  const wanted = contingencyShare(percentile, before);
  const amount = wanted === null ? '0' : decimal(percentile).minus(before).toFixed();
  const money = (value: string): string => formatMoney(value, worked.currency, { locale });
  const percent = (value: string): string => formatPercent(value, 1, { locale, places: 1 });
  const taken = wanted?.toFixed() ?? '0';
  const isTaken = decimal(sheet.terms.contingency).minus(taken).abs().lte('1e-9');
  const take = (): void => {
    const { title, designId, clientId, basis, onDate, quantities, terms } = sheet;
    edit.mutate({
      body: {
        title,
        designId,
        clientId,
        basis,
        onDate,
        quantities: [...quantities],
        terms: { ...terms, contingency: taken },
        ...choiceOf(sheet),
      },
      etag,
    });
  };
  return (
    <Section title="Contingency" note="what is added for what may come">
      <p className="question-answer">
        Without contingency this sheet costs {money(before.toFixed())}.{' '}
        {wanted === null
          ? `That covers ${percent(share)} of the runs already: no contingency is needed.`
          : `To cover ${percent(share)} of the runs, ${money(amount)} has to be added, which is ${percent(taken)} of it.`}
      </p>
      <p>
        The terms add {percent(sheet.terms.contingency)} now, {money(standing.toFixed())}. What the runs say
        stands in the place of that percentage, never beside it; other numbers of pieces get the same share.
      </p>
      {edit.isError && <ErrorNotice error={edit.error} />}
      {canEdit && (
        <div className="question-foot">
          {isTaken ? (
            <p role="status">
              The terms hold this contingency.{' '}
              <Link to="/cost-sheets/$sheetId" params={{ sheetId: sheet.id }}>
                To the cost sheet
              </Link>
            </p>
          ) : (
            <Button look="main" isPending={edit.isPending} pendingText="Saving ..." onPress={take}>
              Put {percent(taken)} into the terms, in place of {percent(sheet.terms.contingency)}
            </Button>
          )}
        </div>
      )}
    </Section>
  );
}
