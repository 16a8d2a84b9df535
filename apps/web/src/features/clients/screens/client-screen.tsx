import { useParams } from '@tanstack/react-router';
import { ClientEditor } from '../components/client-editor.tsx';

/** One client. */
export function ClientScreen() {
  const { clientId } = useParams({ from: '/shell/clients/$clientId' });
  return <ClientEditor key={clientId} id={clientId} />;
}
