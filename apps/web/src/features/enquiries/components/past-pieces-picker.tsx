import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { pastPieceChoicesQuery } from '../api/past-pieces.ts';
import './enquiry.css';

interface PickerProps {
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

const MOST_PIECES = 8;

/** Costed pieces that are like what is asked for, found by typing. */
export function PastPiecesPicker({ chosen, onChange }: PickerProps) {
  const choices = useQuery(pastPieceChoicesQuery);
  if (choices.isPending) return <Loading />;
  if (choices.isError) return <ErrorNotice error={choices.error} retry={() => void choices.refetch()} />;
  if (choices.data.length === 0) {
    return (
      <EmptyState
        title="No piece is costed yet"
        action={<Link to="/cost-sheets/new">Make a cost sheet</Link>}
      >
        An early price is scaled from pieces that have a cost sheet.
      </EmptyState>
    );
  }
  return (
    <div className="early-picker">
      <ul className="early-pieces" aria-label="Past pieces chosen">
        {chosen.map((id) => {
          const label = choices.data.find((choice) => choice.id === id)?.label ?? id;
          return (
            <li key={id}>
              <span>
                <Link to="/cost-sheets/$sheetId" params={{ sheetId: id }}>
                  {label}
                </Link>
              </span>
              <Button
                look="quiet"
                aria-label={`Leave out ${label}`}
                onPress={() => onChange(chosen.filter((one) => one !== id))}
              >
                Leave out
              </Button>
            </li>
          );
        })}
      </ul>
      {chosen.length < MOST_PIECES && (
        <ComboBox
          key={chosen.join()}
          label={chosen.length === 0 ? 'Past piece' : 'Another past piece'}
          hint="By its cost sheet or design; several make the range"
          choices={choices.data.filter(({ id }) => !chosen.includes(id))}
          value={null}
          onChange={(id) => {
            if (id !== null) onChange([...chosen, id]);
          }}
        />
      )}
    </div>
  );
}
