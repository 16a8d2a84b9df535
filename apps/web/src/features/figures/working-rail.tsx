import { useLocale } from 'react-aria-components';
import { Button } from '../../components/button.tsx';
import { CopyButton } from '../../components/copy-button.tsx';
import { formatAmount } from '../../lib/format.ts';
import { SourceNote } from './source-note.tsx';
import { TryField } from './try-field.tsx';
import { walkLines } from './walk-lines.ts';
import { WorkingInputs, type WorkingParts } from './working-line.tsx';
import { derivationWords, nodeOf, toldWords } from './working-words.ts';
import './working-rail.css';

export interface WorkingRailProps extends WorkingParts {
  /** The figure whose working is shown. */
  readonly id: string;
  /** The figures followed to get here, first one first. */
  readonly trail: readonly string[];
  /** Back to the figure at this place of the trail. */
  readonly onBack: (at: number) => void;
  readonly onClose: () => void;
  /** True while figures are still on their way. */
  readonly isPending: boolean;
}

/** The derivation of one figure in words and units, level by level down to the leaves and their sources. */
export function WorkingRail({ id, trail, onBack, onClose, isPending, ...parts }: WorkingRailProps) {
  const { locale } = useLocale();
  if (!parts.table[id]) {
    return (
      <div className="working">
        <p role="status">
          {isPending
            ? 'The figure this address names is not worked out yet.'
            : 'The figure this address names does not stand on this sheet any more.'}
        </p>
        <Button onPress={onClose}>Close</Button>
      </div>
    );
  }
  const node = nodeOf(parts.table, id);
  const answer = formatAmount(node, { locale }).text;
  const told = toldWords(parts.table, node, { locale });
  const inFull = formatAmount(node, { locale, isFull: true }).text;
  return (
    <div className="working">
      <div className="working-head">
        <span className="working-word">Working</span>
        <div>
          <CopyButton
            key={id}
            look="quiet"
            text={() => window.location.href}
            byHand="take the address from the browser’s address line; it names this figure."
          >
            Copy its address
          </CopyButton>
          <Button look="quiet" onPress={onClose}>
            Close
          </Button>
        </div>
      </div>
      {trail.length > 0 && (
        <ol className="working-trail" aria-label="Followed from">
          {trail.map((from, at) => (
            <li key={from}>
              <Button look="quiet" onPress={() => onBack(at)}>
                {nodeOf(parts.table, from).label}
              </Button>
            </li>
          ))}
        </ol>
      )}
      <h2>{node.label}</h2>
      <p className="working-answer">{answer}</p>
      {inFull !== answer && <p className="working-note">In full, before any rounding: {inFull}</p>}
      {node.note !== undefined && <p className="working-note">{node.note}</p>}
      {told.length > 0 && (
        <div className="working-told">
          {told.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
      {node.how ? (
        <fieldset key={id} className="working-lines" onKeyDown={walkLines}>
          <legend className="visually-hidden">How it comes about</legend>
          <p className="working-how">{derivationWords(parts.table, node, { locale })}</p>
          <WorkingInputs node={node} {...parts} />
        </fieldset>
      ) : (
        <>
          <SourceNote source={node.source} recordAddress={parts.recordAddress} />
          <TryField leaf={node} />
        </>
      )}
    </div>
  );
}
