export * from './read-table.ts';
export * from './render-workbook.ts';
export * from './table.ts';
export * from './write-csv.ts';
export * from './write-workbook.ts';
