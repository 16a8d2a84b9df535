export * from './cost-sheet-workbook.ts';
export * from './labour-rates-workbook.ts';
export * from './overhead-workbook.ts';
export * from './price-workbook.ts';
export * from './tool-rates-workbook.ts';
export * from './tool-register-workbook.ts';
export * from './workbook-about.ts';
