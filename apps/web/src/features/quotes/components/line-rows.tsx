import type { WorkedQuote } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { LineForm } from './quote-form.ts';
import './quote.css';
import '../../../components/record-editor/record-editor.css';

interface LineRowsProps {
  readonly lines: readonly LineForm[];
  readonly worked: WorkedQuote | undefined;
  /** Options and alternates taken while looking at what the quote comes to. */
  readonly chosen: readonly string[];
  readonly onChosen: (id: string, isChosen: boolean) => void;
  readonly openId: string | null;
  readonly onOpen: (id: string | null) => void;
  readonly onMove: (from: number, to: number) => void;
  readonly hasProblem: (at: number) => boolean;
  /** The form of the open line, below its row. */
  readonly form: React.ReactNode;
}

function takenWords({ choice, group, isStandard }: LineForm): string {
  if (choice === 'included') return 'always';
  if (choice === 'option') return 'option';
  return `${isStandard ? 'standard of' : 'instead, in'} ${group === '' ? 'a group' : group}`;
}

function Numbers({ line, worked }: { readonly line: LineForm; readonly worked: WorkedQuote | undefined }) {
  const totals = worked?.totals.lines.find(({ id }) => id === line.id);
  const margin = worked?.margin.lines.find(({ id }) => id === line.id);
  const quantity = line.kind === 'cost-sheet' ? line.pieces : line.kind === 'delivery' ? '1' : line.quantity;
  return (
    <>
      <td className="numeric">
        {quantity} {line.kind === 'cost-sheet' ? '' : line.unit}
      </td>
      <td className="numeric">{totals ? <FigureValue id={totals.amount} /> : '–'}</td>
      <td className="numeric">{margin?.cost ? <FigureValue id={margin.cost} /> : 'not known'}</td>
      <td className="numeric">{margin?.margin ? <FigureValue id={margin.margin} isPercent /> : '–'}</td>
    </>
  );
}

/** The lines in their order: opened by a press, moved by their handle with the pointer or Alt and the arrow keys. */
export function LineRows(props: LineRowsProps) {
  const { lines, worked, openId } = props;
  const [dragged, setDragged] = useState<number | null>(null);
  const [over, setOver] = useState<number | null>(null);
  const end = (): void => {
    setDragged(null);
    setOver(null);
  };
  return (
    <section className="quote-lines-frame" aria-label="Lines of the quote">
      <table className="quote-lines">
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col">Line</th>
            <th scope="col">Taken</th>
            <th scope="col" className="numeric">
              Number
            </th>
            <th scope="col" className="numeric">
              Amount
            </th>
            <th scope="col" className="numeric">
              Cost
            </th>
            <th scope="col" className="numeric">
              Margin
            </th>
          </tr>
        </thead>
        {lines.map((line, at) => {
          const name = line.description || 'Unnamed line';
          const isOpen = line.id === openId;
          return (
            <tbody
              key={line.id}
              data-is-over={over === at ? '' : undefined}
              onDragOver={(event) => {
                event.preventDefault();
                setOver(at);
              }}
              onDrop={(event) => {
                event.preventDefault();
                if (dragged !== null) props.onMove(dragged, at);
                end();
              }}
            >
              <tr data-has-problem={props.hasProblem(at) ? '' : undefined}>
                <td>
                  <button
                    type="button"
                    draggable
                    className="line-handle"
                    aria-label={`Move ${name}, place ${at + 1} of ${lines.length}: drag, or Alt and the arrow keys`}
                    onDragStart={(event) => {
                      event.dataTransfer.effectAllowed = 'move';
                      event.dataTransfer.setData('text/plain', name);
                      setDragged(at);
                    }}
                    onDragEnd={end}
                    onKeyDown={(event) => {
                      const step = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' ? 1 : 0;
                      if (step === 0 || !event.altKey) return;
                      event.preventDefault();
                      props.onMove(at, at + step);
                    }}
                  >
                    <span aria-hidden="true">⋮</span> {at + 1}
                  </button>
                </td>
                <th scope="row">
                  <button
                    type="button"
                    className="line-name"
                    aria-expanded={isOpen}
                    onClick={() => props.onOpen(isOpen ? null : line.id)}
                  >
                    {name}
                  </button>
                  {props.hasProblem(at) && <span className="line-problem"> to mend</span>}
                </th>
                <td>
                  {line.choice === 'included' ? (
                    'always'
                  ) : (
                    <Checkbox
                      label={takenWords(line)}
                      aria-label={`Reckon with ${name}`}
                      isSelected={worked?.totals.lines.find(({ id }) => id === line.id)?.isCounted ?? false}
                      isDisabled={line.choice === 'alternate' && line.isStandard}
                      onChange={(isChosen) => props.onChosen(line.id, isChosen)}
                    />
                  )}
                </td>
                <Numbers line={line} worked={worked} />
              </tr>
              {isOpen && (
                <tr className="line-open">
                  <td colSpan={7}>
                    <div className="line-form">
                      {' '}
                      {props.form}
                      <div className="form-acts">
                        <Button isDisabled={at === 0} onPress={() => props.onMove(at, at - 1)}>
                          Move up
                        </Button>
                        <Button isDisabled={at === lines.length - 1} onPress={() => props.onMove(at, at + 1)}>
                          Move down
                        </Button>
                        <Button onPress={() => props.onOpen(null)}>Close the line</Button>
                      </div>
                    </div>
                  </td>
                </tr>
              )}
            </tbody>
          );
        })}
      </table>
    </section>
  );
}
