import { addEnquiryHours, type EnquiryHoursRecord } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { formatNumber } from '../../../lib/format.ts';
import { localToday } from '../../../lib/local-today.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { enquiryHoursQuery, useAddEnquiryHours, useRemoveEnquiryHours } from '../api/enquiry-hours.ts';
import { peopleChoicesQuery } from '../api/list-choices.ts';
import './enquiry.css';

interface HoursSectionProps {
  readonly enquiryId: string;
  /** All hours together, as decimal text. */
  readonly total: string;
}

/** Hours spent on an enquiry before anybody pays for them; those on lost ones go to overhead. */
export function HoursSection({ enquiryId, total }: HoursSectionProps) {
  const { locale } = useLocale();
  const hours = useQuery(enquiryHoursQuery(enquiryId));
  const remove = useRemoveEnquiryHours(enquiryId);
  const mayEdit = useMayCall(addEnquiryHours);
  const columns: DataColumn<EnquiryHoursRecord>[] = [
    { id: 'onDate', header: 'Day', text: ({ onDate }) => onDate, total: 'All hours' },
    { id: 'personName', header: 'Who', text: ({ personName }) => personName },
    {
      id: 'hours',
      header: 'Hours',
      isNumeric: true,
      text: (entry) => formatNumber(entry.hours, 2, { locale, places: 2 }),
      sortBy: (entry) => decimal(entry.hours),
      total: formatNumber(total, 2, { locale, places: 2 }),
    },
    { id: 'note', header: 'What for', text: ({ note }) => note },
    ...(mayEdit
      ? [
          {
            id: 'remove',
            header: 'Take back',
            sortBy: false,
            text: () => '',
            render: (entry: EnquiryHoursRecord) => (
              <Button
                look="quiet"
                aria-label={`Take back ${entry.hours} h of ${entry.onDate}`}
                onPress={() => remove.mutate(entry.id)}
              >
                Take back
              </Button>
            ),
          } as const,
        ]
      : []),
  ];
  return (
    <Section title="Hours spent" note="Hours on lost enquiries come back through overhead.">
      {hours.isPending && <Loading />}
      {hours.isError && <ErrorNotice error={hours.error} retry={() => void hours.refetch()} />}
      {remove.isError && <ErrorNotice error={remove.error} />}
      {hours.data && hours.data.length > 0 && (
        <DataTable label="Hours spent" columns={columns} rows={hours.data} rowId={({ id }) => id} />
      )}
      {hours.data?.length === 0 && <p className="enquiry-note">No hours entered yet.</p>}
      {mayEdit && <NewHours enquiryId={enquiryId} />}
    </Section>
  );
}

const FIELDS = ['onDate', 'personId', 'hours', 'note'];

function NewHours({ enquiryId }: { readonly enquiryId: string }) {
  const fresh = { onDate: localToday(), hours: '', note: '' };
  const [draft, setDraft] = useState(fresh);
  const [personId, setPersonId] = useState<string | null>(null);
  const [idempotencyKey, setIdempotencyKey] = useState(newIdempotencyKey);
  const people = useQuery(peopleChoicesQuery);
  const add = useAddEnquiryHours(enquiryId);
  const { errorFor, unplaced } = fieldErrors(add.error, FIELDS);
  const change = (next: Partial<typeof draft>): void => {
    setDraft({ ...draft, ...next });
    if (add.isError) setIdempotencyKey(newIdempotencyKey());
  };
  const who = personId ?? people.data?.[0]?.id ?? null;
  return (
    <form
      className="enquiry-hours"
      onSubmit={(event) => {
        event.preventDefault();
        const body = { ...draft, hours: plainDecimal(draft.hours), personId: who ?? '' };
        add.mutate(
          { body, idempotencyKey },
          {
            onSuccess: () => {
              setDraft(fresh);
              setIdempotencyKey(newIdempotencyKey());
            },
          },
        );
      }}
    >
      {add.isError && unplaced.length > 0 && <ErrorNotice error={add.error} errors={unplaced} />}
      <FieldGroup>
        <TextInput
          label="Day"
          type="date"
          value={draft.onDate}
          onChange={(onDate) => change({ onDate })}
          error={errorFor('onDate')}
        />
        <Select
          label="Who"
          choices={people.data ?? []}
          value={who}
          onChange={setPersonId}
          error={errorFor('personId')}
        />
        <TextInput
          label="Hours"
          isNumeric
          suffix="h"
          value={draft.hours}
          onChange={(hours) => change({ hours })}
          error={errorFor('hours')}
        />
        <TextInput
          label="What for"
          value={draft.note}
          onChange={(note) => change({ note })}
          error={errorFor('note')}
        />
      </FieldGroup>
      <Button type="submit" isPending={add.isPending} pendingText="Entering ...">
        Enter the hours
      </Button>
    </form>
  );
}
