import { useParams } from '@tanstack/react-router';
import { PersonEditor } from '../components/person-editor.tsx';

/** One person of the workshop. */
export function PersonScreen() {
  const { personId } = useParams({ from: '/shell/people/$personId' });
  return <PersonEditor key={personId} id={personId} />;
}
