import type { WorkedQuote } from '@scantling/contracts';
import { useMemo, useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { EditGrid } from '../../../components/edit-grid/edit-grid.tsx';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import { Section } from '../../../components/sheet.tsx';
import type { SheetChoice } from '../api/list-choices.ts';
import { withFollowing } from './follow-cells.ts';
import { LineBeside } from './line-beside.tsx';
import { cell, DELIVERY, freshLine, type LineForm, linesOf } from './line-cells.ts';
import { lineColumns, originChoices } from './line-columns.ts';
import { lineFigures } from './line-figures.tsx';
import { furtherOf } from './line-further.tsx';
import type { LineErrors } from './line-problems.ts';
import type { QuoteForm } from './quote-form.ts';
import { ReckonWith } from './reckon-with.tsx';
import './quote.css';

interface LinesSectionProps {
  readonly form: QuoteForm;
  readonly sheets: readonly SheetChoice[];
  readonly worked: WorkedQuote | undefined;
  readonly canEdit: boolean;
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: readonly string[]) => void;
  readonly undo: GridUndo;
  /** `typing`: what letters are typed into that are one step together. */
  readonly onLines: (lines: readonly LineForm[], typing?: string) => void;
  readonly errors: LineErrors;
}

/** The lines of the draft as a grid; words and pictures of one line open below it. */
export function LinesSection(props: LinesSectionProps) {
  const { form, sheets, worked, canEdit, onLines, errors } = props;
  const { lines, currency, priceMode, taxes } = form;
  const [openKey, setOpenKey] = useState<string | null>(null);
  const origins = useMemo(() => originChoices(sheets), [sheets]);
  const figures = useMemo(() => lineFigures(worked), [worked]);
  const hasGroups = lines.some((line) => cell(line, 'taken') === 'alternate');
  const columns = useMemo(() => {
    const further = furtherOf(lines, canEdit ? setOpenKey : null);
    return lineColumns({ form: { currency, priceMode, taxes }, origins, hasGroups, further, figures });
  }, [lines, currency, priceMode, taxes, origins, hasGroups, figures, canEdit]);
  const tax = taxes[0]?.id ?? '';
  const put = (next: readonly LineForm[]): void => onLines(withFollowing(next, lines, sheets));
  const add = (cells: Readonly<Record<string, string>>): void => {
    const fresh = freshLine(tax);
    put([...lines, { ...fresh, cells: { ...fresh.cells, ...cells } }]);
  };
  const open = lines.find(({ key }) => key === openKey);
  const withOpen = (part: (line: LineForm) => Partial<LineForm>): readonly LineForm[] =>
    lines.map((line) => (line === open ? { ...line, ...part(line) } : line));
  return (
    <Section title="Lines" note="as the client reads them; cost and margin are yours alone">
      {lines.length === 0 && !canEdit ? (
        <p className="field-hint">None.</p>
      ) : (
        <EditGrid
          label="Lines"
          one="line"
          columns={columns}
          rows={lines}
          onRows={(rows) => put(linesOf(rows))}
          freshRow={(from) =>
            freshLine(
              tax,
              lines.find((line) => line.key === from?.key),
            )
          }
          errorAt={(row, column) => errors.get(row.key)?.get(column)}
          undo={props.undo}
          isReadOnly={!canEdit}
          hasHandles
          onDetails={(row) => setOpenKey(row.key)}
        />
      )}
      {open && canEdit && (
        <LineBeside
          key={open.key}
          line={open}
          onDetails={(details) =>
            onLines(
              withOpen((line) => ({ cells: { ...line.cells, details } })),
              `details of ${open.key}`,
            )
          }
          onPictures={(pictures) => onLines(withOpen(() => ({ pictures })))}
          onClose={() => setOpenKey(null)}
          error={errors.get(open.key)?.get('details')}
        />
      )}
      {canEdit && (
        <div className="quote-acts">
          <ComboBox
            label="Add a piece from a cost sheet"
            choices={sheets}
            value={null}
            onChange={(id) => id !== null && add({ from: id, quantity: '' })}
          />
          <Button
            isDisabled={lines.some((line) => cell(line, 'from') === DELIVERY)}
            onPress={() => add({ from: DELIVERY })}
          >
            Add delivery
          </Button>
        </div>
      )}
      <ReckonWith lines={lines} worked={worked} chosen={props.chosen} onChosen={props.onChosen} />
    </Section>
  );
}
