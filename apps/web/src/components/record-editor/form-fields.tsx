import { Button } from '../button.tsx';
import { FieldGroup, type FieldMessage } from '../field.tsx';
import { type FieldSpec, type FormValue, type FormValues, type GroupSpec, rowsOf } from './field-spec.ts';
import { FormCell } from './form-cell.tsx';
import './record-editor.css';

interface FormFieldsProps {
  readonly groups: readonly GroupSpec[];
  readonly values: FormValues;
  readonly onChange: (values: FormValues) => void;
  readonly errorFor: (field: string) => FieldMessage | undefined;
  readonly isReadOnly?: boolean;
}

type RowsSpec = Extract<FieldSpec, { readonly kind: 'rows' }>;

interface RowsFieldProps extends Omit<FormFieldsProps, 'groups' | 'onChange' | 'isReadOnly'> {
  readonly spec: RowsSpec;
  readonly onChange: (value: FormValue) => void;
  readonly isReadOnly: boolean;
}

/** A list of like things: one ruled line each, with its own fields. */
function RowsField({ spec, values, onChange, errorFor, isReadOnly }: RowsFieldProps) {
  const rows = rowsOf(values, spec.name);
  return (
    <div className="form-rows">
      <p className="field-label">{spec.label}</p>
      {spec.hint !== undefined && <p className="field-hint">{spec.hint}</p>}
      {rows.map((row, at) => (
        // Rows have no identity of their own; their place is it.
        <div className="form-row" key={`${spec.name} ${String(at)}`}>
          <div className="field-grid">
            {spec.cells.map((cell) => (
              <div key={cell.name} className={cell.isWide ? 'field-wide' : undefined}>
                <FormCell
                  spec={cell}
                  value={row[cell.name] ?? ''}
                  error={errorFor(`${spec.name}.${at}.${cell.name}`)}
                  isReadOnly={isReadOnly}
                  onChange={(value) =>
                    onChange(rows.map((one, place) => (place === at ? { ...one, [cell.name]: value } : one)))
                  }
                />
              </div>
            ))}
          </div>
          {!isReadOnly && (
            <Button look="quiet" onPress={() => onChange(rows.filter((_, place) => place !== at))}>
              Take out
            </Button>
          )}
        </div>
      ))}
      {!isReadOnly && <Button onPress={() => onChange([...rows, spec.fresh])}>{spec.addText}</Button>}
    </div>
  );
}

/** The fields of a form, group by group. */
export function FormFields({ groups, values, onChange, errorFor, isReadOnly = false }: FormFieldsProps) {
  const set = (name: string) => (value: FormValue) => onChange({ ...values, [name]: value });
  return groups.map((group, at) => (
    <FieldGroup
      key={group.legend ?? String(at)}
      {...(group.legend === undefined ? {} : { legend: group.legend })}
    >
      {group.fields
        .filter((field) => field.isShown?.(values) ?? true)
        .map((field) => {
          if (field.kind === 'rows') {
            return (
              <RowsField
                key={field.name}
                spec={field}
                values={values}
                errorFor={errorFor}
                isReadOnly={isReadOnly}
                onChange={set(field.name)}
              />
            );
          }
          const value = values[field.name];
          const cell = (
            <FormCell
              key={field.name}
              spec={field}
              value={typeof value === 'string' || typeof value === 'boolean' ? value : ''}
              error={errorFor(field.name)}
              isReadOnly={isReadOnly}
              onChange={set(field.name)}
            />
          );
          return field.isWide ? (
            <div key={field.name} className="field-wide">
              {cell}
            </div>
          ) : (
            cell
          );
        })}
    </FieldGroup>
  ));
}
