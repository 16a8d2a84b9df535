import { PersonEditor } from '../components/person-editor.tsx';

/** A person who is not on record yet. */
export function NewPersonScreen() {
  return <PersonEditor id={null} />;
}
