import { OverheadAmountEditor } from '../components/overhead-amount-editor.tsx';

/** A yearly amount that is not on record yet. */
export function NewOverheadAmountScreen() {
  return <OverheadAmountEditor id={null} />;
}
