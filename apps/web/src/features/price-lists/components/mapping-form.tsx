import { PRICE_COLUMNS, type PriceColumn } from '@scantling/costing';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Select } from '../../../components/select.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { type PriceImport, type PriceMapping, useMapPriceImport } from '../api/price-import-calls.ts';
import { UNIT_CHOICES } from './change-words.ts';

const NONE = '';
const NEEDED: readonly PriceColumn[] = ['code', 'price', 'unit'];

/** Which of the file's columns is which of ours; kept for the supplier. */
export function MappingForm({ priceImport, onDone }: { priceImport: PriceImport; onDone?: () => void }) {
  const [columns, setColumns] = useState<PriceMapping['columns']>(priceImport.mapping?.columns ?? {});
  const [unit, setUnit] = useState<string>(priceImport.mapping?.unit ?? NONE);
  const save = useMapPriceImport(priceImport.id);
  const names = PRICE_COLUMNS.map((column) => `columns.${column}`);
  const { errorFor, unplaced } = fieldErrors(save.error, [...names, 'unit']);
  const heads = [
    { id: NONE, label: 'not in the file' },
    ...[...new Set(priceImport.headers)]
      .filter((head) => head !== '')
      .map((head) => ({ id: head, label: head })),
  ];
  const missing = (column: PriceColumn) =>
    NEEDED.includes(column) && !columns[column] && !(column === 'unit' && unit !== NONE)
      ? { message: 'Needed.', mend: 'Choose the column of the file that holds it.' }
      : undefined;
  return (
    <form
      className="record-form"
      onSubmit={(event) => {
        event.preventDefault();
        const chosen = UNIT_CHOICES.find(({ id }) => id === unit)?.id;
        const filled = Object.fromEntries(Object.entries(columns).filter(([, head]) => head !== NONE));
        save.mutate(
          { columns: filled, ...(chosen === undefined ? {} : { unit: chosen }) },
          { onSuccess: () => onDone?.() },
        );
      }}
    >
      {save.isError && <ErrorNotice error={save.error} errors={unplaced} />}
      <FieldGroup>
        {PRICE_COLUMNS.map((column) => (
          <Select
            key={column}
            label={column}
            choices={heads}
            value={columns[column] ?? NONE}
            onChange={(head) => setColumns({ ...columns, [column]: head })}
            error={errorFor(`columns.${column}`) ?? missing(column)}
          />
        ))}
        <Select
          label="Unit of all rows, where no column says it"
          choices={[{ id: NONE, label: 'each row says it' }, ...UNIT_CHOICES]}
          value={unit}
          onChange={setUnit}
          error={errorFor('unit')}
        />
      </FieldGroup>
      <div className="form-acts">
        <Button type="submit" look="main" isPending={save.isPending} pendingText="Reading ...">
          Read with these columns
        </Button>
        {onDone && <Button onPress={onDone}>Leave as it is</Button>}
      </div>
    </form>
  );
}
