import { PRICE_COLUMNS, type PriceColumn } from '@scantling/costing';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ColumnMatch } from '../../../components/column-match.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Select } from '../../../components/select.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { type PriceImport, type PriceMapping, useMapPriceImport } from '../api/price-import-calls.ts';
import { UNIT_CHOICES } from './change-words.ts';
import '../../../components/record-editor/record-editor.css';

const NONE = '';
const NEEDED: readonly PriceColumn[] = ['code', 'price', 'unit'];

/** Which of the file's columns is which of ours; kept for the supplier. */
export function MappingForm({ priceImport, onDone }: { priceImport: PriceImport; onDone?: () => void }) {
  const [columns, setColumns] = useState<PriceMapping['columns']>(priceImport.mapping?.columns ?? {});
  const [unit, setUnit] = useState<string>(priceImport.mapping?.unit ?? NONE);
  const save = useMapPriceImport(priceImport.id);
  const names = PRICE_COLUMNS.map((column) => `columns.${column}`);
  const { errorFor, unplaced } = fieldErrors(save.error, [...names, 'unit']);
  const needed = NEEDED.filter((column) => column !== 'unit' || unit === NONE);
  return (
    <form
      className="record-form"
      onSubmit={(event) => {
        event.preventDefault();
        const chosen = UNIT_CHOICES.find(({ id }) => id === unit)?.id;
        save.mutate(
          { columns, ...(chosen === undefined ? {} : { unit: chosen }) },
          { onSuccess: () => onDone?.() },
        );
      }}
    >
      {save.isError && <ErrorNotice error={save.error} errors={unplaced} />}
      <ColumnMatch
        columns={PRICE_COLUMNS}
        headers={priceImport.headers}
        chosen={columns}
        onChange={setColumns}
        needed={needed}
        errorFor={(column) => errorFor(`columns.${column}`)}
      >
        <Select
          label="Unit of all rows, where no column says it"
          choices={[{ id: NONE, label: 'each row says it' }, ...UNIT_CHOICES]}
          value={unit}
          onChange={setUnit}
          error={errorFor('unit')}
        />
      </ColumnMatch>
      <div className="form-acts">
        <Button type="submit" look="main" isPending={save.isPending} pendingText="Reading ...">
          Read with these columns
        </Button>
        {onDone && <Button onPress={onDone}>Leave as it is</Button>}
      </div>
    </form>
  );
}
