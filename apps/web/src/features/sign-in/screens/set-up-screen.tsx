import { CURRENCIES, isCurrency } from '@scantling/money';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useSetUpOwner } from '../api/set-up-owner.ts';
import { useSignIn } from '../api/sign-in.ts';
import { Gate } from '../components/gate.tsx';

interface SetUpScreenProps {
  /** From the one-time link; '' when the address carries none. */
  readonly linkToken: string;
  readonly onSignedIn: () => void;
}

const FIELDS = ['token', 'workshopName', 'currency', 'name', 'email', 'password'] as const;
type Field = (typeof FIELDS)[number];

const CURRENCY_CHOICES = CURRENCIES.map((code) => ({ id: code, label: code }));

/** The first owner, entered once; they are signed in at once. */
export function SetUpScreen({ linkToken, onSignedIn }: SetUpScreenProps) {
  const [given, setGiven] = useState<Readonly<Record<Field, string>>>({
    token: linkToken,
    workshopName: '',
    currency: 'EUR',
    name: '',
    email: '',
    password: '',
  });
  const setUp = useSetUpOwner();
  const signIn = useSignIn();
  const { errorFor, unplaced } = fieldErrors(setUp.error, FIELDS);
  const field = (name: Field) => ({
    name,
    value: given[name],
    onChange: (value: string) => setGiven({ ...given, [name]: value }),
    error: errorFor(name),
    isRequired: true,
  });
  const failure = setUp.error ?? signIn.error;
  return (
    <Gate
      title="Set up the workshop"
      facts={[
        { label: 'Sheet', value: 'Set up' },
        { label: 'Done', value: 'once' },
      ]}
    >
      <form
        className="gate-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!isCurrency(given.currency)) return;
          setUp.mutate(
            { ...given, currency: given.currency },
            {
              onSuccess: () =>
                signIn.mutate({ email: given.email, password: given.password }, { onSuccess: onSignedIn }),
            },
          );
        }}
      >
        {failure !== null && <ErrorNotice error={failure} errors={unplaced} />}
        {(linkToken === '' || errorFor('token') !== undefined) && (
          <TextInput
            label="Token"
            hint="The part after the hash sign of the link in the terminal"
            autoComplete="off"
            {...field('token')}
          />
        )}
        <TextInput label="Name of the workshop" autoComplete="organization" {...field('workshopName')} />
        <ComboBox
          label="Currency"
          hint="Costs and prices are worked out in it (ISO 4217)"
          choices={CURRENCY_CHOICES}
          value={given.currency === '' ? null : given.currency}
          onChange={(currency) => setGiven({ ...given, currency: currency ?? '' })}
          error={
            given.currency === ''
              ? { message: 'No currency is chosen.', mend: 'Choose one.' }
              : errorFor('currency')
          }
          isRequired
        />
        <TextInput label="Your name" autoComplete="name" {...field('name')} />
        <TextInput label="E-mail address" type="email" autoComplete="username" {...field('email')} />
        <TextInput
          label="Password"
          type="password"
          hint="At least 12 characters; a sentence is fine"
          autoComplete="new-password"
          {...field('password')}
        />
        <Button
          type="submit"
          look="main"
          isPending={setUp.isPending || signIn.isPending}
          pendingText="Setting up ..."
        >
          Set up
        </Button>
      </form>
    </Gate>
  );
}
