import { Select } from '../../../components/select.tsx';
import './tools.css';

interface YearChoiceProps {
  readonly label: string;
  readonly year: number;
  readonly from: number;
  readonly to: number;
  readonly onChange: (year: number) => void;
}

/** A calendar year of a range, the newest first. */
export function YearChoice({ label, year, from, to, onChange }: YearChoiceProps) {
  const first = Math.min(from, year);
  const last = Math.max(to, year);
  return (
    <div className="year-choice">
      <Select
        label={label}
        choices={Array.from({ length: last - first + 1 }, (_, at) => {
          const text = String(last - at);
          return { id: text, label: text };
        })}
        value={String(year)}
        onChange={(text) => onChange(Number(text))}
      />
    </div>
  );
}
