import { useLocale } from 'react-aria-components';
import type { FieldMessage } from '../../../components/field.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { OrderedLine } from '../api/list-delivery-notes.ts';
import { lineKey, type Quantities } from './delivery-form.ts';
import { countWords, isOutstanding } from './delivery-words.ts';
import './delivery-notes.css';

interface OrderedLinesProps {
  readonly lines: readonly OrderedLine[];
  /** What goes along with the next note; absent where it is only read. */
  readonly entry?: {
    readonly quantities: Quantities;
    readonly onChange: (quantities: Quantities) => void;
    readonly errorFor: (line: OrderedLine) => FieldMessage | undefined;
  };
}

/** What was ordered line by line, what of it is handed over, and how much goes along now. */
export function OrderedLines({ lines, entry }: OrderedLinesProps) {
  const { locale } = useLocale();
  return (
    <RuledFrame label="What was ordered, in rows">
      <table className="ruled-rows">
        <thead>
          <tr>
            <th scope="col">Line</th>
            {entry && (
              <th scope="col" className="numeric">
                On this note
              </th>
            )}
            <th scope="col" className="numeric">
              Ordered
            </th>
            <th scope="col" className="numeric">
              Handed over
            </th>
            <th scope="col" className="numeric">
              Still to come
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={lineKey(line)}>
              <th scope="row" className="ruled-name">
                {line.description}
              </th>
              {entry && (
                <td className="delivery-entry">
                  {isOutstanding(line) && (
                    <TextInput
                      label={`On this note: ${line.description}`}
                      isLabelHidden
                      isNumeric
                      value={entry.quantities[lineKey(line)] ?? ''}
                      onChange={(typed) => entry.onChange({ ...entry.quantities, [lineKey(line)]: typed })}
                      error={entry.errorFor(line)}
                    />
                  )}
                </td>
              )}
              <td className="numeric">{countWords(line.ordered, line.unit, locale)}</td>
              <td className="numeric">{countWords(line.delivered, line.unit, locale)}</td>
              <td className="numeric">
                {isOutstanding(line) ? countWords(line.outstanding, line.unit, locale) : 'nothing'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </RuledFrame>
  );
}
