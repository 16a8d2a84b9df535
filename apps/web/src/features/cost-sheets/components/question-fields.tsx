import type { SheetResultName } from '@scantling/contracts';
import { Select } from '../../../components/select.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import { piecesWords } from './class-rows.ts';
import { RESULT_LABELS } from './result-words.ts';
import type { AskedSheet } from './use-asked-sheet.ts';

const NOTES: Partial<Record<SheetResultName, string>> = {
  netPrice: 'after discount, before tax',
  cost: 'all it costs, your hours and overhead included',
  margin: 'profit as a share of the net price',
  hourlyEarnings: 'what each of your hours earns',
  floorPrice: 'at which you earn 0 an hour',
};

interface QuestionFieldsProps {
  readonly asked: AskedSheet;
  readonly label: string;
  readonly errorFor: FieldErrors['errorFor'];
  readonly onResult: (name: string) => void;
  readonly onPieces: (pieces: string) => void;
}

/** Which result is asked about, and at which number of pieces. */
export function QuestionFields({ asked, label, errorFor, onResult, onPieces }: QuestionFieldsProps) {
  const { results, result, column, worked } = asked;
  const isOne = column.quantity === 1;
  return (
    <>
      <Select
        label={label}
        choices={results
          .filter(({ name }) => !(isOne && name.startsWith('piece')))
          .map(({ name }) => ({ id: name, label: RESULT_LABELS[name], note: NOTES[name] }))}
        value={result.name}
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
