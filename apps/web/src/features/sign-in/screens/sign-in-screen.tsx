import { useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { sessionQuery } from '../api/get-session.ts';
import { useSignIn } from '../api/sign-in.ts';
import { Gate } from '../components/gate.tsx';

interface SignInScreenProps {
  readonly onSignedIn: () => void;
}

export function SignInScreen({ onSignedIn }: SignInScreenProps) {
  const { data: session } = useSuspenseQuery(sessionQuery);
  const [email, setEmail] = useState('');
  const [password, setPassword] = useState('');
  const signIn = useSignIn();
  const facts = [
    { label: 'Workshop', value: session.workshop?.name ?? 'not set up' },
    { label: 'Sheet', value: 'Sign in' },
  ];
  return (
    <Gate title="Scantling" facts={facts}>
      <form
        className="gate-form"
        onSubmit={(event) => {
          event.preventDefault();
          signIn.mutate({ email, password }, { onSuccess: onSignedIn });
        }}
      >
        {session.needsSetUp && (
          <p>
            Nobody can sign in yet. Open the one-time link that stands in the terminal, or{' '}
            <Link to="/set-up">enter its token</Link>.
          </p>
        )}
        {signIn.isError && <ErrorNotice error={signIn.error} />}
        <TextInput
          label="E-mail address"
          type="email"
          name="email"
          autoComplete="username"
          value={email}
          onChange={setEmail}
          isRequired
        />
        <TextInput
          label="Password"
          type="password"
          name="password"
          autoComplete="current-password"
          value={password}
          onChange={setPassword}
          isRequired
        />
        <Button type="submit" look="main" isPending={signIn.isPending} pendingText="Signing in ...">
          Sign in
        </Button>
        {session.canUseDemo && (
          <p className="field-hint">
            The demo workshop is invented. Its sign-in stands in the README and works on this machine only.
          </p>
        )}
      </form>
    </Gate>
  );
}
