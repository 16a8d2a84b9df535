import type { CellRole } from '@scantling/figures';
import type ExcelJS from 'exceljs';

const FONT = 'Arial';
const INK = { argb: 'FF20282B' };
const PENCIL = { argb: 'FF525D60' };
const CHALK = { argb: 'FF1D4F91' };
const RED = { argb: 'FFA02C22' };
const HAIR = { style: 'hair', color: { argb: 'FFCCD4CD' } } as const;
const LINE = { style: 'thin', color: { argb: 'FF39464A' } } as const;
const OUTLINE = { style: 'medium', color: { argb: 'FF39464A' } } as const;

type Style = Partial<ExcelJS.Style>;

function ground(argb: string): ExcelJS.FillPattern {
  return { type: 'pattern', pattern: 'solid', fgColor: { argb } };
}

const LETTERS = { name: FONT, size: 10, color: INK };
const STRONG = { ...LETTERS, bold: true };
const TOP = { vertical: 'top' } as const;
const NUMBERS = { vertical: 'top', horizontal: 'right' } as const;

const COLUMN_HEAD: Style = {
  font: STRONG,
  fill: ground('FFEDF1EB'),
  border: { bottom: OUTLINE },
  alignment: { vertical: 'bottom', wrapText: true },
};

const STYLES: Readonly<Record<CellRole, Style>> = {
  title: { font: { ...STRONG, size: 16 } },
  fact: { font: { ...LETTERS, color: PENCIL } },
  warning: { font: { ...LETTERS, color: RED } },
  heading: { font: { ...STRONG, size: 12 }, border: { bottom: OUTLINE }, alignment: { vertical: 'bottom' } },
  'column-head': COLUMN_HEAD,
  'number-head': { ...COLUMN_HEAD, alignment: { ...COLUMN_HEAD.alignment, horizontal: 'right' } },
  label: { font: LETTERS, border: { bottom: HAIR }, alignment: { ...TOP, wrapText: true } },
  line: { font: LETTERS, border: { bottom: HAIR }, alignment: { ...TOP, indent: 1, wrapText: true } },
  'total-label': { font: STRONG, border: { top: LINE, bottom: LINE }, alignment: { ...TOP, wrapText: true } },
  remark: {
    font: { ...LETTERS, size: 9, color: PENCIL },
    border: { bottom: HAIR },
    alignment: { ...TOP, wrapText: true },
  },
  unit: { font: { ...LETTERS, size: 9, color: PENCIL }, border: { bottom: HAIR }, alignment: TOP },
  value: { font: LETTERS, border: { bottom: HAIR }, alignment: NUMBERS },
  'line-value': { font: { ...LETTERS, color: PENCIL }, border: { bottom: HAIR }, alignment: NUMBERS },
  total: { font: STRONG, border: { top: LINE, bottom: LINE }, alignment: NUMBERS },
  input: {
    font: { ...LETTERS, color: CHALK },
    fill: ground('FFDDE7F3'),
    border: { top: LINE, bottom: LINE, left: LINE, right: LINE },
    alignment: NUMBERS,
    protection: { locked: false },
  },
};

interface CellStyle {
  readonly style: Style;
  /** The same with a number format; one object a format, since a workbook has many thousand cells. */
  readonly numberStyle: (format: string) => Style;
}

function withFormats(style: Style): CellStyle {
  const known = new Map<string, Style>();
  return {
    style,
    numberStyle: (format) => {
      const made = known.get(format) ?? { ...style, numFmt: format };
      known.set(format, made);
      return made;
    },
  };
}

const MADE = new Map<CellRole, CellStyle>();

/** How the cells of a role look; quiet enough to be printed in black. */
export function cellStyle(role: CellRole): CellStyle {
  const made = MADE.get(role) ?? withFormats(STYLES[role]);
  MADE.set(role, made);
  return made;
}

export const NUMBERS_ONLY: ExcelJS.DataValidation = {
  type: 'decimal',
  operator: 'between',
  formulae: [-1e12, 1e12],
  allowBlank: false,
  showErrorMessage: true,
  errorTitle: 'A number is wanted',
  error: 'Enter a number; a formula that gives one will do.',
};
