import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { FileDrop } from '../../../components/file-drop.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { PasteArea } from '../../../components/paste-area.tsx';
import { Loading } from '../../../components/progress.tsx';
import { shownNames } from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { Tabs } from '../../../components/tabs.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { localToday } from '../../../lib/local-today.ts';
import { toTabSeparated } from '../../../lib/tab-separated.ts';
import { suppliersQuery } from '../api/list-suppliers.ts';
import { useStartPriceImport } from '../api/price-import-calls.ts';
import { freshTerms, termsGroups, termsOf } from '../components/import-terms.ts';

const COLUMNS = 'code, description, material, unit, price, from, break kind, pack, minimum, lead days';

/** A price list on its way in: whose, from when, and the file or the pasted rows. */
export function StartImportScreen() {
  const { supplier = '' } = useSearch({ strict: false });
  const navigate = useNavigate();
  const suppliers = useQuery(suppliersQuery);
  const [values, setValues] = useState(() => freshTerms(supplier, localToday()));
  const start = useStartPriceImport();
  const choices = (suppliers.data ?? []).map(({ id, name, code }) => ({ id, label: name, note: code }));
  const groups = termsGroups(choices);
  const names = shownNames(groups, values);
  // A file's terms travel in the address, where the API puts "query." before a field's name.
  const { errorFor, unplaced } = fieldErrors(start.error, [
    ...names,
    ...names.map((name) => `query.${name}`),
  ]);
  const send = (from: File | string): void =>
    start.mutate(
      { terms: termsOf(values), from },
      {
        onSuccess: ({ id }) =>
          void navigate({ to: '/price-lists/imports/$importId', params: { importId: id } }),
      },
    );
  return (
    <Sheet>
      <SheetHeader title="Import a price list" path={<Link to="/price-lists">Price lists</Link>} />
      {suppliers.isPending && <Loading />}
      {suppliers.isError && <ErrorNotice error={suppliers.error} retry={() => void suppliers.refetch()} />}
      {suppliers.data?.length === 0 && (
        <p>
          There is no supplier yet. <Link to="/suppliers/new">Enter the supplier first</Link>
        </p>
      )}
      {suppliers.isSuccess && suppliers.data.length > 0 && (
        <div className="record-form">
          {start.isError && <ErrorNotice error={start.error} errors={unplaced} />}
          <FormFields
            groups={groups}
            values={values}
            onChange={setValues}
            errorFor={(name) => errorFor(name) ?? errorFor(`query.${name}`)}
          />
          <Section title="Its rows" note="Nothing changes before you have seen the preview.">
            {start.isPending && <Loading label="Sending" />}
            <Tabs
              label="How the rows come"
              items={[
                {
                  id: 'file',
                  label: 'File',
                  content: (
                    <FileDrop
                      label="Price list as CSV or XLSX"
                      endings={['.csv', '.tsv', '.txt', '.xlsx']}
                      onFile={send}
                      isDisabled={start.isPending}
                    />
                  ),
                },
                {
                  id: 'paste',
                  label: 'Paste',
                  content: (
                    <PasteArea
                      label="Rows out of a spreadsheet, with their heads"
                      actText="Read the rows"
                      onCells={(cells) => send(toTabSeparated(cells))}
                    />
                  ),
                },
              ]}
            />
            <p className="field-hint">
              Needed: code, price and unit. Known columns: {COLUMNS}. A supplier's own heads are matched once
              and remembered.
            </p>
          </Section>
        </div>
      )}
    </Sheet>
  );
}
