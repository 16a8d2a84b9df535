import type { Mail } from '@scantling/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useResendMail } from '../api/resend-mail.ts';
import '../../../components/record-editor/record-editor.css';

const NOTES: Readonly<Record<Mail['state'], string>> = {
  waiting: 'It is tried at once. To another address it goes as a copy; hold this one back then.',
  sending: 'It is being sent just now.',
  sent: 'It goes out once more, as a new copy; what was sent stays as it is.',
  failed: 'It is tried at once; to another address it goes as a copy.',
  cancelled: 'It goes out after all.',
};

/** Sends the mail again, to the same address or to a better one. */
export function SendAgain({ mail }: { readonly mail: Mail }) {
  const navigate = useNavigate();
  const [name, setName] = useState(mail.to.name);
  const [address, setAddress] = useState(mail.to.address);
  const [key, setKey] = useState(newIdempotencyKey);
  const resend = useResendMail(mail.id);
  const { errorFor, unplaced } = fieldErrors(resend.error, ['to.name', 'to.address']);
  return (
    <Section title="Send again" note={NOTES[mail.state]}>
      <form
        className="record-form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          resend.mutate(
            { to: { name, address }, key },
            {
              onSuccess: ({ id }) => {
                setKey(newIdempotencyKey());
                if (id !== mail.id) void navigate({ to: '/mail/$mailId', params: { mailId: id } });
              },
            },
          );
        }}
      >
        {resend.isError && <ErrorNotice error={resend.error} errors={unplaced} />}
        <FieldGroup>
          <TextInput label="Name" value={name} onChange={setName} error={errorFor('to.name')} />
          <div className="field-wide">
            <TextInput
              label="E-mail address"
              type="email"
              value={address}
              onChange={setAddress}
              error={errorFor('to.address')}
              isRequired
            />
          </div>
        </FieldGroup>
        <div className="form-acts">
          <Button
            type="submit"
            look={mail.state === 'failed' ? 'main' : 'plain'}
            isPending={resend.isPending}
            pendingText="Sending ..."
          >
            Send again
          </Button>
          <span role="status" className="form-said">
            {resend.isSuccess ? 'It is on its way' : ''}
          </span>
        </div>
      </form>
    </Section>
  );
}
