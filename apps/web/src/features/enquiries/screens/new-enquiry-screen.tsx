import { EnquiryEditor } from '../components/enquiry-editor.tsx';

/** An enquiry that has just come in. */
export function NewEnquiryScreen() {
  return <EnquiryEditor id={null} />;
}
