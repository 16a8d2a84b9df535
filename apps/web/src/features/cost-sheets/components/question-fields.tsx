import type { SheetResultName } from '@scantling/contracts';
import { Select } from '../../../components/select.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import { piecesWords } from './class-rows.ts';
import { RESULT_LABELS } from './result-words.ts';
import { HELD } from './solve-question.ts';
import type { AskedSheet } from './use-asked-sheet.ts';

const NOTES: Partial<Record<SheetResultName, string>> = {
  netPrice: 'after discount, before tax',
  cost: 'all it costs, your hours and overhead included',
  margin: 'profit as a share of the net price',
  hourlyEarnings: 'what each of your hours earns',
  floorPrice: 'at which you earn 0 an hour',
};

const HELD_CHOICE = {
  id: HELD,
  label: 'Margin, the price held',
  note: 'what the price as it stands leaves while the cost moves; 0 is where nothing is left',
};

interface QuestionFieldsProps {
  readonly asked: AskedSheet;
  readonly label: string;
  readonly errorFor: FieldErrors['errorFor'];
  /** Set where the margin left by the price as it stands can be asked for too: whether it is. */
  readonly isHeld?: boolean;
  readonly onResult: (name: string) => void;
  readonly onPieces: (pieces: string) => void;
}

/** Which result is asked about, and at which number of pieces. */
export function QuestionFields(props: QuestionFieldsProps) {
  const { asked, label, isHeld, errorFor, onResult, onPieces } = props;
  const { results, result, column, worked } = asked;
  const isOne = column.quantity === 1;
  const choices = results
    .filter(({ name }) => !(isOne && name.startsWith('piece')))
    .map(({ name }) => ({ id: name as string, label: RESULT_LABELS[name], note: NOTES[name] }));
  return (
    <>
      <Select
        label={label}
        choices={isHeld === undefined ? choices : [...choices, HELD_CHOICE]}
        value={isHeld === true ? HELD : result.name}
        onChange={onResult}
        error={errorFor('result')}
      />
      {worked.columns.length > 1 && (
        <Select
          label="For"
          choices={worked.columns.map(({ quantity }) => ({
            id: String(quantity),
            label: piecesWords(quantity),
          }))}
          value={String(column.quantity)}
          onChange={onPieces}
          error={errorFor('quantity')}
        />
      )}
    </>
  );
}
