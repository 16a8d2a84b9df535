import { LabourGradeEditor } from '../components/labour-grade-editor.tsx';

/** A labour grade that is not on record yet. */
export function NewLabourGradeScreen() {
  return <LabourGradeEditor id={null} />;
}
