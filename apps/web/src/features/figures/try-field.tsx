import type { FigureNode } from '@scantling/figures';
import { useEffect, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../components/button.tsx';
import type { FieldMessage } from '../../components/field.tsx';
import { TextInput } from '../../components/text-input.tsx';
import { canTry, isShare, leafSuffix, leafText, leafWords, readLeaf } from './leaf-text.ts';
import { useTrying } from './trying-context.ts';
import './try-field.css';

interface TryFieldProps {
  readonly leaf: Pick<FigureNode, 'id'>;
}

/** Where another value can be tried: a field for it, taken on Enter and on leaving, and the way back. */
export function TryField({ leaf: { id } }: TryFieldProps) {
  const trying = useTrying();
  const leaf = trying?.leafOf(id);
  if (trying === null || leaf === undefined || !canTry(leaf)) return null;
  return <LeafField key={id} leaf={leaf} tried={trying.triedAt(id)} />;
}

interface LeafFieldProps {
  /** As it stands. */
  readonly leaf: FigureNode;
  readonly tried: string | undefined;
}

function LeafField({ leaf, tried }: LeafFieldProps) {
  const trying = useTrying();
  const { locale } = useLocale();
  const system = trying?.system ?? 'metric';
  const shown = tried === undefined ? '' : leafText(leaf, tried, system);
  const [typed, setTyped] = useState(shown);
  const [fault, setFault] = useState<FieldMessage | undefined>(undefined);
  // Undone, put back or taken from a scenario elsewhere on the sheet.
  useEffect(() => {
    setTyped(shown);
    setFault(undefined);
  }, [shown]);
  if (trying === null) return null;
  const take = (): void => {
    if (typed.trim() === shown) return;
    if (typed.trim() === '') {
      trying.attempt(leaf, null);
      return;
    }
    const read = readLeaf(leaf, typed, system);
    setFault('problem' in read ? read.problem : undefined);
    if ('value' in read) trying.attempt(leaf, read.value);
  };
  const error = fault ?? trying.problemAt(leaf.id);
  return (
    <div className="try-field" data-is-tried={tried === undefined ? undefined : ''}>
      <span aria-hidden="true" className="try-word">
        {tried === undefined ? 'try' : 'tried'}
      </span>
      <TextInput
        label={`Try another value for ${leaf.label}`}
        isLabelHidden
        isNumeric
        suffix={leafSuffix(leaf, system)}
        error={error}
        value={typed}
        onChange={setTyped}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          // The rail closes on Escape; in the field it gives up what was typed first.
          if (event.key === 'Escape' && typed !== shown) {
            setTyped(shown);
            setFault(undefined);
          } else event.continuePropagation();
        }}
      />
      {(tried !== undefined || isShare(leaf)) && (
        <span className="try-was">stands at {leafWords(leaf, leaf.value, system, locale)}</span>
      )}
      {tried !== undefined && (
        <Button look="quiet" aria-label={`Put back ${leaf.label}`} onPress={() => trying.attempt(leaf, null)}>
          Put back
        </Button>
      )}
    </div>
  );
}
