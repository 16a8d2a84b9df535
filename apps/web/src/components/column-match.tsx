import { FieldGroup, type FieldMessage } from './field.tsx';
import { Select } from './select.tsx';

const NONE = '';

export interface ColumnMatchProps<Column extends string> {
  /** Our columns, in the order they are asked for. */
  readonly columns: readonly Column[];
  /** The file's headers. */
  readonly headers: readonly string[];
  /** Which header holds which column. */
  readonly chosen: Readonly<Partial<Record<Column, string>>>;
  readonly onChange: (chosen: Partial<Record<Column, string>>) => void;
  /** Columns without which nothing can be read, as things are chosen now. */
  readonly needed: readonly Column[];
  readonly errorFor?: (column: Column) => FieldMessage | undefined;
  /** What else is asked beside the columns. */
  readonly children?: React.ReactNode;
}

/** Which of a file's columns is which of ours. */
export function ColumnMatch<Column extends string>({
  columns,
  headers,
  chosen,
  onChange,
  needed,
  errorFor,
  children,
}: ColumnMatchProps<Column>) {
  const heads = [
    { id: NONE, label: 'not in the file' },
    ...[...new Set([...headers, ...columns.flatMap((column) => chosen[column] ?? [])])]
      .filter((head) => head.trim() !== '')
      .map((head) => ({ id: head, label: headers.includes(head) ? head : `${head} (not in this file)` })),
  ];
  const isOpen = (column: Column) => {
    const head = chosen[column];
    return needed.includes(column) && (head === undefined || !headers.includes(head));
  };
  return (
    <FieldGroup>
      {columns.map((column) => (
        <Select
          key={column}
          label={column}
          choices={heads}
          value={chosen[column] ?? NONE}
          onChange={(head) => {
            const { [column]: _before, ...others } = chosen;
            const rest = others as Partial<Record<Column, string>>;
            onChange(head === NONE ? rest : { ...rest, [column]: head });
          }}
          error={
            errorFor?.(column) ??
            (isOpen(column)
              ? { message: 'Needed.', mend: 'Choose the column of the file that holds it.' }
              : undefined)
          }
        />
      ))}
      {children}
    </FieldGroup>
  );
}
