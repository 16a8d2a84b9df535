export * from './cost-sheet-workbook.ts';
