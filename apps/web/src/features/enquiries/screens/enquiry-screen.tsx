import { useParams } from '@tanstack/react-router';
import { EnquiryEditor } from '../components/enquiry-editor.tsx';

/** One enquiry. */
export function EnquiryScreen() {
  const { enquiryId = '' } = useParams({ strict: false });
  return <EnquiryEditor key={enquiryId} id={enquiryId} />;
}
