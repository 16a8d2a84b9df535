import { useParams } from '@tanstack/react-router';
import { ToolEditor } from '../components/tool-editor.tsx';

/** One tool: its hour rate, its schedule and its record. */
export function ToolScreen() {
  const { toolId } = useParams({ from: '/shell/tools/$toolId' });
  return <ToolEditor key={toolId} id={toolId} />;
}
