import { useParams } from '@tanstack/react-router';
import { OverheadAmountEditor } from '../components/overhead-amount-editor.tsx';

/** One yearly amount. */
export function OverheadAmountScreen() {
  const { amountId } = useParams({ from: '/shell/overhead/$amountId' });
  return <OverheadAmountEditor key={amountId} id={amountId} />;
}
