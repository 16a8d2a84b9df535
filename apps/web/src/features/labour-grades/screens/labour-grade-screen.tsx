import { useParams } from '@tanstack/react-router';
import { LabourGradeEditor } from '../components/labour-grade-editor.tsx';

/** One labour grade. */
export function LabourGradeScreen() {
  const { gradeId } = useParams({ from: '/shell/labour-grades/$gradeId' });
  return <LabourGradeEditor key={gradeId} id={gradeId} />;
}
