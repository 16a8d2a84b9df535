import type { FigureNode, FigureTable } from '@scantling/figures';
import { useId, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../components/button.tsx';
import { formatAmount } from '../../lib/format.ts';
import type { RecordAddress } from './record-address.ts';
import { SourceNote } from './source-note.tsx';
import { TryField } from './try-field.tsx';
import { derivationWords, keyedInputs } from './working-words.ts';
import './working-rail.css';

export interface WorkingParts {
  readonly table: FigureTable;
  /** Makes a figure the rail's head. */
  readonly onFollow: (id: string) => void;
  /** The address of the record a source names, where there is a screen for it. */
  readonly recordAddress?: ((record: string) => RecordAddress | undefined) | undefined;
}

interface WorkingLineProps extends WorkingParts {
  readonly node: FigureNode;
}

/** One input of a working: a leaf says where it came from, a derived figure opens into its own inputs. */
export function WorkingLine({ node, ...parts }: WorkingLineProps) {
  const { locale } = useLocale();
  const [isOpen, setIsOpen] = useState(false);
  const panel = useId();
  const words = (
    <>
      <span className="working-label">{node.label}</span>
      <span className="working-value">{formatAmount(node, { locale }).text}</span>
    </>
  );
  if (!node.how) {
    return (
      <li className="working-item">
        <div className="working-line" data-working-line="" tabIndex={-1}>
          {words}
        </div>
        {node.note !== undefined && <p className="working-note">{node.note}</p>}
        <SourceNote source={node.source} recordAddress={parts.recordAddress} />
        <TryField leaf={node} />
      </li>
    );
  }
  return (
    <li className="working-item" data-is-open={isOpen ? '' : undefined}>
      <button
        type="button"
        className="working-line"
        data-working-line=""
        aria-expanded={isOpen}
        aria-controls={panel}
        onClick={() => setIsOpen(!isOpen)}
        onKeyDown={(event) => {
          if ((event.key === 'ArrowRight' && !isOpen) || (event.key === 'ArrowLeft' && isOpen)) {
            event.preventDefault();
            event.stopPropagation();
            setIsOpen(!isOpen);
          }
        }}
      >
        {words}
      </button>
      {isOpen && (
        <div id={panel} className="working-inner">
          <p className="working-how">{derivationWords(parts.table, node, { locale })}</p>
          {node.note !== undefined && <p className="working-note">{node.note}</p>}
          <WorkingInputs node={node} {...parts} />
          <Button look="quiet" onPress={() => parts.onFollow(node.id)}>
            Start from here
          </Button>
        </div>
      )}
    </li>
  );
}

export function WorkingInputs({ node, ...parts }: WorkingLineProps) {
  return (
    <ol className="working-inputs">
      {keyedInputs(parts.table, node).map(({ key, input }) => (
        <WorkingLine key={key} node={input} {...parts} />
      ))}
    </ol>
  );
}
