import { ClientEditor } from '../components/client-editor.tsx';

/** A client who is not on record yet. */
export function NewClientScreen() {
  return <ClientEditor id={null} />;
}
