export { type LabourGrade, type LabourRate, labourRate, labourRates } from './labour-rate.ts';
