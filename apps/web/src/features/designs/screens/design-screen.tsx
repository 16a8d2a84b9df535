import { createCostSheet, editDesign } from '@scantling/contracts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useBlocker, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { notify } from '../../../components/toast.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditDesign } from '../api/edit-design.ts';
import { billFileAddress } from '../api/export-bill.ts';
import { type Design, designQuery } from '../api/get-design.ts';
import { BILL_KINDS } from '../components/bill-fields.ts';
import { BillSection } from '../components/bill-section.tsx';
import { DESIGN_FIELDS, DesignFields } from '../components/design-fields.tsx';
import { ImportSection } from '../components/import-section.tsx';
import { RemoveDesign } from '../components/remove-design.tsx';
import { SaveDesign } from '../components/save-design.tsx';

export function DesignScreen() {
  const { designId = '' } = useParams({ strict: false });
  const design = useQuery(designQuery(designId));
  if (design.data) return <DesignSheet key={designId} design={design.data.value} etag={design.data.etag} />;
  return (
    <Sheet>
      <SheetHeader title="Design" path={<Link to="/designs">Designs</Link>} />
      {design.isPending && <Loading />}
      {design.isError && <ErrorNotice error={design.error} retry={() => void design.refetch()} />}
    </Sheet>
  );
}

interface DesignSheetProps {
  readonly design: Design;
  readonly etag: string | null;
}

type Changed = Pick<Design, 'code' | 'name' | 'description' | 'unitSystem' | 'bill'>;

/** A piece as drawn: its bill by kind, changed here and saved as a revision. */
function DesignSheet({ design, etag }: DesignSheetProps) {
  const [changed, setChanged] = useState<Changed | null>(null);
  const edit = useEditDesign(design.id);
  const canEdit = useMayCall(editDesign);
  const canCost = useMayCall(createCostSheet);
  const queryClient = useQueryClient();
  useBlocker({
    shouldBlockFn: () => changed !== null && !window.confirm('Leave without saving what was changed?'),
    enableBeforeUnload: changed !== null,
  });
  const { code, name, description, unitSystem, bill } = changed ?? design;
  const shown: Changed = { code, name, description, unitSystem, bill };
  const refused = fieldErrors(edit.error, DESIGN_FIELDS);
  const readNewest = () => queryClient.fetchQuery({ ...designQuery(design.id), staleTime: 0 });
  const takeNewest = (): void => {
    void readNewest().then(() => {
      edit.reset();
      setChanged(null);
    });
  };
  const save = (note: string, onto: string | null): void => {
    edit.mutate(
      { body: { ...shown, note }, etag: onto },
      {
        onSuccess: ({ value }) => {
          setChanged(null);
          notify(`${value.name} is saved as revision ${value.version}.`);
        },
      },
    );
  };
  return (
    <Sheet>
      <SheetHeader
        title={name}
        path={<Link to="/designs">Designs</Link>}
        facts={[
          { label: 'Code', value: code },
          { label: 'Revision', value: changed === null ? design.version : `${design.version}, changed` },
          { label: 'Lengths', value: unitSystem === 'imperial' ? 'inches' : 'mm' },
          { label: 'Changed', value: design.updatedAt.slice(0, 10) },
        ]}
        actions={
          <>
            {canCost && (
              <Link to="/cost-sheets/new" search={{ designId: design.id }} className="button button-main">
                Make a cost sheet
              </Link>
            )}
            <a className="button button-plain" href={billFileAddress(design.id, 'csv')} download>
              Bill as CSV
            </a>
            <a className="button button-plain" href={billFileAddress(design.id, 'xlsx')} download>
              Bill as XLSX
            </a>
            {canEdit && <RemoveDesign id={design.id} etag={etag} name={design.name} />}
          </>
        }
      />
      {design.description !== '' && changed === null && <p className="sheet-lead">{design.description}</p>}
      {changed !== null && (
        <SaveDesign
          bill={bill}
          revision={design.version + 1}
          isPending={edit.isPending}
          error={edit.error}
          onSave={(note) => save(note, etag)}
          onTakeNewest={takeNewest}
          onSaveOver={(note) => void readNewest().then((newest) => save(note, newest.etag))}
        />
      )}
      {BILL_KINDS.map((kind) => (
        <BillSection
          key={kind}
          kind={kind}
          bill={bill}
          system={unitSystem}
          canEdit={canEdit}
          onBill={(next) => setChanged({ ...shown, bill: next })}
        />
      ))}
      {canEdit && (
        <>
          <ImportSection id={design.id} etag={etag} onApplied={takeNewest} />
          <Section title="About the design">
            <DesignFields
              draft={shown}
              errorFor={refused.errorFor}
              onChange={(next) => setChanged({ ...shown, ...next })}
            />
          </Section>
        </>
      )}
    </Sheet>
  );
}
