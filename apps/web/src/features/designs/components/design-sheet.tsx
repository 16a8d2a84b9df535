import { createCostSheet, editDesign } from '@scantling/contracts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useBlocker } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { PicturesSection } from '../../../components/pictures/pictures-section.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { notify } from '../../../components/toast.tsx';
import type { ApiAnswer } from '../../../lib/api-client.ts';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { designPictures } from '../api/design-pictures.ts';
import { useEditDesign } from '../api/edit-design.ts';
import { billFileAddress } from '../api/export-bill.ts';
import { type Design, designQuery } from '../api/get-design.ts';
import { billChoicesQuery } from '../api/list-bill-choices.ts';
import { billChoices } from './bill-columns.ts';
import { billDifferences } from './bill-differences.ts';
import { draftOf, inSystem } from './bill-draft.ts';
import { BILL_KINDS } from './bill-fields.ts';
import { BillSection } from './bill-section.tsx';
import { aboutDifferences, DESIGN_FIELDS, DesignFields } from './design-fields.tsx';
import { ImportSection } from './import-section.tsx';
import { ParameterSections } from './parameter-sections.tsx';
import { placeWords } from './place-words.ts';
import { readDraft } from './read-draft.ts';
import { RemoveDesign } from './remove-design.tsx';
import { RevisionsSection } from './revisions-section.tsx';
import { SaveDesign } from './save-design.tsx';
import { sizedCells } from './sized-cells.ts';
import { useDesignDraft } from './use-design-draft.ts';

interface DesignSheetProps {
  readonly design: Design;
  readonly etag: string | null;
}

/** A piece as drawn: its bill by kind, changed here and saved as a revision. */
export function DesignSheet({ design, etag }: DesignSheetProps) {
  const draft = useDesignDraft(design, etag);
  const { state, about, isChanged } = draft;
  const [theirs, setTheirs] = useState<ApiAnswer<Design> | null>(null);
  const edit = useEditDesign(design.id);
  const canEdit = useMayCall(editDesign);
  const canCost = useMayCall(createCostSheet);
  const queryClient = useQueryClient();
  const records = useQuery(billChoicesQuery).data;
  const reading = useMemo(() => readDraft(state, records), [state, records]);
  const { parameters } = reading.drawn;
  const choices = useMemo(
    () => billChoices(records, state.bill, parameters),
    [records, state.bill, parameters],
  );
  const [variant, setVariant] = useState<string | null>(null);
  const sizes = useMemo(
    () => sizedCells(reading, variant, state.unitSystem),
    [reading, variant, state.unitSystem],
  );
  useBlocker({
    shouldBlockFn: () =>
      isChanged && !window.confirm('Leave without saving? The changes stay in this window only.'),
    enableBeforeUnload: isChanged,
  });
  const { errorFor, unplaced } = fieldErrors(edit.error, DESIGN_FIELDS);
  const readNewest = () => queryClient.fetchQuery({ ...designQuery(design.id), staleTime: 0 });
  const startAnew = async (): Promise<void> => {
    const newest = await readNewest();
    edit.reset();
    setTheirs(null);
    draft.startFrom(newest.value, newest.etag);
  };
  const onRefused = async (error: Error): Promise<void> => {
    if (error instanceof ApiProblem && error.status === 412) setTheirs(await readNewest());
  };
  const save = (): void => {
    if (reading.whole === null) return;
    const body = { ...about, unitSystem: state.unitSystem, ...reading.whole, note: draft.note };
    edit.mutate(
      { body, etag: draft.etag },
      {
        onSuccess: ({ value, etag: saved }) => {
          draft.isSaved(value, saved);
          notify(`${value.name} is saved as revision ${value.version}.`);
        },
        onError: (error) => void onRefused(error),
      },
    );
  };
  const clash = theirs && [
    ...aboutDifferences({ ...about, unitSystem: state.unitSystem }, theirs.value),
    ...billDifferences(state, draftOf(theirs.value, state.unitSystem)),
  ];
  return (
    <Sheet>
      <SheetHeader
        title={about.name}
        path={<Link to="/designs">Designs</Link>}
        facts={[
          { label: 'Code', value: about.code },
          { label: 'Revision', value: isChanged ? `${draft.version}, changed` : draft.version },
          { label: 'Lengths', value: state.unitSystem === 'imperial' ? 'inches' : 'mm' },
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
      {about.description !== '' && <p className="sheet-lead">{about.description}</p>}
      <PicturesSection
        calls={designPictures}
        id={design.id}
        note="of the design with all its variants and revisions; kept at once, the cover stands in the list"
        emptyText="No pictures yet."
      />
      <ParameterSections
        state={state}
        errors={reading.errors}
        records={records}
        sizes={sizes}
        variant={variant}
        onVariant={setVariant}
        undo={draft.undo}
        canEdit={canEdit}
        onState={draft.change}
      />
      {BILL_KINDS.map((kind) => (
        <BillSection
          key={kind}
          kind={kind}
          state={state}
          errors={reading.errors}
          choices={choices}
          sizes={sizes}
          undo={draft.undo}
          canEdit={canEdit}
          onState={draft.change}
        />
      ))}
      {canEdit && (
        <>
          <ImportSection
            id={design.id}
            etag={draft.etag}
            design={design}
            isBlocked={isChanged}
            onApplied={() => void startAnew()}
          />
          <Section title="About the design">
            <DesignFields
              draft={{ ...about, unitSystem: state.unitSystem }}
              errorFor={errorFor}
              onChange={({ unitSystem, ...next }) => {
                draft.setAbout(next);
                if (unitSystem !== state.unitSystem) draft.change(inSystem(state, unitSystem));
              }}
            />
          </Section>
        </>
      )}
      <RevisionsSection design={design} etag={draft.etag} isBlocked={isChanged} />
      {isChanged && canEdit && (
        <SaveDesign
          revision={draft.version + 1}
          note={draft.note}
          onNote={draft.setNote}
          toMend={reading.count}
          undo={draft.undo}
          isBroughtBack={draft.isBroughtBack}
          isPending={edit.isPending}
          error={edit.error}
          unplaced={unplaced.map((one) => ({ ...one, field: placeWords(one.field, state) }))}
          onSave={save}
          onDrop={() => void startAnew()}
          clash={clash}
          onKeepMine={() => {
            if (theirs) draft.goOnFrom(theirs.value, theirs.etag);
            setTheirs(null);
            edit.reset();
          }}
        />
      )}
    </Sheet>
  );
}
