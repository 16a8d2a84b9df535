import { useQuery } from '@tanstack/react-query';
import { type RecordCalls, useRemoveRecord } from '../../lib/record-calls.ts';
import { useMayCall } from '../../lib/use-session.ts';
import { ErrorNotice } from '../notices.tsx';
import { Loading } from '../progress.tsx';
import { Section, Sheet, SheetHeader, type TitleBlockFact } from '../sheet.tsx';
import { notify } from '../toast.tsx';
import { RecordForm, type RecordFormProps } from './record-form.tsx';
import { RemoveAct } from './remove-act.tsx';

interface RecordSheetProps<Value extends { readonly id: string; readonly name: string }>
  extends Pick<RecordFormProps<Value>, 'groups' | 'toValues' | 'toInput' | 'id'> {
  readonly calls: RecordCalls<Value>;
  /** Link back to the list. */
  readonly path: React.ReactNode;
  /** "New supplier" */
  readonly newTitle: string;
  /** What removing takes along. */
  readonly consequence: string;
  readonly facts?: (record: Value) => readonly TitleBlockFact[];
  /** What else can be done with it; stands under the heading. */
  readonly actions?: (record: Value) => React.ReactNode;
  readonly onCreated: (record: Value) => void;
  readonly onRemoved: () => void;
  /** More of the record, above its fields or below. */
  readonly above?: (record: Value) => React.ReactNode;
  readonly below?: (record: Value) => React.ReactNode;
}

/** The sheet of one record: what it is, its fields, and removing it. */
export function RecordSheet<Value extends { readonly id: string; readonly name: string }>(
  props: RecordSheetProps<Value>,
) {
  const { calls, id } = props;
  const read = useQuery({ ...calls.recordQuery(id ?? ''), enabled: id !== null });
  const remove = useRemoveRecord(calls, id ?? '');
  const mayEdit = useMayCall(calls.contracts.edit);
  const record = read.data?.value;
  const form = (answer: RecordFormProps<Value>['read']) => (
    <RecordForm
      key={id ?? 'new'}
      calls={calls}
      id={id}
      read={answer}
      readAgain={async () => (await read.refetch()).data}
      groups={props.groups}
      toValues={props.toValues}
      toInput={props.toInput}
      isReadOnly={!mayEdit}
      onSaved={(saved) => {
        if (id === null) props.onCreated(saved);
      }}
      acts={
        answer !== null &&
        mayEdit && (
          <RemoveAct
            title={`Remove ${answer.value.name}?`}
            consequence={props.consequence}
            isPending={remove.isPending}
            error={remove.error}
            onRemove={() =>
              remove.mutate(read.data?.etag ?? null, {
                onSuccess: () => {
                  notify(`${answer.value.name} is removed`);
                  props.onRemoved();
                },
              })
            }
          />
        )
      }
    />
  );
  if (id === null) {
    return (
      <Sheet>
        <SheetHeader title={props.newTitle} path={props.path} />
        {form(null)}
      </Sheet>
    );
  }
  return (
    <Sheet>
      <SheetHeader
        title={record?.name ?? '…'}
        path={props.path}
        facts={record && props.facts ? props.facts(record) : []}
        actions={record && props.actions?.(record)}
      />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {record !== undefined && read.data !== undefined && (
        <>
          {props.above?.(record)}
          {props.above || props.below ? <Section title="Record">{form(read.data)}</Section> : form(read.data)}
          {props.below?.(record)}
        </>
      )}
    </Sheet>
  );
}
