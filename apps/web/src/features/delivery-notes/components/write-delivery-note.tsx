import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import { Section } from '../../../components/sheet.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { localToday } from '../../../lib/local-today.ts';
import { useCreateDeliveryNote } from '../api/create-delivery-note.ts';
import type { OrderedLine } from '../api/list-delivery-notes.ts';
import { allThatIsLeft, goingAlong, quantityErrors } from './delivery-form.ts';
import { OrderedLines } from './ordered-lines.tsx';
import './delivery-notes.css';

const FIELDS: readonly GroupSpec[] = [
  {
    legend: 'What it says',
    fields: [
      { kind: 'date', name: 'deliveredOn', label: 'Handed over on', isRequired: true },
      { kind: 'text', name: 'orderNumber', label: 'The client’s order number' },
      {
        kind: 'lines',
        name: 'note',
        label: 'Note',
        hint: 'Stands above the lines: what follows later, who put it up.',
        isWide: true,
      },
    ],
  },
];

interface WriteDeliveryNoteProps {
  readonly quoteId: string;
  readonly lines: readonly OrderedLine[];
}

/** Writes the paper that goes along: which lines, and how many of each. */
export function WriteDeliveryNote({ quoteId, lines }: WriteDeliveryNoteProps) {
  const [quantities, setQuantities] = useState(() => allThatIsLeft(lines));
  const [values, setValues] = useState<FormValues>(() => ({
    deliveredOn: localToday(),
    orderNumber: '',
    note: '',
  }));
  const create = useCreateDeliveryNote(quoteId);
  const navigate = useNavigate();
  const going = goingAlong(lines, quantities);
  const wrong = quantityErrors(create.error, create.variables?.lines ?? []);
  const { errorFor, unplaced } = fieldErrors(create.error, [
    'deliveredOn',
    'orderNumber',
    'note',
    ...wrong.names,
  ]);
  return (
    <Section
      title="The next delivery note"
      note="Enter how many of each go along now; what stays blank follows later."
    >
      <form
        className="delivery-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          create.mutate(
            {
              deliveredOn: textOf(values, 'deliveredOn'),
              orderNumber: textOf(values, 'orderNumber'),
              note: textOf(values, 'note'),
              lines: going,
            },
            {
              onSuccess: ({ id }) =>
                void navigate({ to: '/delivery-notes/$deliveryNoteId', params: { deliveryNoteId: id } }),
            },
          );
        }}
      >
        {create.error !== null && <ErrorNotice error={create.error} errors={unplaced} />}
        <OrderedLines lines={lines} entry={{ quantities, onChange: setQuantities, errorFor: wrong.of }} />
        <div className="delivery-acts">
          <Button onPress={() => setQuantities(allThatIsLeft(lines))}>All that is left</Button>
          <Button onPress={() => setQuantities({})}>Clear</Button>
        </div>
        <FormFields groups={FIELDS} values={values} onChange={setValues} errorFor={errorFor} />
        <div className="delivery-acts">
          <Button type="submit" look="main" isPending={create.isPending} pendingText="Writing ...">
            Write the delivery note
          </Button>
        </div>
        <p className="field-hint">
          It gets a number and a paper to sign, without prices, and is not changed afterwards.
        </p>
      </form>
    </Section>
  );
}
