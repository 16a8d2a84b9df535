import type { WorkedQuote } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import type { FieldMessage } from '../../../components/field.tsx';
import { Section } from '../../../components/sheet.tsx';
import { sheetChoicesQuery } from '../api/list-choices.ts';
import { LineFields } from './line-form.tsx';
import { LineRows } from './line-rows.tsx';
import { freshLine, type LineForm, movedLines, type QuoteForm } from './quote-form.ts';
import './quote.css';

interface LinesSectionProps {
  readonly form: QuoteForm;
  readonly worked: WorkedQuote | undefined;
  readonly canEdit: boolean;
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: readonly string[]) => void;
  readonly onChange: (part: Partial<QuoteForm>) => void;
  readonly errorFor: (field: string) => FieldMessage | undefined;
  /** All fields that are to mend. */
  readonly fields: readonly string[];
}

/** The chosen lines after one is taken or left; of a group the one taken last stays. */
function nextChosen(lines: readonly LineForm[], chosen: readonly string[], id: string, isChosen: boolean) {
  const line = lines.find((one) => one.id === id);
  const isRival = (other: string): boolean =>
    other === id ||
    (line?.choice === 'alternate' &&
      lines.some((one) => one.id === other && one.choice === 'alternate' && one.group === line.group));
  const others = chosen.filter((other) => !isRival(other));
  return isChosen ? [...others, id] : others;
}

/** The lines of the draft, and the form of the one that is open. */
export function LinesSection(props: LinesSectionProps) {
  const { form, worked, canEdit, chosen, onChosen, onChange, errorFor, fields } = props;
  const { lines } = form;
  const [openId, setOpenId] = useState<string | null>(null);
  const sheets = useQuery(sheetChoicesQuery).data ?? [];
  const at = lines.findIndex(({ id }) => id === openId);
  const open = lines[at];
  const put = (part: Partial<LineForm>): void => {
    const sheet = sheets.find(({ id }) => id === part.costSheetId);
    // A line without words of its own is named after the design it is made from.
    const named = sheet && open?.description === '' ? { description: sheet.designName } : {};
    onChange({ lines: lines.map((line) => (line.id === openId ? { ...line, ...part, ...named } : line)) });
  };
  const add = (kind: LineForm['kind']): void => {
    const line = freshLine(kind, form);
    onChange({ lines: [...lines, line] });
    setOpenId(line.id);
  };
  return (
    <Section
      title="Lines"
      note="press a line to change it; mark options to see what the quote comes to with them"
    >
      {lines.length === 0 ? (
        <p className="quiet">No lines yet. Add a piece from a cost sheet, or a line of your own.</p>
      ) : (
        <LineRows
          lines={lines}
          worked={worked}
          chosen={chosen}
          onChosen={(id, isChosen) => onChosen(nextChosen(lines, chosen, id, isChosen))}
          openId={canEdit ? openId : null}
          onOpen={setOpenId}
          onMove={(from, to) => onChange({ lines: movedLines(lines, from, to) })}
          hasProblem={(place) => fields.some((field) => field.startsWith(`lines.${place}.`))}
          form={
            open && (
              <LineFields
                line={open}
                taxes={form.taxes}
                sheets={sheets}
                currency={form.currency}
                priceMode={form.priceMode}
                onChange={put}
                onRemove={() => {
                  onChange({ lines: lines.filter(({ id }) => id !== open.id) });
                  setOpenId(null);
                }}
                errorFor={(field) => errorFor(`lines.${at}.${field}`)}
              />
            )
          }
        />
      )}
      {canEdit && (
        <div className="quote-acts">
          <Button onPress={() => add('cost-sheet')}>Add a piece from a cost sheet</Button>
          <Button onPress={() => add('free')}>Add a line of your own</Button>
          <Button onPress={() => add('delivery')}>Add delivery</Button>
        </div>
      )}
    </Section>
  );
}
