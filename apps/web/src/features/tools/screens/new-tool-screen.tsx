import { ToolEditor } from '../components/tool-editor.tsx';

/** A tool that is not on record yet. */
export function NewToolScreen() {
  return <ToolEditor id={null} />;
}
