import { useState } from 'react';
import { Button } from './button.tsx';

interface CopyButtonProps {
  readonly children: string;
  /** What is copied, read when the button is pressed. */
  readonly text: () => string;
  /** Where to take it by hand when the browser does not let pages copy. */
  readonly byHand: string;
  readonly look?: 'quiet' | 'plain';
}

/** Puts a text on the clipboard, and says so; where that fails it says how to copy by hand. */
export function CopyButton({ children, text, byHand, look = 'plain' }: CopyButtonProps) {
  const [outcome, setOutcome] = useState<'not-yet' | 'copied' | 'by-hand'>('not-yet');
  const copy = (): void => {
    // Browsers give no clipboard to pages on plain http.
    if (navigator.clipboard === undefined) setOutcome('by-hand');
    else
      void navigator.clipboard.writeText(text()).then(
        () => setOutcome('copied'),
        () => setOutcome('by-hand'),
      );
  };
  return (
    <>
      <Button look={look} onPress={copy}>
        {outcome === 'copied' ? 'Copied' : children}
      </Button>
      <span role="status" className={outcome === 'by-hand' ? undefined : 'visually-hidden'}>
        {outcome === 'copied' && 'Copied'}
        {outcome === 'by-hand' && `This browser does not let the page copy: ${byHand}`}
      </span>
    </>
  );
}
