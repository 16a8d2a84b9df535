import type { DrawnDesign, Parameter } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { BILL_FIELDS, BILL_KINDS, type BillKind, type BillRow, KIND_WORDS } from './bill-fields.ts';
import { furtherText, type RowCells, rowCells, unitOf } from './bill-text.ts';
import { parameterValueText, variantWords } from './change-words.ts';
import './design.css';

const NUMERIC = ['count', 'number', 'length', 'percent'];

function billColumns(kind: BillKind, system: LengthSystem): readonly DataColumn<RowCells>[] {
  const fields = BILL_FIELDS[kind];
  const columns = fields
    .filter(({ isColumn }) => isColumn)
    .map(
      (field): DataColumn<RowCells> => ({
        id: field.path,
        header: [field.label, unitOf(field, system)].filter(Boolean).join(', '),
        isNumeric: NUMERIC.includes(field.form),
        sortBy: false,
        width: field.path === 'name' ? 190 : 120,
        text: (cells) => cells[field.path] ?? '',
      }),
    );
  if (fields.every(({ isColumn }) => isColumn)) return columns;
  const text = (cells: RowCells) => furtherText(cells, fields, system);
  return [...columns, { id: 'further', header: 'Further', sortBy: false, width: 260, text }];
}

interface RevisionTablesProps {
  readonly drawing: DrawnDesign;
  readonly number: number;
  readonly system: LengthSystem;
}

interface BillTableProps extends RevisionTablesProps {
  readonly kind: BillKind;
}

function BillTable({ drawing, number, system, kind }: BillTableProps) {
  const columns = useMemo(() => billColumns(kind, system), [kind, system]);
  const rows: readonly BillRow[] = drawing.bill[kind];
  if (rows.length === 0) return null;
  return (
    <>
      <h3 className="revision-kind">{KIND_WORDS[kind].title}</h3>
      <DataTable
        label={`${KIND_WORDS[kind].title} of revision ${number}`}
        columns={columns}
        rows={rows.map((row) => rowCells(row, BILL_FIELDS[kind], system))}
        rowId={({ id = '' }) => id}
        maxHeight="40vh"
      />
    </>
  );
}

function parameterColumns(system: LengthSystem): readonly DataColumn<Parameter>[] {
  const value = (id: 'value' | 'least' | 'greatest', header: string): DataColumn<Parameter> => ({
    id,
    header,
    sortBy: false,
    text: (parameter) => parameterValueText(parameter, parameter[id], system),
  });
  return [
    { id: 'label', header: 'Parameter', sortBy: false, text: ({ label }) => label },
    { id: 'id', header: 'Id', sortBy: false, text: ({ id }) => id },
    value('value', 'As drawn'),
    value('least', 'Least'),
    value('greatest', 'Greatest'),
    {
      id: 'choices',
      header: 'To choose from',
      sortBy: false,
      text: ({ choices }) => choices?.join(' ') ?? '',
    },
  ];
}

/** All that a revision keeps, to read; sizes in the system given. */
export function RevisionTables({ drawing, number, system }: RevisionTablesProps) {
  const { parameters, variants } = drawing;
  const ofParameters = useMemo(() => parameterColumns(system), [system]);
  const ofVariants = useMemo(
    (): readonly DataColumn<DrawnDesign['variants'][number]>[] => [
      { id: 'name', header: 'Variant', sortBy: false, text: ({ name }) => name },
      {
        id: 'values',
        header: 'What it chooses',
        sortBy: false,
        text: (variant) => variantWords(variant, parameters, system),
      },
    ],
    [parameters, system],
  );
  return (
    <>
      {parameters.length > 0 && (
        <>
          <h3 className="revision-kind">Parameters</h3>
          <DataTable
            label={`Parameters of revision ${number}`}
            columns={ofParameters}
            rows={parameters}
            rowId={({ id }) => id}
          />
        </>
      )}
      {variants.length > 0 && (
        <>
          <h3 className="revision-kind">Variants</h3>
          <DataTable
            label={`Variants of revision ${number}`}
            columns={ofVariants}
            rows={variants}
            rowId={({ id }) => id}
          />
        </>
      )}
      {BILL_KINDS.map((kind) => (
        <BillTable key={kind} kind={kind} drawing={drawing} number={number} system={system} />
      ))}
    </>
  );
}
