import { type ClientDocument, lineUnit, quantityText } from '@scantling/quoting';
import { useId } from 'react';
import { useLocale } from 'react-aria-components';
import { formatMoney } from '../../lib/format.ts';
import { chosenWith, type DocumentLine, isTaken, lineBlocks } from './chosen-lines.ts';
import './client-document.css';

interface LinesProps {
  readonly document: ClientDocument;
  readonly chosen: readonly string[];
  readonly onChosen?: (chosen: readonly string[]) => void;
  readonly pictureAddress: (sha256: string) => string;
}

function quantityWords({ kind, quantity, unit, priceBase }: DocumentLine, price: string): string {
  if (kind === 'delivery') return '';
  if (kind === 'cost-sheet') return quantityText(quantity, lineUnit({ kind, unit }));
  if (quantity === '1' && unit === '') return '';
  const number = quantityText(quantity, unit);
  return priceBase === '1' && quantity !== '1' ? `${number} at ${price}` : number;
}

function LineBody({ line, document, pictureAddress }: LinesProps & { readonly line: DocumentLine }) {
  const { locale } = useLocale();
  const price = formatMoney(line.price, document.currency, { locale });
  const words = quantityWords(line, price);
  return (
    <>
      <span className="offer-line-words">
        <strong>{line.description}</strong>
        {words !== '' && <span className="offer-quantity">{words}</span>}
        {line.details !== '' && <span className="offer-text">{line.details}</span>}
        {line.pictures.length > 0 && (
          <span className="offer-pictures">
            {line.pictures.map(({ sha256, alternativeText }) => (
              <img key={sha256} src={pictureAddress(sha256)} alt={alternativeText} loading="lazy" />
            ))}
          </span>
        )}
      </span>
      <span className="offer-amount">{formatMoney(line.amount, document.currency, { locale })}</span>
    </>
  );
}

/** A line that is part of the offer, or one that the client may take or leave. */
function Line(props: LinesProps & { readonly line: DocumentLine; readonly radioName?: string }) {
  const { line, document, chosen, onChosen, radioName } = props;
  const taken = isTaken(document, chosen, line);
  if (line.choice.kind === 'included')
    return (
      <div className="offer-line">
        <LineBody {...props} />
      </div>
    );
  const isRadio = radioName !== undefined;
  if (onChosen === undefined)
    return (
      <div className="offer-line" data-is-left={taken ? undefined : ''}>
        <span className="offer-choice-words">
          {isRadio ? 'One of several' : 'Option'}: {taken ? 'taken' : 'not taken'}
        </span>
        <LineBody {...props} />
      </div>
    );
  return (
    <label className="offer-line offer-choice" data-is-left={taken ? undefined : ''}>
      <input
        type={isRadio ? 'radio' : 'checkbox'}
        name={radioName}
        checked={taken}
        onChange={(event) => onChosen(chosenWith(document, chosen, line, event.target.checked))}
      />
      <LineBody {...props} />
    </label>
  );
}

/** The lines of the offer, those to choose from with their boxes. */
export function DocumentLines(props: LinesProps) {
  const prefix = useId();
  const { document } = props;
  return (
    <section className="offer-lines" aria-label="What is offered">
      {document.priceMode === 'inclusive' && <p className="offer-note">Prices are with tax.</p>}
      {lineBlocks(document.lines).map((block) => {
        if (block.kind === 'group')
          return (
            <fieldset key={`group ${block.group}`} className="offer-group">
              <legend>{block.group}: choose one</legend>
              {block.lines.map((line) => (
                <Line key={line.id} {...props} line={line} radioName={`${prefix} ${block.group}`} />
              ))}
            </fieldset>
          );
        const { line } = block;
        if (line.choice.kind !== 'option') return <Line key={line.id} {...props} line={line} />;
        return (
          <fieldset key={line.id} className="offer-group">
            <legend>If you wish</legend>
            <Line {...props} line={line} />
          </fieldset>
        );
      })}
    </section>
  );
}
