export * from './number-format.ts';
export * from './workbook.ts';
export * from './working-book.ts';
