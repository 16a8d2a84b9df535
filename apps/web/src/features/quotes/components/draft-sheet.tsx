import { editQuoteDraft } from '@scantling/contracts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useBlocker } from '@tanstack/react-router';
import { useState } from 'react';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { notify } from '../../../components/toast.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { type Revision, revisionQuery } from '../api/get-quote.ts';
import { clientChoicesQuery, sheetChoicesQuery } from '../api/list-choices.ts';
import { useEditQuoteDraft } from '../api/quote-acts.ts';
import { draftErrors } from './draft-errors.ts';
import { LinesSection } from './lines-section.tsx';
import { OfferPictures } from './offered-pictures.tsx';
import { PicturesField } from './pictures-field.tsx';
import { quoteDifferences } from './quote-differences.ts';
import { bodyOf, draftOf, formProblems, quoteForm } from './quote-form.ts';
import { Reckoning } from './reckoning.tsx';
import { SaveQuote } from './save-quote.tsx';
import { SendSection, type Sent } from './send-section.tsx';
import { PriceTerms, ScheduleFields, TaxFields } from './terms-fields.tsx';
import { useDraftFigures } from './use-draft-figures.ts';
import { useQuoteForm } from './use-quote-form.ts';

interface DraftSheetProps {
  readonly revision: Revision;
  readonly etag: string | null;
  /** Draws what stands above the draft: heading and acts. */
  readonly head: React.ReactNode;
  readonly onSent: (sent: Sent) => void;
}

const NONE: readonly never[] = [];

const revisionIn = (search: object): unknown => Reflect.get(search, 'revision');

/** A draft while it is written: lines, terms, and what it comes to always in view. */
export function DraftSheet({ revision, etag, head, onSent }: DraftSheetProps) {
  const draft = useQuoteForm(revision, etag);
  const { form, isChanged, change } = draft;
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [theirs, setTheirs] = useState<{ value: Revision; etag: string | null } | null>(null);
  const clients = useQuery(clientChoicesQuery);
  const edit = useEditQuoteDraft(revision.id);
  const canEdit = useMayCall(editQuoteDraft);
  const queryClient = useQueryClient();
  const sheets = useQuery(sheetChoicesQuery).data;
  const problems = formProblems(form, sheets);
  const toMend =
    problems.fields.length + [...problems.lines.values()].reduce((sum, { size }) => sum + size, 0);
  const figures = useDraftFigures(form, chosen, toMend === 0);
  const errors = draftErrors(
    problems,
    { error: edit.error, lines: edit.variables?.body.draft.lines ?? NONE },
    { error: figures.error, lines: figures.asked.map(({ key }) => ({ id: key })) },
  );
  useBlocker({
    // Opening a working changes the address too, and leaves nothing.
    shouldBlockFn: ({ current, next }) =>
      isChanged &&
      (current.pathname !== next.pathname || revisionIn(current.search) !== revisionIn(next.search)) &&
      !window.confirm('Leave without saving? The changes stay in this window only.'),
    enableBeforeUnload: isChanged,
  });
  const readNewest = () => queryClient.fetchQuery({ ...revisionQuery(revision.id), staleTime: 0 });
  const startAnew = async (): Promise<void> => {
    const newest = await readNewest();
    edit.reset();
    setTheirs(null);
    draft.startFrom(newest.value, newest.etag);
  };
  const save = (): void =>
    edit.mutate(
      { body: bodyOf(form), etag: draft.etag },
      {
        onSuccess: (answer) => {
          queryClient.setQueryData(revisionQuery(revision.id).queryKey, answer);
          draft.isSaved(form, answer.value, answer.etag);
          notify('The draft is saved.');
        },
        onError: (error) => {
          if (error instanceof ApiProblem && error.status === 412) void readNewest().then(setTheirs);
        },
      },
    );
  const body = (
    <>
      {head}
      {figures.worked ? (
        <Reckoning worked={figures.worked} isStale={figures.isStale} />
      ) : (
        figures.error === null && toMend === 0 && <Loading label="Working out" />
      )}
      {figures.error !== null && (
        <ErrorNotice error={figures.error} errors={errors.unplaced} retry={figures.retry} />
      )}
      <LinesSection
        form={form}
        sheets={sheets ?? NONE}
        worked={figures.worked}
        canEdit={canEdit}
        chosen={chosen}
        onChosen={setChosen}
        undo={draft.undo}
        onLines={(lines, typing) => change({ lines }, typing)}
        errors={errors.lines}
      />
      <Section title="Whom and what for">
        <FieldGroup>
          <ComboBox
            label="Client"
            choices={clients.data ?? []}
            value={form.clientId}
            onChange={(clientId) => clientId !== null && change({ clientId })}
            error={errors.errorFor('clientId')}
          />
          <TextInput
            label="Title"
            value={form.title}
            onChange={(title) => change({ title })}
            error={errors.errorFor('title')}
          />
          <TextInput
            label="Before the lines"
            hint="A few words to the client"
            isMultiline
            value={form.intro}
            onChange={(intro) => change({ intro })}
            error={errors.errorFor('intro')}
          />
        </FieldGroup>
      </Section>
      <Section title="Prices and dates">
        <PriceTerms form={form} onChange={change} errorFor={errors.errorFor} />
      </Section>
      <Section title="How it is paid" note="shares add up to 100 %; the first is the deposit">
        <ScheduleFields form={form} onChange={change} errorFor={errors.errorFor} />
      </Section>
      <Section title="Taxes" note="which one applies is for the law and your accountant to say">
        <TaxFields form={form} onChange={change} errorFor={errors.errorFor} />
      </Section>
      <Section title="Terms and pictures">
        <TextInput
          label="Terms"
          isMultiline
          value={form.terms}
          onChange={(terms) => change({ terms })}
          error={errors.errorFor('terms')}
        />
        <PicturesField
          label="Pictures of the whole"
          pictures={form.pictures}
          onChange={(pictures) => change({ pictures })}
          error={errors.errorFor('pictures')}
        />
      </Section>
      {canEdit && (
        <SendSection
          revision={revision}
          etag={draft.etag}
          isChanged={isChanged}
          isWhole={form.lines.length > 0}
          onSent={onSent}
        />
      )}
      {isChanged && canEdit && (
        <SaveQuote
          isBroughtBack={draft.isBroughtBack}
          toMend={toMend}
          isPending={edit.isPending}
          error={edit.error}
          clash={theirs && quoteDifferences(form, quoteForm(theirs.value))}
          onSave={save}
          onDrop={() => void startAnew()}
          onKeepMine={() => {
            if (theirs) draft.goOnFrom(theirs.value, theirs.etag);
            setTheirs(null);
            edit.reset();
          }}
        />
      )}
    </>
  );
  // Wrapped from the beginning, so that no field is drawn anew, and loses what is open in it, when figures come.
  return (
    <OfferPictures draft={draftOf(form)} enquiryId={form.enquiryId}>
      <Figures table={figures.worked?.figures ?? {}}>{body}</Figures>
    </OfferPictures>
  );
}
